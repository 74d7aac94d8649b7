import { MINUTES_PER_DAY, MINUTES_PER_QUARTER, paintedQuarters } from './localYear.ts';
import type { ClockSpan } from './localYear.ts';
import type { RuleConditions } from './types.ts';
import type { ScheduleWords } from './words.ts';

/** The calendar of a rule in words. */
export interface CalendarText {
  /** Its days: `1 May to 15 Sep, Mon-Fri`. */
  heading: string;
  /** Its hours: `from 14:30 to 19:45`; empty for all day. */
  hours: string;
}

/** The months and hours that a grid paints, months alike together. */
interface PaintedMonths {
  months: string;
  hours: string;
}

/** The days and hours of a rule's calendar conditions in words. */
export function describeCalendar(when: RuleConditions, words: ScheduleWords): CalendarText {
  const { clock, grid, weekdays } = when;
  const clockText = clock ? hoursText(clock, words) : '';
  const weekdayText = weekdays ? numbered(weekdays, 7, words.weekdays, words.weekdaySpan) : [];
  const days = [datesText(when, words), words.days(weekdayText)].filter(Boolean);
  const heading = (parts: string[]) => words.heading(parts.length > 0 ? parts : [words.allYear]);
  if (!grid) return { heading: heading(days), hours: clockText };

  const painted = paintedMonths(grid, words);
  if (painted.length === 0) return { heading: words.noTime, hours: '' };
  const [first] = painted;
  if (painted.length === 1 && !when.months && !when.dates) {
    const parts = [first.months, ...days].filter(Boolean);
    return { heading: heading(parts), hours: words.all([first.hours, clockText].filter(Boolean)) };
  }
  const table = words.painted(painted.map((p) => words.hoursOfMonths(p.months, p.hours)));
  return {
    heading: heading([...days, words.paintedHours]),
    hours: words.all([clockText, table].filter(Boolean)),
  };
}

function datesText({ months, dates }: RuleConditions, words: ScheduleWords): string {
  const monthText = months ? words.days(numbered(months, 12, words.months, words.span)) : '';
  const dateText = dates ? words.span(date(dates.from, words), date(dates.to, words)) : '';
  return monthText && dateText ? words.monthsWithin(monthText, dateText) : monthText || dateText;
}

function date(monthDay: string, words: ScheduleWords): string {
  const [month, day] = monthDay.split('-').map(Number);
  return words.date(day, words.months[month - 1]);
}

/** Numbers from 1 to `count` by name, three or more in a row as a span, round the end too. */
function numbered(
  numbers: readonly number[],
  count: number,
  names: readonly string[],
  span: (from: string, to: string) => string,
): string[] {
  const named = Array.from({ length: count }, (_, i) => numbers.includes(i + 1));
  if (named.every(Boolean)) return [];
  return runs(named).flatMap(({ from, length }) => {
    const name = (i: number) => names[(from + i) % count];
    if (length > 2) return [span(name(0), name(length - 1))];
    return Array.from({ length }, (_, i) => name(i));
  });
}

interface StretchOfFlags {
  from: number;
  length: number;
}

/** Stretches of set flags on a loop, in order of where they begin; all set is one from 0. */
function runs(flags: readonly boolean[]): StretchOfFlags[] {
  const count = flags.length;
  if (flags.every(Boolean)) return [{ from: 0, length: count }];
  return flags.flatMap((set, from) => {
    if (!set || flags[(from + count - 1) % count]) return [];
    let length = 1;
    while (flags[(from + length) % count]) length++;
    return [{ from, length }];
  });
}

function hoursText({ from, to }: ClockSpan, words: ScheduleWords): string {
  const start = from % MINUTES_PER_DAY;
  const end = to === 0 ? MINUTES_PER_DAY : to;
  if (start === end % MINUTES_PER_DAY) return '';
  const [a, b] = [clockTime(start), clockTime(end)];
  return end < start ? words.hoursIntoNextDay(a, b) : words.hours(a, b);
}

function clockTime(minutes: number): string {
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}

/** Months that a grid paints alike, as spans of months with their hours. */
function paintedMonths(
  grid: NonNullable<RuleConditions['grid']>,
  words: ScheduleWords,
): PaintedMonths[] {
  const hours = paintedQuarters(grid).map((quarters) => paintedHours(quarters, words));
  return [...new Set(hours)].filter(Boolean).map((text) => {
    const months = hours.flatMap((h, i) => (h === text ? [i + 1] : []));
    return { months: words.days(numbered(months, 12, words.months, words.span)), hours: text };
  });
}

/** The painted hours of a day; empty where there are none. */
function paintedHours(quarters: readonly boolean[], words: ScheduleWords): string {
  if (quarters.every(Boolean)) return words.allDay;
  const spans = runs(quarters).map(({ from, length }) => {
    const end = (from + length) * MINUTES_PER_QUARTER;
    const to = end > MINUTES_PER_DAY ? end - MINUTES_PER_DAY : end;
    return words.hours(clockTime(from * MINUTES_PER_QUARTER), clockTime(to));
  });
  return words.spansOfDay(spans);
}
