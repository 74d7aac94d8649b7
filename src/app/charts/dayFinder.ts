import { DAYS, HOURS, STEPS_PER_HOUR, dayOfYear } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';

/** Days either side of the date that are looked at. */
const WITHIN = 7;

/** Local day with the warmest hour outside; the first of several. */
export function hottestDay(calendar: YearCalendar, outdoor: ArrayLike<number>): number {
  let best = 0;
  for (let hour = 1; hour < HOURS; hour++) if (outdoor[hour] > outdoor[best]) best = hour;
  return calendar.day[best * STEPS_PER_HOUR];
}

/**
 * The clearest day within a week of a date: the one with the largest part of the irradiation
 * outside the atmosphere reaching a level plane, so that longer days are not taken for clearer.
 * @param ghi global horizontal irradiance, W/m2; HOURS values
 * @param extraterrestrial the same outside the atmosphere, Wh/m2 a local day; DAYS values
 */
export function clearestDay(
  calendar: YearCalendar,
  ghi: ArrayLike<number>,
  extraterrestrial: ArrayLike<number>,
  month: number,
  dayOfMonth: number,
): number {
  const sums = new Float64Array(DAYS);
  for (let hour = 0; hour < HOURS; hour++) {
    sums[calendar.day[hour * STEPS_PER_HOUR]] += ghi[hour];
  }
  const middle = dayOfYear(month, dayOfMonth);
  let best = middle;
  let clearest = -1;
  for (let offset = -WITHIN; offset <= WITHIN; offset++) {
    const day = (middle + offset + DAYS) % DAYS;
    const clearness = extraterrestrial[day] > 0 ? sums[day] / extraterrestrial[day] : 0;
    if (clearness > clearest) {
      clearest = clearness;
      best = day;
    }
  }
  return best;
}
