import { HOURS, STEPS_PER_HOUR, type YearCalendar } from '../time/index.ts';
import type { ClockSpan, DayProfiles, OccupiedHours } from './types.ts';

const QUARTERS_PER_HOUR = 4;
const MINUTES_PER_QUARTER = 15;

/** Whether hour `hour` of the year falls on a Saturday or Sunday of the local calendar. */
export function isWeekend(calendar: YearCalendar, hour: number): boolean {
  return calendar.weekday[calendar.day[hour * STEPS_PER_HOUR]] >= 6;
}

/** Minutes after local midnight at the start of an hour of the year. */
export function clockOfHour(calendar: YearCalendar, hour: number): number {
  return calendar.quarter[hour * STEPS_PER_HOUR] * MINUTES_PER_QUARTER;
}

/** Whether a clock time lies in a span; the end is outside it. */
export function inSpan(span: ClockSpan, minutes: number): boolean {
  if (span.from === span.to) return true;
  return span.from < span.to
    ? minutes >= span.from && minutes < span.to
    : minutes >= span.from || minutes < span.to;
}

/** Watts in each hour of the year; HOURS values. */
export function profileYear(profiles: DayProfiles, calendar: YearCalendar): Float64Array {
  const year = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const day = isWeekend(calendar, hour) ? profiles.weekend : profiles.weekday;
    year[hour] = day[Math.floor(calendar.quarter[hour * STEPS_PER_HOUR] / QUARTERS_PER_HOUR)];
  }
  return year;
}

/** 1 in each hour in which somebody is in the room as it starts; HOURS values. */
export function occupiedYear(occupied: OccupiedHours, calendar: YearCalendar): Uint8Array {
  const year = new Uint8Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const spans = isWeekend(calendar, hour) ? occupied.weekend : occupied.weekday;
    const minutes = clockOfHour(calendar, hour);
    year[hour] = spans.some((span) => inSpan(span, minutes)) ? 1 : 0;
  }
  return year;
}

/** 1 in each hour of the given months and clock span; HOURS values. */
export function spanYear(
  calendar: YearCalendar,
  clock?: ClockSpan,
  months?: readonly number[],
): Uint8Array {
  const year = new Uint8Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const inMonth = months === undefined || months.includes(calendar.month[hour]);
    const inClock = clock === undefined || inSpan(clock, clockOfHour(calendar, hour));
    year[hour] = inMonth && inClock ? 1 : 0;
  }
  return year;
}
