import { DAYS, STEPS_PER_HOUR, clockText, dayOfYear, monthOfDay } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';
import { clockAfter } from './sheetGrid.ts';
import type { DaySpan } from './sheetGrid.ts';
import type { Wording } from '../../words/index.ts';

export const MONTHS: readonly string[] =
  'January February March April May June July August September October November December'.split(
    ' ',
  );
const WEEKDAYS = 'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' ');

/** A day of the typical year in words: `21 June`. */
export function dayText(words: Wording, day: number): string {
  const pad = (n: number) => String(n).padStart(2, '0');
  return words.day(`${pad(monthOfDay(day))}-${pad(dayOfMonth(day))}`);
}

/** With its weekday: `Saturday 21 June`. */
export function longDayText(words: Wording, calendar: YearCalendar, day: number): string {
  const weekday = words.weekdays('long')[calendar.weekday[day] - 1];
  return words.of('charts')('time.longDay', { weekday, day: dayText(words, day) });
}

/** A span of days in words, with how many there are: `1 to 14 June, 14 days`. */
export function spanText(words: Wording, { from, to }: DaySpan): string {
  const t = words.of('charts');
  const count = to - from + 1;
  if (count === 1) return t('time.oneDay', { day: dayText(words, from) });
  if (count === DAYS) return t('time.wholeYear');
  const end = { to: dayText(words, to), count };
  return monthOfDay(from) === monthOfDay(to)
    ? t('time.daysOfMonth', { first: dayOfMonth(from), ...end })
    : t('time.days', { from: dayText(words, from), ...end });
}

/** The local clock over an hour: `13:00 to 14:00`. */
export function hourText(words: Wording, calendar: YearCalendar, hour: number): string {
  const step = hour * STEPS_PER_HOUR;
  return words.of('charts')('time.hour', {
    from: clockText(calendar, step),
    to: endClock(calendar, step + STEPS_PER_HOUR - 1),
  });
}

function dayOfMonth(day: number): number {
  return day - dayOfYear(monthOfDay(day), 1) + 1;
}

/** A day of the typical year in words: `21 June`. */
export function dayWords(day: number): string {
  const month = monthOfDay(day);
  return `${day - dayOfYear(month, 1) + 1} ${MONTHS[month - 1]}`;
}

/** With its weekday: `Saturday 21 June`. */
export function longDayWords(calendar: YearCalendar, day: number): string {
  return `${WEEKDAYS[calendar.weekday[day] - 1]} ${dayWords(day)}`;
}

/** A span of days in words, with how many there are: `1 to 14 June, 14 days`. */
export function spanWords({ from, to }: DaySpan): string {
  const count = to - from + 1;
  if (count === 1) return `${dayWords(from)}, 1 day`;
  if (count === DAYS) return 'The whole year';
  const sameMonth = monthOfDay(from) === monthOfDay(to);
  const start = sameMonth ? String(from - dayOfYear(monthOfDay(from), 1) + 1) : dayWords(from);
  return `${start} to ${dayWords(to)}, ${count} days`;
}

/** The local clock over an hour: `13:00 to 14:00`. */
export function hourWords(calendar: YearCalendar, hour: number): string {
  const step = hour * STEPS_PER_HOUR;
  return `${clockText(calendar, step)} to ${endClock(calendar, step + STEPS_PER_HOUR - 1)}`;
}

/** The local clock at the end of a step; midnight is 24:00. */
export function endClock(calendar: YearCalendar, step: number): string {
  const minutes = clockAfter(calendar, step) || 1440;
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}

const figures = [0, 1, 2, 3].map(
  (digits) =>
    new Intl.NumberFormat('en', { minimumFractionDigits: digits, maximumFractionDigits: digits }),
);

/** A figure with thousands set apart; a dash where there is none. */
export function figure(value: number, digits = 0): string {
  if (!Number.isFinite(value)) return '–';
  const text = figures[digits].format(value).replace('-', '−');
  return /^−0(\.0*)?$/.test(text) ? text.slice(1) : text;
}

/** A figure and its unit, which no line break parts. */
export function measured(value: number, digits: number, symbol: string): string {
  return `${figure(value, digits)}\u00a0${symbol}`;
}

/** A share of 0 to 1 as a percentage: `79 %`. */
export function percent(share: number): string {
  return measured(share * 100, 0, '%');
}

/** The word with a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
