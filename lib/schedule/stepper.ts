import { STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { CompiledSchedule } from './compile.ts';
import { clearCounts, follow, raised } from './drive.ts';
import type { DriveState, RunCounts } from './drive.ts';
import { latched } from './latch.ts';
import type { Sensors } from './sensors.ts';
import { addChanges, has, nextIn, noSteps } from './stepSet.ts';
import type { StepSet } from './stepSet.ts';
import { turnsOf, wishAt } from './turns.ts';
import type { Turn } from './turns.ts';
import { windySteps } from './wind.ts';
import type { WindRule } from './wind.ts';

export type RunOptions = WindRule;

/** All a stepper remembers between steps. */
export interface StepperState extends DriveState {
  /** Whether each room trigger holds, in order of the rules. */
  roomHeld: boolean[];
}

/** A blind's controller taken through the year step by step. */
export interface Stepper {
  /**
   * Takes step `i` of the year and gives the action number it leads to. Steps are taken in order;
   * the room's operative temperature (C) counts only where rules ask for it.
   */
  step(i: number, roomTemperature: number): number;
  /**
   * Takes the four steps of an hour at one room temperature and writes their action numbers into
   * `state` (STEPS values): the same as `step` for each of them, but quicker.
   */
  stepHour(hour: number, roomTemperature: number, state: Uint8Array): void;
  /** Counts since the start or the last clearing. */
  readonly counts: Readonly<RunCounts>;
  /** Sets the counts to zero. */
  clearCounts(): void;
  /** A copy of all it remembers, counts included. */
  snapshot(): StepperState;
  /** Goes back to a snapshot. */
  restore(state: StepperState): void;
}

/** A year is a loop: it is begun in the state these last steps of it lead to. */
const LEAD_IN = 2 * 24 * STEPS_PER_HOUR;

/** What decides at each step, and the blind that follows. */
interface Run {
  turns: Turn[];
  windy: StepSet;
  /** Steps at which a turn or the wind begins or ends. */
  changes: StepSet;
  minSteps: number;
  blind: DriveState;
}

function newRun(schedule: CompiledSchedule, sensors: Sensors, options: RunOptions): Run {
  const { minSteps } = schedule;
  const turns = turnsOf(schedule, sensors);
  const windy = windySteps(sensors.wind, options);
  const changes = noSteps();
  addChanges(changes, windy);
  for (const { steps } of turns) addChanges(changes, steps);
  return { turns, windy, changes, minSteps, blind: raised(minSteps) };
}

/**
 * The first rule that holds decides, raised where none does. Triggers latch: they hold from `at`
 * until the value has crossed back to `release`, whether or not their rule has its turn. A move
 * waits for the least time since the last one; wind waits for nothing and goes before all rules.
 * Begins raised and free to move, with room triggers off: see `leadIn`.
 */
export function createStepper(
  schedule: CompiledSchedule,
  sensors: Sensors,
  options: RunOptions = {},
): Stepper {
  const run = newRun(schedule, sensors, options);
  const { turns, windy, minSteps, blind } = run;
  const triggers = turns.flatMap((turn) => turn.room);
  const read = (room: number) => {
    for (const trigger of triggers) trigger.held = latched(trigger.latch, trigger.held, room);
  };
  return {
    counts: blind,
    clearCounts: () => clearCounts(blind),
    step(i, room) {
      read(room);
      follow(blind, wishAt(turns, i), has(windy, i), 1, minSteps);
      return blind.action;
    },
    stepHour(hour, room, state) {
      read(room);
      const first = hour * STEPS_PER_HOUR;
      for (let i = first; i < first + STEPS_PER_HOUR; i++) state[i] = 0;
      live(run, first, first + STEPS_PER_HOUR, state);
    },
    snapshot: () => ({ ...blind, roomHeld: triggers.map(({ held }) => held) }),
    restore({ roomHeld, ...before }) {
      Object.assign(blind, before);
      triggers.forEach((trigger, i) => (trigger.held = roomHeld[i]));
    },
  };
}

/** Runs the end of the year that leads into its start, with the room at a steady temperature (C). */
export function leadIn(stepper: Stepper, room: number): void {
  for (let i = STEPS - LEAD_IN; i < STEPS; i++) stepper.step(i, room);
  stepper.clearCounts();
}

/**
 * Moves a blind through the year: the states that `createStepper`, `leadIn` and STEPS steps would
 * give. Rules that ask for the room's temperature never hold here: they are stepped together with
 * the room.
 * @param state filled with the action number of each step; STEPS values
 */
export function runSchedule(
  schedule: CompiledSchedule,
  sensors: Sensors,
  options: RunOptions,
  state: Uint8Array,
): RunCounts {
  const run = newRun(schedule, sensors, options);
  live(run, STEPS - LEAD_IN, STEPS, state);
  clearCounts(run.blind);
  state.fill(0, 0, STEPS);
  live(run, 0, STEPS, state);
  const { moves, stepsRaisedByWind, delays, stepsDelayed } = run.blind;
  return { moves, stepsRaisedByWind, delays, stepsDelayed };
}

/**
 * Takes a blind from one change of rules or wind to the next, the room's triggers as they are.
 * @param state 0 from `from` to `to`
 */
function live(run: Run, from: number, to: number, state: Uint8Array): void {
  const { turns, windy, changes, minSteps, blind } = run;
  for (let start = from; start < to;) {
    const end = nextIn(changes, start + 1, to);
    const before = blind.action;
    const wish = wishAt(turns, start);
    const moved = start + follow(blind, wish, has(windy, start), end - start, minSteps);
    put(state, before, start, moved);
    put(state, blind.action, moved, end);
    start = end;
  }
}

/** Writes an action into a state that is 0 so far. */
function put(state: Uint8Array, action: number, from: number, to: number): void {
  if (action === 0) return;
  for (let i = from; i < to; i++) state[i] = action;
}
