import { HOURS, STEPS_PER_HOUR } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { daysInSeason } from './screen.ts';
import type { HouseOpening } from './types.ts';

/**
 * What an insect screen in its season leaves of an opening's airing flow, 0 to 1; HOURS values.
 */
export function screenFlow(opening: HouseOpening, calendar: YearCalendar): Float64Array {
  const flow = new Float64Array(HOURS).fill(1);
  const { screen, inRoom } = opening;
  if (!screen) return flow;
  const season = daysInSeason(screen.from, screen.to);
  for (let hour = 0; hour < HOURS; hour++) {
    if (season[calendar.day[hour * STEPS_PER_HOUR]]) flow[hour] = inRoom.screenFlowFactor;
  }
  return flow;
}

/** What a lowered blind leaves of an opening's airing flow, 0 to 1: all, where it is not outside. */
export function flowPastBlind({ blind, inRoom }: HouseOpening): number {
  return blind?.blind.position === 'external' ? inRoom.blindFlowFactor : 1;
}

/**
 * The flow that is left in one hour with the blind where it stands, 0 to 1.
 * @param past what the lowered blind leaves of it (flowPastBlind)
 */
export function flowInHour(
  screened: Float64Array,
  past: number,
  state: Uint8Array,
  hour: number,
): number {
  if (past === 1) return screened[hour];
  const i = hour * STEPS_PER_HOUR;
  if ((state[i] | state[i + 1] | state[i + 2] | state[i + 3]) === 0) return screened[hour];
  let lowered = 0;
  for (let k = i; k < i + STEPS_PER_HOUR; k++) if (state[k] !== 0) lowered++;
  return screened[hour] * (1 - (lowered / STEPS_PER_HOUR) * (1 - past));
}

/** The flow that is left past screen and blind; HOURS values. */
export function flowOfYear(
  opening: HouseOpening,
  screened: Float64Array,
  state: Uint8Array | undefined,
): Float64Array {
  const past = flowPastBlind(opening);
  if (!state || past === 1) return screened;
  return screened.map((_, hour) => flowInHour(screened, past, state, hour));
}
