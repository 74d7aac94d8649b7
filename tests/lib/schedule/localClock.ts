import { DateTime } from 'luxon';
import { STEPS } from '../../../lib/time/index.ts';

export interface LocalDate {
  month: number;
  day: number;
  /** ISO weekday of that date in the calendar year. */
  weekday: number;
}

/** A date of the calendar year with its ISO weekday. */
export interface LocalDate {
  month: number;
  day: number;
  weekday: number;
}

/** Date and clock of one step, read from luxon. */
export interface LocalTime extends LocalDate {
  minutes: number;
  /** The date before: the year is a loop and has no 29 February. */
  before: LocalDate;
}

/**
 * Local date and clock at the steps asked for of a typical year laid over a calendar year: instants
 * follow each other every 15 minutes, and the day of 29 February (standard time) is stepped over.
 */
export function localTimes(
  zone: string,
  year: number,
  startUtc: number,
  steps: Iterable<number>,
): LocalTime[] {
  const { isInLeapYear } = DateTime.utc(year);
  const first = DateTime.utc(year).plus({ hours: startUtc }).toMillis();
  const standard = Math.min(
    DateTime.utc(year, 1, 15).setZone(zone).offset,
    DateTime.utc(year, 7, 15).setZone(zone).offset,
  );
  const leapDay = DateTime.utc(year, 2, 29).minus({ minutes: standard }).toMillis();
  const dates = new Map<string, LocalDate & { before: LocalDate }>();
  return Array.from(steps, (step) => {
    const plain = first + step * 15 * 60_000;
    const skipped = isInLeapYear && plain >= leapDay ? 24 * 3_600_000 : 0;
    const { month, day, hour, minute } = DateTime.fromMillis(plain + skipped, { zone });
    const key = `${month}-${day}`;
    let date = dates.get(key);
    if (!date) {
      const today = dateOf(year, month, day);
      date = { ...today, before: dayBefore(year, today) };
      dates.set(key, date);
    }
    return { ...date, minutes: hour * 60 + minute };
  });
}

function dateOf(year: number, month: number, day: number): LocalDate {
  const folded = month === 2 && day === 29 ? 28 : day;
  return { month, day: folded, weekday: DateTime.utc(year, month, folded).weekday };
}

function dayBefore(year: number, { month, day }: LocalDate): LocalDate {
  const before = DateTime.utc(year, month, day).minus({ days: 1 });
  return dateOf(year, before.month, before.day);
}

/** The local time of every step; STEPS values. */
export function localYear(zone: string, year: number, startUtc: number): LocalTime[] {
  return localTimes(zone, year, startUtc, new Uint8Array(STEPS).keys());
}
