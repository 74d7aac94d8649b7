import { STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { CompiledSchedule } from './compile.ts';
import { advance, clearCounts, copyBlind, raisedBlind } from './moves.ts';
import type { BlindState, RunCounts } from './moves.ts';
import { roomWatch } from './roomWatch.ts';
import type { Sensors } from './sensors.ts';
import { windySteps } from './wind.ts';
import type { WindRule } from './wind.ts';
import { findWishes, wishes } from './wishes.ts';

export type RunOptions = WindRule;

/** A year is a loop: it is begun in the state its last steps lead to, two days of them. */
export const LEAD_IN = 2 * 24 * STEPS_PER_HOUR;

/** All a stepper remembers between steps. */
export interface StepperState extends BlindState {
  /** 1 for each room trigger that holds, in order of the rules. */
  roomHeld: Uint8Array;
}

/** A blind's controller taken through the year step by step. */
export interface Stepper {
  /**
   * Takes step `i` of the year and gives the action number it leads to. Steps are taken in order;
   * the room's operative temperature (C) counts only where rules ask for it. No allocation.
   */
  step(i: number, roomTemperature: number): number;
  /** Counts since the start, the last clearing or the restored state. */
  readonly counts: Readonly<RunCounts>;
  clearCounts(): void;
  /** A copy of all it remembers, counts included; written to `into` where given. */
  snapshot(into?: StepperState): StepperState;
  /** Goes back to a snapshot. */
  restore(state: StepperState): void;
}

/**
 * The first rule that holds decides, raised where none does. Triggers latch: they hold from `at`
 * until the value has crossed back to `release`, whether or not their rule has its turn. A move
 * waits for the least time since the last one; wind waits for nothing and goes before all rules.
 * Begins raised and free to move, room triggers off: see `leadIn`.
 */
export function createStepper(
  schedule: CompiledSchedule,
  sensors: Sensors,
  options: RunOptions = {},
): Stepper {
  const room = roomWatch(findWishes(schedule, sensors));
  const wish = wishes.slice();
  const windy = windySteps(sensors.wind, options);
  const { minSteps } = schedule;
  const blind = raisedBlind();
  return {
    counts: blind,
    clearCounts: () => clearCounts(blind),
    step(i, roomTemperature) {
      const first = room.read(roomTemperature) ? room.wish(i) : -1;
      return advance(blind, first < 0 ? wish[i] : first, windy[i], minSteps);
    },
    snapshot(into = { ...raisedBlind(), roomHeld: new Uint8Array(room.held.length) }) {
      copyBlind(blind, into);
      into.roomHeld.set(room.held);
      return into;
    },
    restore(state) {
      copyBlind(state, blind);
      room.restore(state.roomHeld);
    },
  };
}

/** Runs the end of the year that leads into its start, with the room at a steady temperature (C). */
export function leadIn(stepper: Stepper, roomTemperature: number): void {
  for (let i = STEPS - LEAD_IN; i < STEPS; i++) stepper.step(i, roomTemperature);
  stepper.clearCounts();
}
