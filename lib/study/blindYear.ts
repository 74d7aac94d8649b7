import type { CompiledSchedule, RuleAction, RunCounts } from '../schedule/index.ts';
import { STEPS, STEPS_PER_HOUR } from '../time/index.ts';

/** What a blind did over the year. */
export interface BlindYear {
  controller: string;
  /** Number of the action at each step; STEPS values. */
  state: Uint8Array;
  /** Action 0 is raised. */
  actions: RuleAction[];
  /** Moves a year; slats that follow the sun are not counted. */
  moves: number;
  /** Hours lowered, whole year and with the sun up. */
  hoursLowered: number;
  daylightHoursLowered: number;
  /** Hours held up by wind. */
  hoursRaisedByWind: number;
}

/** What the positions of a year come to. */
export function blindYear(
  controller: string,
  schedule: CompiledSchedule,
  state: Uint8Array,
  counts: RunCounts,
  sunUp: Uint8Array,
): BlindYear {
  let lowered = 0;
  let inDaylight = 0;
  for (let step = 0; step < STEPS; step++) {
    if (state[step] === 0) continue;
    lowered++;
    inDaylight += sunUp[step];
  }
  return {
    controller,
    state,
    actions: schedule.actions,
    moves: counts.moves,
    hoursLowered: lowered / STEPS_PER_HOUR,
    daylightHoursLowered: inDaylight / STEPS_PER_HOUR,
    hoursRaisedByWind: counts.stepsRaisedByWind / STEPS_PER_HOUR,
  };
}
