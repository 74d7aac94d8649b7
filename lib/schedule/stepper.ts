import { HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { CompiledSchedule } from './compile.ts';
import { latch, ruleHolds } from './holds.ts';
import type { Sensors } from './holds.ts';

export interface RunOptions {
  /** Raised above this wind speed, m/s; absent: never by wind. */
  windLimit?: number;
}

/** Down again once the wind has stayed under this part of the limit (common practice) ... */
const CALM_SHARE = 0.8;
/** ... for half an hour (common practice). */
const CALM_STEPS = 2;
/** A year is a loop: it is begun in the state these last steps of it lead to. */
const LEAD_IN = 2 * 24 * STEPS_PER_HOUR;

/** Counts of one run through the year. */
export interface RunCounts {
  moves: number;
  /** Steps held up by wind that the rules wanted lowered. */
  stepsRaisedByWind: number;
  /** Steps in which a wanted move waited for the least time between moves. */
  stepsDelayed: number;
}

/** A blind's controller taken through the year step by step. */
export interface Stepper {
  /** Action number at step `i` of the year; the room's temperature in C where rules ask for it. */
  step(i: number, roomTemperature: number): number;
  readonly counts: RunCounts;
  /** Sets the counts to zero. */
  clearCounts(): void;
}

/**
 * 1 at the steps the wind holds a blind up: from above the limit until it has stayed calm.
 * STEPS values; undefined where it never does.
 */
function windySteps(wind: Float64Array, limit: number | undefined): Uint8Array | undefined {
  if (limit === undefined || !wind.some((speed) => speed > limit)) return undefined;
  const windy = new Uint8Array(STEPS);
  let calm = CALM_STEPS + 1;
  for (let hour = 0; hour < HOURS; hour++) {
    const strong = wind[hour] > limit;
    const quiet = wind[hour] < CALM_SHARE * limit;
    for (let i = hour * STEPS_PER_HOUR; i < (hour + 1) * STEPS_PER_HOUR; i++) {
      if (strong) calm = 0;
      else if (calm <= CALM_STEPS) calm = quiet ? calm + 1 : 0;
      windy[i] = calm <= CALM_STEPS ? 1 : 0;
    }
  }
  return windy;
}

/** What the rules ask for at a step, before wind and the least time between moves. */
type Wish = (i: number, room: number) => number;

/** Rules without room triggers: their wishes for the whole year, the first that holds in front. */
function wishes(schedule: CompiledSchedule, sensors: Sensors): Uint8Array {
  const wish = new Uint8Array(STEPS);
  for (const rule of [...schedule.rules].reverse()) {
    const holds = ruleHolds(rule, sensors);
    const { action } = rule;
    for (let i = 0; i < STEPS; i++) if (holds[i]) wish[i] = action;
  }
  return wish;
}

/** Rules with room triggers, whose latches go on whether or not their rule has its turn. */
function roomWish(schedule: CompiledSchedule, sensors: Sensors): Wish {
  const rules = schedule.rules.map((rule) => ({
    action: rule.action,
    holds: ruleHolds(rule, sensors),
    above: rule.when.roomAbove,
    below: rule.when.roomBelow,
    aboveHeld: false,
    belowHeld: false,
  }));
  return (i, room) => {
    let action = -1;
    for (const rule of rules) {
      if (rule.above) rule.aboveHeld = latch(rule.above, true, rule.aboveHeld, room);
      if (rule.below) rule.belowHeld = latch(rule.below, false, rule.belowHeld, room);
      const roomHolds = (!rule.above || rule.aboveHeld) && (!rule.below || rule.belowHeld);
      if (action < 0 && roomHolds && rule.holds[i]) action = rule.action;
    }
    return Math.max(action, 0);
  };
}

/**
 * The first rule that holds decides, raised where none does. Triggers latch: they hold from `at`
 * until the value has crossed back to `release`, whether or not their rule has its turn. A move
 * waits for the least time since the last one; wind waits for nothing.
 */
export function createStepper(
  schedule: CompiledSchedule,
  sensors: Sensors,
  options: RunOptions = {},
): Stepper {
  const windy = windySteps(sensors.wind, options.windLimit);
  const year = schedule.usesRoom ? undefined : wishes(schedule, sensors);
  const wish: Wish = year ? (i) => year[i] : roomWish(schedule, sensors);
  const { minSteps } = schedule;
  const counts: RunCounts = { moves: 0, stepsRaisedByWind: 0, stepsDelayed: 0 };
  let current = 0;
  let sinceMove = minSteps;
  return {
    counts,
    clearCounts() {
      counts.moves = 0;
      counts.stepsRaisedByWind = 0;
      counts.stepsDelayed = 0;
    },
    step(i, room) {
      let next = wish(i, room);
      const up = windy !== undefined && windy[i] === 1;
      if (up && next !== 0) {
        counts.stepsRaisedByWind++;
        next = 0;
      }
      if (next !== current) {
        if (up || sinceMove >= minSteps) {
          current = next;
          sinceMove = 0;
          counts.moves++;
        } else counts.stepsDelayed++;
      }
      sinceMove++;
      return current;
    },
  };
}

/** Runs the end of the year that leads into its start, with the room at `room` C. */
export function leadIn(stepper: Stepper, room: number): void {
  for (let i = STEPS - LEAD_IN; i < STEPS; i++) stepper.step(i, room);
  stepper.clearCounts();
}

/**
 * Moves a blind through the year. Rules that ask for the room's temperature never hold here: they
 * are stepped together with the room (createStepper).
 * @param state filled with the action number of each step; STEPS values
 */
export function runSchedule(
  schedule: CompiledSchedule,
  sensors: Sensors,
  options: RunOptions,
  state: Uint8Array,
): RunCounts {
  const stepper = createStepper(schedule, sensors, options);
  leadIn(stepper, NaN);
  for (let i = 0; i < STEPS; i++) state[i] = stepper.step(i, NaN);
  return stepper.counts;
}
