import { clockChanges, standardOffset } from './zone.ts';
import { DAYS, HOURS, STEPS, STEPS_PER_HOUR, dayOfYear, daysInMonth, monthOfDay } from './year.ts';

const MS_PER_HOUR = 3_600_000;
const MS_PER_DAY = 24 * MS_PER_HOUR;
const QUARTERS_PER_DAY = 96;
const MS_PER_STEP = MS_PER_HOUR / STEPS_PER_HOUR;

/** The local clock at every step of a typical year that is laid over a calendar year. */
export interface YearCalendar {
  zone: string;
  year: number;
  /** Hours from 1 January 00:00 UTC to the start of hour 0. */
  startUtc: number;
  /** Standard-time offset of the zone, hours east of UTC. */
  standardOffset: number;
  /** Quarter of the local clock's day at the start of each step, 0 to 95; STEPS values. */
  quarter: Uint8Array;
  /** Local day of the year of each step, 0 to 364; STEPS values. */
  day: Uint16Array;
  /** Local month of each hour, 1 to 12; HOURS values. */
  month: Uint8Array;
  /** ISO weekday, 1 Monday to 7 Sunday, of each day of the year; DAYS values. */
  weekday: Uint8Array;
}

/**
 * Lays a typical year over a calendar year of a time zone, so that schedules can speak in local
 * clock time. 29 February of a leap year is stepped over. `startUtc` is taken to the nearest
 * quarter of an hour, the grain of the clock here.
 */
export function buildCalendar(zone: string, year: number, startUtc: number): YearCalendar {
  const standard = standardOffset(zone, year);
  const first = Date.UTC(year, 0, 1) + (Math.round(startUtc * 4) / 4) * MS_PER_HOUR;
  const leap = daysInYear(year) === 366;
  const standardStart = first + standard * MS_PER_HOUR;
  const leapDay = Date.UTC(year, 1, 29);
  const changes = clockChanges(zone, first, first + 367 * MS_PER_DAY);

  const quarter = new Uint8Array(STEPS);
  const day = new Uint16Array(STEPS);
  const newYear = Date.UTC(year, 0, 1);
  let change = 0;
  let nextLook = -Infinity;
  let skippedBefore = 0;
  let localQuarter = 0;
  let today = 0;
  for (let step = 0; step < STEPS; step++) {
    const elapsed = step * MS_PER_STEP;
    const skipped = leap && standardStart + elapsed >= leapDay ? MS_PER_DAY : 0;
    const instant = first + elapsed + skipped;
    const jumped = skipped !== skippedBefore;
    if (instant >= nextLook || localQuarter === QUARTERS_PER_DAY || jumped) {
      // A new day, a change of the clock or the leap day stepped over: read the local clock afresh.
      skippedBefore = skipped;
      while (change + 1 < changes.length && changes[change + 1].instant <= instant) change++;
      const local = instant + changes[change].minutes * 60_000;
      const localDay = Math.floor(local / MS_PER_DAY);
      localQuarter = Math.floor((local - localDay * MS_PER_DAY) / MS_PER_STEP);
      today = typicalDay(localDay - newYear / MS_PER_DAY, leap);
      nextLook = Math.min(changes[change + 1]?.instant ?? Infinity, instant + MS_PER_DAY);
    }
    quarter[step] = localQuarter++;
    day[step] = today;
  }

  const month = new Uint8Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) month[hour] = monthOfDay(day[hour * STEPS_PER_HOUR]);
  return {
    zone,
    year,
    startUtc,
    standardOffset: standard,
    quarter,
    day,
    month,
    weekday: weekdays(year),
  };
}

/** Day of the calendar year to day of the typical year; the ends wrap round. */
function typicalDay(calendarDay: number, leap: boolean): number {
  const folded = leap && calendarDay >= 59 ? calendarDay - 1 : calendarDay;
  return ((folded % DAYS) + DAYS) % DAYS;
}

function daysInYear(year: number): number {
  return (Date.UTC(year + 1, 0, 1) - Date.UTC(year, 0, 1)) / MS_PER_DAY;
}

function weekdays(year: number): Uint8Array {
  const result = new Uint8Array(DAYS);
  for (let month = 1; month <= 12; month++) {
    for (let day = 1; day <= daysInMonth[month - 1]; day++) {
      const sundayFirst = new Date(Date.UTC(year, month - 1, day)).getUTCDay();
      result[dayOfYear(month, day)] = sundayFirst === 0 ? 7 : sundayFirst;
    }
  }
  return result;
}

/** Local date at a step as `YYYY-MM-DD`. */
export function dateText(calendar: YearCalendar, step: number): string {
  const day = calendar.day[step];
  const month = monthOfDay(day);
  const dayOfMonth = day - dayOfYear(month, 1) + 1;
  return `${calendar.year}-${pad(month)}-${pad(dayOfMonth)}`;
}

/** Local clock at the start of a step as `HH:MM`. */
export function clockText(calendar: YearCalendar, step: number): string {
  const minutes = calendar.quarter[step] * 15;
  return `${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}

function pad(n: number): string {
  return String(n).padStart(2, '0');
}
