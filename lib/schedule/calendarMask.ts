import { DAYS, HOURS, STEPS, STEPS_PER_HOUR, dayOfYear, monthOfDay } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import type { RuleConditions } from './types.ts';

export const QUARTERS = 96;
export const MINUTES_PER_QUARTER = 15;
const MINUTES_PER_DAY = QUARTERS * MINUTES_PER_QUARTER;

/** Month 1 to 12 of each day of the year. */
const monthOf = Uint8Array.from({ length: DAYS }, (_, day) => monthOfDay(day));

/** The calendar conditions of a rule; all of them must hold at the same instant. */
export type CalendarConditions = Pick<
  RuleConditions,
  'months' | 'dates' | 'weekdays' | 'clock' | 'grid'
>;

/**
 * 1 at each step whose local date and clock meet a rule's calendar conditions; STEPS values. The
 * date is that of the step itself, so a span past midnight is cut where its day is not allowed.
 */
export function makeMask(when: CalendarConditions, calendar: YearCalendar): Uint8Array {
  const { day, quarter, weekday } = calendar;
  const days = allowedDays(when);
  const { weekdays } = when;
  if (weekdays) for (let d = 0; d < DAYS; d++) if (!weekdays.includes(weekday[d])) days[d] = 0;
  const quarters = allowedQuarters(when);
  const mask = new Uint8Array(STEPS);
  for (let hour = 0; hour < HOURS; hour++) {
    const first = hour * STEPS_PER_HOUR;
    const end = first + STEPS_PER_HOUR;
    if ((days[day[first]] | days[day[end - 1]]) === 0) continue;
    for (let step = first; step < end; step++) {
      const d = day[step];
      mask[step] = days[d] & quarters[(monthOf[d] - 1) * QUARTERS + quarter[step]];
    }
  }
  return mask;
}

/** 1 at each day of the year that months and dates allow; DAYS values. */
export function allowedDays({ months, dates }: CalendarConditions): Uint8Array {
  const from = dates && dayIndex(dates.from);
  const to = dates && dayIndex(dates.to);
  return Uint8Array.from(monthOf, (month, day) => {
    if (months && !months.includes(month)) return 0;
    if (from === undefined || to === undefined) return 1;
    return Number(from <= to ? day >= from && day <= to : day >= from || day <= to);
  });
}

/**
 * 1 at each quarter of the local day, month by month, that the clock and the painted grid allow;
 * 12 x 96 values, January first.
 */
export function allowedQuarters({ clock, grid }: CalendarConditions): Uint8Array {
  const allowed = new Uint8Array(12 * QUARTERS);
  if (!grid) allowed.fill(1);
  for (const span of grid ?? []) {
    const start = (span.month - 1) * QUARTERS;
    const quarters = quartersIn(span.from, span.to);
    for (let i = 0; i < QUARTERS; i++) allowed[start + i] |= quarters[i];
  }
  if (clock) {
    const quarters = quartersIn(clock.from, clock.to);
    for (let i = 0; i < allowed.length; i++) allowed[i] &= quarters[i % QUARTERS];
  }
  return allowed;
}

/**
 * Quarters of the day from `from` up to `to` (minutes, 0 to 1440); past midnight where `to` is not
 * after `from`, all day where both are the same time of day.
 */
function quartersIn(from: number, to: number): Uint8Array {
  const start = from % MINUTES_PER_DAY;
  return Uint8Array.from({ length: QUARTERS }, (_, i) => {
    const at = i * MINUTES_PER_QUARTER;
    if (start === to) return 1;
    return Number(start < to ? at >= start && at < to : at >= start || at < to);
  });
}

/** Day index 0 to 364 of `MM-DD`; 29 February is taken as the 28th. */
export function dayIndex(monthDay: string): number {
  const [month, day] = monthDay.split('-').map(Number);
  return dayOfYear(month, day);
}
