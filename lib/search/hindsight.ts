import type { Rule, RuleAction, Schedule } from '../schedule/index.ts';
import { HOURS, STEPS, STEPS_PER_HOUR, monthOfDay, dayOfYear } from '../time/index.ts';
import type { StudyResult } from '../study/index.ts';
import { QUARTER } from './clock.ts';
import type { Judged, ScheduleJudge } from './judge.ts';
import { hotLimit } from './starts.ts';
import type { TargetInHand } from './target.ts';
import type { Project } from '../project/index.ts';
import type { IdealFinding, SearchWeights } from './types.ts';
import { compareScores } from './weights.ts';

/**
 * The reference with hindsight: a blind that knows the year. It is lowered once a day at most, for
 * its own hours of each day, on the days on which that saves the most hours over for what it gives
 * up. It is found by ranking the days and taking as few as are needed, for stretches of the day of
 * several lengths and for those of the best schedule found. A reference and no proof: no plain
 * schedule is counted better than it, as it may repeat one, but a cleverer choice of days may be
 * better still.
 */
export function* findIdeal(
  judge: ScheduleJudge,
  inHand: TargetInHand,
  settings: Project['settings'],
  weights: SearchWeights,
  best: Judged,
  budget: number,
): Generator<Judged, IdealFinding> {
  const before = judge.runs;
  const left = () => budget - (judge.runs - before);
  const found = judge.study(best.schedule);
  const then: RuleAction = best.schedule.rules[0]?.then ?? { kind: 'lower' };
  const gain = gainWithout(judge.up.result, inHand);
  const most = gain.reduce((a, b) => Math.max(a, b), 0);
  const sunny = SUN_SHARES.map((share) =>
    daysLowered(judge.up.result, (h) => gain[h] > share * most),
  );
  const state = loweredSteps(found, inHand);
  const plans = [...sunny, stretchesOf(found, state)].filter((plan) => plan.length > 0);

  let ideal: { figures: Judged['figures']; days: number; better: boolean } = {
    figures: best.figures,
    days: daysIn(stretchesOf(found, state)),
    better: false,
  };
  for (const plan of plans) {
    if (left() < 2) break;
    // What all of the plan does tells which hours over can be helped at all.
    const full = scheduleOf(plan, then);
    const down = judge.study(full);
    const ranked = ranking(plan, { up: judge.up.result, down, inHand, settings, weights, judge });
    const tried = new Map<number, Judged>();
    const take = (count: number): Judged => {
      let made = tried.get(count);
      if (!made) {
        const schedule = scheduleOf(ranked.slice(0, count), then);
        tried.set(count, (made = { schedule, figures: judge.of(schedule) }));
      }
      return made;
    };
    // The fewest days that keep the criterion, by halving; all where they do not either.
    let low = 0;
    let high = ranked.length;
    yield take(high);
    while (take(high).figures.kept && high - low > 1 && left() > 0) {
      const middle = (low + high) >> 1;
      const half = take(middle);
      yield half;
      if (half.figures.kept) high = middle;
      else low = middle;
    }
    for (const [count, { figures }] of tried) {
      if (compareScores(figures, ideal.figures) >= 0) continue;
      ideal = { figures, days: daysIn(ranked.slice(0, count)), better: true };
    }
  }
  return { ...ideal, runs: judge.runs - before };
}

/** Stretches of a day end where the sun through the glass falls under these shares of its most. */
const SUN_SHARES = [0.05, 0.15, 0.3, 0.45];

/** Quarter hours of one local day in a row in which the blind is down. */
interface Stretch {
  day: number;
  /** First step and the one after the last. */
  from: number;
  to: number;
  /** Quarters of the local clock at both. */
  down: number;
  up: number;
}

/** One stretch a day from the first hour that is wanted to the last. */
function daysLowered(result: StudyResult, wanted: (hour: number) => boolean): Stretch[] {
  const { day } = result.calendar;
  const lowered = new Uint8Array(STEPS);
  let first = -1;
  for (let hour = 0; hour < HOURS; hour++) {
    const step = hour * STEPS_PER_HOUR;
    if (!wanted(hour)) continue;
    if (first < 0 || day[first] !== day[step]) first = step;
    lowered.fill(1, first, step + STEPS_PER_HOUR);
  }
  return stretchesOf(result, lowered);
}

/** Positions of a year as stretches, parted at midnight. */
function stretchesOf({ calendar }: StudyResult, lowered: Uint8Array): Stretch[] {
  const { day, quarter } = calendar;
  const list: Stretch[] = [];
  let open: Stretch | undefined;
  for (let step = 0; step < STEPS; step++) {
    // A change of the clock parts a stretch too.
    const goesOn = open?.day === day[step] && quarter[step] === open.up;
    if (!lowered[step]) open = undefined;
    else if (open && goesOn) {
      open.to = step + 1;
      open.up++;
    } else {
      open = {
        day: day[step],
        from: step,
        to: step + 1,
        down: quarter[step],
        up: quarter[step] + 1,
      };
      list.push(open);
    }
  }
  return list;
}

/** 1 at the steps with any blind of the target down; STEPS values. */
function loweredSteps({ openings }: StudyResult, inHand: TargetInHand): Uint8Array {
  const lowered = new Uint8Array(STEPS);
  for (const { id, blind } of openings) {
    if (!blind || !inHand.openings.has(id)) continue;
    for (let step = 0; step < STEPS; step++) if (blind.state[step] !== 0) lowered[step] = 1;
  }
  return lowered;
}

function scheduleOf(stretches: readonly Stretch[], then: RuleAction): Schedule {
  const rules = [...stretches]
    .sort((a, b) => a.from - b.from)
    .map(({ day, down, up }, i): Rule => {
      const month = monthOfDay(day);
      const date = `${pad(month)}-${pad(day - dayOfYear(month, 1) + 1)}`;
      return {
        id: `day-${i}`,
        when: {
          dates: { from: date, to: date },
          clock: { from: down * QUARTER, to: up * QUARTER },
        },
        then,
      };
    });
  return { id: 'hindsight', name: 'With hindsight', rules, minMinutesBetweenMoves: 0 };
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

/** Share of the target's glass behind which somebody is in at the steps with the sun up; STEPS values. */
function occupiedDaylight(
  result: StudyResult,
  { openings }: TargetInHand,
  sunUp: Uint8Array,
): Float64Array {
  const own = result.openings.filter((o) => openings.has(o.id));
  const area = own.reduce((sum, o) => sum + o.glassArea, 0);
  const seen = new Float64Array(STEPS);
  for (const { room, glassArea } of own) {
    const { occupied } = result.rooms.find((r) => r.id === room)!.runs.with.model;
    for (let step = 0; step < STEPS; step++) {
      if (occupied[Math.floor(step / STEPS_PER_HOUR)])
        seen[step] += (sunUp[step] * glassArea) / area;
    }
  }
  return seen;
}

function daysIn(stretches: readonly Stretch[]): number {
  return new Set(stretches.map((s) => s.day)).size;
}

function pad(n: number): string {
  return String(n).padStart(2, '0');
}
