import { DAYS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { StudyResult } from '../study/index.ts';
import { QUARTER, QUARTERS } from './clock.ts';
import type { TargetInHand } from './target.ts';
import { occupiedDaylight } from './view.ts';
import type { SearchWeights } from './types.ts';

/** A price that no timer of a season and clock can be under, in view hours. */
export type TimerFloor = (season: { first: number; last: number }, clock: Clock) => number;

interface Clock {
  /** Minutes after midnight. */
  from: number;
  to: number;
}

/**
 * Prices timers without a study, as far as that goes: the view lost is known from clock, calendar
 * and wind, and every day without wind has two moves. The first and last day are left out, as hours
 * past midnight may belong to either.
 *
 * @param down a study with the blinds down for a part of the year, which tells where wind raises them
 * @param place days since midwinter of a day of the year; seasons count by it
 */
export function timerFloor(
  up: StudyResult,
  down: StudyResult,
  inHand: TargetInHand,
  weights: SearchWeights,
  sunUp: Uint8Array,
  place: (day: number) => number,
): TimerFloor {
  const { day, quarter } = up.calendar;
  const view = new Float64Array((DAYS + 1) * QUARTERS);
  const calm = new Uint8Array(DAYS).fill(1);
  const places = Uint16Array.from({ length: DAYS }, (_, d) => place(d));
  const own = down.openings.filter((o) => inHand.openings.has(o.id) && o.blind);
  for (let step = 0; step < STEPS; step++) {
    if (own[0]?.blind!.state[step] === 0) calm[places[day[step]]] = 0;
  }
  occupiedDaylight(down, inHand, sunUp, true).forEach((share, step) => {
    view[(places[day[step]] + 1) * QUARTERS + quarter[step]] += share / STEPS_PER_HOUR;
  });
  // Sums over all days up to one, quarter by quarter.
  for (let i = QUARTERS; i < view.length; i++) view[i] += view[i - QUARTERS];
  const calmDays = new Uint16Array(DAYS + 1);
  for (let i = 0; i < DAYS; i++) calmDays[i + 1] = calmDays[i] + calm[i];

  return ({ first, last }, { from, to }) => {
    const [a, b] = [first + 1, Math.max(last, first + 1)];
    const end = to / QUARTER;
    const count = (end - from / QUARTER + QUARTERS) % QUARTERS || QUARTERS;
    let hours = 0;
    for (let i = 0; i < count; i++) {
      const q = (from / QUARTER + i) % QUARTERS;
      hours += view[b * QUARTERS + q] - view[a * QUARTERS + q];
    }
    const moves = 2 * (calmDays[b] - calmDays[a]);
    return weights.viewHour * hours + weights.move * moves;
  };
}
