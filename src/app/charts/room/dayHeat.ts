import { DAYS, HOURS, STEPS_PER_HOUR } from '../../../../lib/time/index.ts';
import type { YearCalendar } from '../../../../lib/time/index.ts';

/** Hours of each local day in which a value is over a limit; DAYS values. */
export function hoursOver(
  values: ArrayLike<number>,
  calendar: YearCalendar,
  limit: number,
): Uint8Array {
  const days = new Uint8Array(DAYS);
  for (let hour = 0; hour < HOURS; hour++) {
    if (values[hour] > limit) days[calendar.day[hour * STEPS_PER_HOUR]]++;
  }
  return days;
}

/** Largest value of each local day; DAYS values. */
export function dayMaxima(values: ArrayLike<number>, calendar: YearCalendar): Float64Array {
  const days = new Float64Array(DAYS).fill(-Infinity);
  for (let hour = 0; hour < HOURS; hour++) {
    const day = calendar.day[hour * STEPS_PER_HOUR];
    days[day] = Math.max(days[day], values[hour]);
  }
  return days;
}

/** Most hours a local day has; one with a clock change has an hour more. */
export const DAY_HOURS = 24;
