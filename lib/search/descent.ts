import type { Schedule } from '../schedule/index.ts';
import type { Judged } from './judge.ts';
import type { SearchFigures } from './types.ts';
import { compareScores } from './weights.ts';

/** Numbers into the values of each axis. */
export type Point = readonly number[];

/** One figure of a schedule with its values in order. */
export interface Axis {
  count: number;
  /** Which way along it a blind is lowered for longer; 0 where that is not told. */
  more: 1 | -1 | 0;
}

/** All schedules of one kind. */
export interface Space {
  axes: Axis[];
  /** Where to begin, in order of promise. */
  starts: Point[];
  /** Absent for a point that is no schedule. */
  build(point: Point): Schedule | undefined;
  /** A price that the point cannot be under, known without a run. */
  floor?(point: Point): number;
}

/** A point that was run. */
interface Tried extends Judged {
  point: Point;
}

export interface Descent {
  best?: Judged;
  /** Every point of the space was run. */
  full: boolean;
}

/** Descents from so many starts at most. */
const MOST_STARTS = 3;

/**
 * Looks for the best schedule of a space with a bounded number of runs. A space with no more points
 * is run in full. Otherwise a pattern search (Hooke & Jeeves 1961) descends from the best starts:
 * one axis at a time, then two against each other, coarse steps first, halved when nothing is
 * better. Runs are saved by what more lowering is sure to do but for rounding: it breaks no more
 * and gives up no less. The same input gives the same answer.
 *
 * @param judge runs a schedule
 * @param budget most points that are run
 * @param saving whether to pass over points that cannot be better than where the search stands
 */
export function* descend(
  space: Space,
  judge: (schedule: Schedule) => SearchFigures,
  budget: number,
  saving = true,
): Generator<Judged, Descent> {
  const seen = new Map<string, Tried | undefined>();
  const tried: Tried[] = [];
  let best: Tried | undefined;

  function* visit(point: Point): Generator<Judged, Tried | undefined> {
    const key = point.join();
    if (seen.has(key)) return seen.get(key);
    const schedule = space.build(point);
    if (!schedule) {
      seen.set(key, undefined);
      return undefined;
    }
    if (tried.length >= budget) return undefined;
    const found = { point, schedule, figures: judge(schedule) };
    seen.set(key, found);
    tried.push(found);
    if (!best || compareScores(found.figures, best.figures) < 0) best = found;
    yield found;
    return found;
  }

  const points = pointsUpTo(space, budget);
  if (points) {
    for (const point of points) yield* visit(point);
    return { best, full: true };
  }

  const starts: Tried[] = [];
  for (const point of space.starts) {
    const start = yield* visit(point);
    if (start && !starts.includes(start)) starts.push(start);
  }
  starts.sort((a, b) => compareScores(a.figures, b.figures));
  for (const start of starts.slice(0, MOST_STARTS)) {
    let home = start;
    for (let step = space.axes.map(firstStep); ;) {
      let moved = false;
      for (const point of neighbours(space, home, step)) {
        if (tried.length >= budget) return { best, full: false };
        if (saving && hopeless(space, point, home, tried)) continue;
        const found = yield* visit(point);
        if (!found || compareScores(found.figures, home.figures) >= 0) continue;
        home = found;
        moved = true;
        break;
      }
      if (moved) continue;
      if (step.every((s) => s === 1)) break;
      step = step.map((s) => Math.max(1, s >> 1));
    }
  }
  return { best, full: false };
}

function firstStep({ count }: Axis): number {
  return Math.max(1, 2 ** Math.floor(Math.log2(count / 8)));
}

/** Points one step away along one axis, then along two: less lowering first where it keeps. */
function neighbours({ axes }: Space, { point, figures }: Tried, step: Point): Point[] {
  const away = (moves: readonly (readonly [number, number])[]) => {
    const next = [...point];
    for (const [i, way] of moves) {
      next[i] = Math.min(Math.max(point[i] + way * step[i], 0), axes[i].count - 1);
      if (next[i] === point[i]) return [];
    }
    return [next];
  };
  const wanted = figures.kept ? -1 : 1;
  const ways = (i: number) => (axes[i].more * wanted < 0 ? [-1, 1] : [1, -1]);
  const all = axes.map((_, i) => i);
  const single = all.flatMap((i) => ways(i).flatMap((way) => away([[i, way]])));
  const pairs = all.flatMap((i) =>
    all
      .filter((j) => j > i)
      .flatMap((j) =>
        ways(i).flatMap((a) =>
          ways(j).flatMap((b) =>
            away([
              [i, a],
              [j, b],
            ]),
          ),
        ),
      ),
  );
  return [...single, ...pairs];
}

/**
 * Whether it is known without a run that a point is no better than `home`: its price is no lower, it lowers less than one that is
 * no better and breaks the criterion, or more than one that is no better and keeps it.
 */
function hopeless(space: Space, point: Point, home: Tried, tried: readonly Tried[]): boolean {
  const { axes } = space;
  const { kept, price } = home.figures;
  if (kept && space.floor && space.build(point) && space.floor(point) >= price) return true;
  return tried.some((other) => {
    if (compareScores(other.figures, home.figures) < 0) return false;
    const sign = other.figures.kept ? 1 : -1;
    return axes.every(({ more }, i) => {
      const way = point[i] - other.point[i];
      return more === 0 ? way === 0 : way * more * sign >= 0;
    });
  });
}

/** Every point that is a schedule, where there are no more than `most`. */
function pointsUpTo(space: Space, most: number): Point[] | undefined {
  const size = space.axes.reduce((n, { count }) => n * count, 1);
  if (size > 8 * most) return undefined;
  let points: Point[] = [[]];
  for (const { count } of space.axes) {
    points = points.flatMap((p) => Array.from({ length: count }, (_, i) => [...p, i]));
  }
  const sound = points.filter((p) => space.build(p));
  return sound.length <= most ? sound : undefined;
}
