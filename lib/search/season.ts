import { DAYS, dayOfYear, daysInMonth } from '../time/index.ts';

/** First and last days that a season may have, each in order from midwinter to midwinter. */
export interface SeasonGrid {
  from: string[];
  to: string[];
  /** Days since midwinter of a date `MM-DD`, so that a season never wraps. */
  place(date: string): number;
  /** The same of a day of the year, 0 to 364. */
  placeDay(day: number): number;
}

/** Half-months of the year, the first and last day of each. */
const HALVES = daysInMonth.flatMap((days, i) => [
  { first: monthDay(i + 1, 1), last: monthDay(i + 1, 15) },
  { first: monthDay(i + 1, 16), last: monthDay(i + 1, days) },
]);

/**
 * Seasons on the half-month, told from 1 January in the north and from 1 July in the south: the
 * warm season of the south runs over the new year.
 */
export function seasonGrid(
  hemisphere: 'north' | 'south',
  allowed: { from?: readonly string[]; to?: readonly string[] } = {},
): SeasonGrid {
  const start = hemisphere === 'north' ? 0 : dayOfYear(7, 1);
  const placeDay = (day: number) => (day - start + DAYS) % DAYS;
  const place = (date: string) => placeDay(dayIndex(date));
  const sorted = (dates: readonly string[]) => [...dates].sort((a, b) => place(a) - place(b));
  return {
    from: sorted(allowed.from ?? HALVES.map((h) => h.first)),
    to: sorted(allowed.to ?? HALVES.map((h) => h.last)),
    place,
    placeDay,
  };
}

/** The dates of a season for a rule; absent for the whole year. */
export function seasonDates(
  grid: SeasonGrid,
  from: string,
  to: string,
): { dates?: { from: string; to: string } } {
  const whole = grid.place(from) === 0 && grid.place(to) === DAYS - 1;
  return whole ? {} : { dates: { from, to } };
}

/** Day of the year, 0 to 364, of `MM-DD`. */
function dayIndex(date: string): number {
  return dayOfYear(Number(date.slice(0, 2)), Number(date.slice(3)));
}

function monthDay(month: number, day: number): string {
  return `${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
