/** Days, hours and quarter-hour steps of a typical year; 29 February is left out. */
export const DAYS = 365;
export const HOURS = 8760;
export const STEPS_PER_HOUR = 4;
export const STEPS = HOURS * STEPS_PER_HOUR;

/** Days in each month of a typical year, January first. */
export const daysInMonth: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const firstDay = daysInMonth.reduce<number[]>(
  (first, days) => [...first, first.at(-1)! + days],
  [0],
);

/** Month 1 to 12 of a day index 0 to 364. */
export function monthOfDay(day: number): number {
  let month = 1;
  while (month < 12 && day >= firstDay[month]) month++;
  return month;
}

/**
 * Day index 0 to 364 of a month 1 to 12 and a day of the month; 29 February counts as the 28th.
 * Days past the end of the month give its last day.
 */
export function dayOfYear(month: number, day: number): number {
  return firstDay[month - 1] + Math.min(day, daysInMonth[month - 1]) - 1;
}
