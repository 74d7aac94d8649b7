import type { RuleAction } from '../schedule/index.ts';
import { HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { StudyResult } from '../study/index.ts';
import type { Judged, ScheduleJudge } from './judge.ts';
import { hotLimit } from './starts.ts';
import { dayByDay, daysIn, daysLowered, stretchesOf } from './stretches.ts';
import type { Stretch } from './stretches.ts';
import type { TargetInHand } from './target.ts';
import type { Project } from '../project/index.ts';
import type { IdealFinding, SearchFigures, SearchWeights } from './types.ts';
import { occupiedDaylight } from './view.ts';
import { compareScores } from './weights.ts';

/** The best that is known without hindsight: a schedule found, or what is planned. */
export interface IdealSeed {
  figures: SearchFigures;
  result: StudyResult;
  /** How it lowers the blinds. */
  then: RuleAction;
}

/**
 * The reference with hindsight: a blind that knows the year. It is lowered once a day at most, for
 * its own hours of each day, on the days on which that saves the most hours over for what it gives
 * up. It is found by ranking the days and taking as few as are needed, for stretches of the day of
 * several lengths and for those of the best schedule known. A reference and no proof: no plain
 * schedule is counted better than it, as it may repeat one, but a cleverer choice of days may be
 * better still.
 */
export function* findIdeal(
  judge: ScheduleJudge,
  inHand: TargetInHand,
  settings: Project['settings'],
  weights: SearchWeights,
  seed: IdealSeed,
  budget: number,
): Generator<Judged, IdealFinding> {
  const before = judge.runs;
  const left = () => budget - (judge.runs - before);
  const { result: found, then } = seed;
  const gain = gainWithout(judge.up.result, inHand);
  const most = gain.reduce((a, b) => Math.max(a, b), 0);
  const [first, ...others] = SUN_SHARES.map((share) =>
    daysLowered(judge.up.result, (hour) => gain[hour] > share * most),
  );
  const own = stretchesOf(found, loweredSteps(found, inHand));
  const plans = [first, own, ...others].filter((plan) => plan.length > 0);

  let ideal: { figures: SearchFigures; days: number; better: boolean } = {
    figures: seed.figures,
    days: daysIn(own),
    better: false,
  };
  for (const plan of plans) {
    if (left() < 2) break;
    // What all of the plan does tells which hours over can be helped at all.
    const full = dayByDay(plan, then);
    judge.of(full);
    const down = judge.again(full);
    const ranked = ranking(plan, { up: judge.up.result, down, inHand, settings, weights, judge });
    const tried = yield* fewestDays(ranked, then, judge, left);
    for (const { count, figures } of tried) {
      if (compareScores(figures, ideal.figures) >= 0) continue;
      ideal = { figures, days: daysIn(ranked.slice(0, count)), better: true };
    }
  }
  return { ...ideal, runs: judge.runs - before };
}

/** The fewest of the days that keep the criterion, by halving; all of them where these do not. */
function* fewestDays(
  ranked: readonly Stretch[],
  then: RuleAction,
  judge: ScheduleJudge,
  left: () => number,
): Generator<Judged, { count: number; figures: SearchFigures }[]> {
  const take = (count: number) => {
    const schedule = dayByDay(ranked.slice(0, count), then);
    return { count, schedule, figures: judge.of(schedule) };
  };
  let high = take(ranked.length);
  yield high;
  const tried = [high];
  for (let low = 0; high.figures.kept && high.count - low > 1 && left() > 0;) {
    const half = take((low + high.count) >> 1);
    yield half;
    tried.push(half);
    if (half.figures.kept) high = half;
    else low = half.count;
  }
  return tried;
}

/** Stretches of a day end where the sun through the glass falls under these shares of its most. */
const SUN_SHARES = [0.3, 0.15, 0.45];

/** 1 at the steps with any blind of the target down; STEPS values. */
function loweredSteps({ openings }: StudyResult, inHand: TargetInHand): Uint8Array {
  const lowered = new Uint8Array(STEPS);
  for (const { id, blind } of openings) {
    if (!blind || !inHand.openings.has(id)) continue;
    for (let step = 0; step < STEPS; step++) if (blind.state[step] !== 0) lowered[step] = 1;
  }
  return lowered;
}

interface Setting {
  up: StudyResult;
  down: StudyResult;
  inHand: TargetInHand;
  settings: Project['settings'];
  weights: SearchWeights;
  judge: ScheduleJudge;
}

/** Hours in which sun kept out is still felt in the room, and how fast that is lost (our own choice). */
const FELT = 48;
const FADES = 24;

/** Stretches by what they save for what they give up, the best first. */
function ranking(stretches: readonly Stretch[], setting: Setting): Stretch[] {
  const { up, down, inHand, settings, weights, judge } = setting;
  const helped = helpedHours(up, down, inHand, settings);
  const kept = gainKept(up, down, inHand);
  const seen = occupiedDaylight(up, inHand, judge.sunUp);
  const worth = stretches.map(({ from, to }) => {
    let stopped = 0;
    let view = 0;
    for (let step = from; step < to; step++) {
      stopped += kept[Math.floor(step / STEPS_PER_HOUR)];
      view += seen[step];
    }
    let felt = 0;
    const begin = Math.floor(from / STEPS_PER_HOUR);
    for (let i = 0; i < FELT; i++) felt += helped[(begin + i) % HOURS] * Math.exp(-i / FADES);
    const price = weights.viewHour * (view / STEPS_PER_HOUR) + 2 * weights.move;
    return (felt * stopped) / (price + 0.01);
  });
  return stretches
    .map((stretch, i) => ({ stretch, worth: worth[i] }))
    .sort((a, b) => b.worth - a.worth || a.stretch.from - b.stretch.from)
    .map(({ stretch }) => stretch);
}

/** Rooms that are over in an hour with the blinds up and not with them down; HOURS values. */
function helpedHours(
  up: StudyResult,
  down: StudyResult,
  { rooms }: TargetInHand,
  settings: Project['settings'],
): Float64Array {
  const limit = hotLimit(settings);
  const helped = new Float64Array(HOURS);
  up.rooms.forEach(({ id, runs }, i) => {
    if (!rooms.has(id)) return;
    const warm = runs.with.year.operative;
    const cool = down.rooms[i].runs.with.year.operative;
    for (let hour = 0; hour < HOURS; hour++) {
      if (warm[hour] > limit && cool[hour] <= limit) helped[hour]++;
    }
  });
  return helped;
}

/** Sun the blinds keep out, W; HOURS values. */
function gainKept(up: StudyResult, down: StudyResult, { openings }: TargetInHand): Float64Array {
  const kept = new Float64Array(HOURS);
  up.openings.forEach(({ id, glassArea, hourly }, i) => {
    if (!openings.has(id)) return;
    const shaded = down.openings[i].hourly.with;
    for (let hour = 0; hour < HOURS; hour++) {
      kept[hour] += glassArea * Math.max(hourly.with[hour] - shaded[hour], 0);
    }
  });
  return kept;
}

/** Sun through the bare glass of the target, W; HOURS values. */
function gainWithout(result: StudyResult, { openings }: TargetInHand): Float64Array {
  const gain = new Float64Array(HOURS);
  for (const { id, glassArea, hourly } of result.openings) {
    if (!openings.has(id)) continue;
    for (let hour = 0; hour < HOURS; hour++) gain[hour] += glassArea * hourly.without[hour];
  }
  return gain;
}
