import { DAYS, daysInMonth } from '../../time/index.ts';

/** First day of each month and the end of the year: 13 day indices. */
export const monthStart: readonly number[] = daysInMonth.reduce<number[]>(
  (starts, days) => [...starts, starts.at(-1)! + days],
  [0],
);

/** Month 0 to 11 of each day of the year. */
export const monthOfDayIndex: Uint8Array = Uint8Array.from(
  { length: DAYS },
  (_, day) => monthStart.findIndex((start) => start > day) - 1,
);
