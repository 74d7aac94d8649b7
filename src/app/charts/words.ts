import type { RuleAction } from '../../../lib/schedule/index.ts';
import { DAYS, STEPS_PER_HOUR, clockText, dayOfYear, monthOfDay } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';
import type { Wording } from '../../words/index.ts';
import { clockAfter } from './sheetGrid.ts';
import type { DaySpan } from './sheetGrid.ts';

/** A day of the typical year in words: `21 June`. */
export function dayText(words: Wording, day: number): string {
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

const pad = (n: number) => String(n).padStart(2, '0');

function dayOfMonth(day: number): number {
  return day - dayOfYear(monthOfDay(day), 1) + 1;
}

/** The local clock at the end of a step; midnight is 24:00. */
export function endClock(calendar: YearCalendar, step: number): string {
  const minutes = clockAfter(calendar, step) || 1440;
  return `${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}

/** The word with a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What a rule has done to a blind, in words; only slats can be tilted. */
export function actionText(words: Wording, action: RuleAction, slats: boolean): string {
  const t = words.of('charts');
  if (action.kind === 'raise') return t('action.up');
  const part = action.share !== undefined && action.share < 1 ? 'Part' : '';
  const share = words.number((action.share ?? 1) * 100);
  if (!slats || action.kind === 'lower') return t(`action.down${part}`, { share });
  if (action.kind === 'track') return t(`action.track${part}`, { share });
  return t(`action.tilt${part}`, { share, angle: words.number(action.angle) });
}
