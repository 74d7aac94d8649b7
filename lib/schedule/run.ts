import { HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { CompiledSchedule } from './compile.ts';
import { EACH_STEP, aligned, hourWords } from './hourWords.ts';
import { advance, clearCounts, raisedBlind } from './moves.ts';
import type { RunCounts } from './moves.ts';
import type { Sensors } from './sensors.ts';
import { LEAD_IN } from './stepper.ts';
import type { RunOptions } from './stepper.ts';
import { windySteps } from './wind.ts';
import { findWishes, wishWords, wishes } from './wishes.ts';

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
  findWishes(schedule, sensors);
  const windy = windySteps(sensors.wind, options);
  const windWords = hourWords(windy);
  const { minSteps } = schedule;
  const blind = raisedBlind();
  for (let i = STEPS - LEAD_IN; i < STEPS; i++) advance(blind, wishes[i], windy[i], minSteps);
  clearCounts(blind);

  const out = aligned(state);
  out.set(wishes);
  let standing = Math.imul(blind.action, EACH_STEP);
  let done = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    // Most hours ask for no move.
    if (wishWords[hour] === standing && (standing === 0 || windWords[hour] === 0)) continue;
    if (hour > done) {
      blind.sinceMove += (hour - done) * STEPS_PER_HOUR;
      blind.waiting = 0;
    }
    done = hour + 1;
    for (let i = hour * STEPS_PER_HOUR; i < done * STEPS_PER_HOUR; i++) {
      out[i] = advance(blind, wishes[i], windy[i], minSteps);
    }
    standing = Math.imul(blind.action, EACH_STEP);
  }
  if (out !== state) state.set(out);
  const { moves, stepsRaisedByWind, delays, stepsDelayed } = blind;
  return { moves, stepsRaisedByWind, delays, stepsDelayed };
}
