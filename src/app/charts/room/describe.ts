import { DAYS } from '../../../../lib/time/index.ts';
import type { Wording } from '../../../words/index.ts';
import { dayText, longDayText } from '../words.ts';
import { monthSums } from './calendarLayout.ts';
import type { RoomYearData } from './roomYear.ts';

const sum = (days: ArrayLike<number>) => Array.from(days).reduce((total, n) => total + n, 0);

/** `1 hour`, `3 hours`. */
export function hoursText(words: Wording, hours: number): string {
  return words.of('rooms')('hours', { count: hours, figure: words.figure(hours) });
}

/** `on 3 days`. */
function onDays(words: Wording, days: number): string {
  return words.of('rooms')('onDays', { count: days, figure: words.figure(days) });
}

/** A temperature with as many decimals as it needs, one at most. */
export function plainTemperature(words: Wording, value: number, symbol: string): string {
  return words.measured(value, Math.abs(value - Math.round(value)) < 0.05 ? 0 : 1, symbol);
}

/** The limit in shown units. */
export function limitText(words: Wording, { limit, temperature }: RoomYearData): string {
  return plainTemperature(words, limit, temperature.symbol);
}

/** What the calendars of hot hours show. */
export function describeDays(words: Wording, data: RoomYearData, room: string): string {
  const t = words.of('rooms');
  const limit = limitText(words, data);
  const bare = data.without.hours;
  const shaded = data.with.hours;
  if (sum(bare) + sum(shaded) === 0) return t('never', { room, limit });
  return [
    t('calendar.intro', { limit, room }),
    daysWords(words, bare, shaded),
    ...(sum(bare) > 0 ? [seasonWords(words, bare)] : []),
  ].join(' ');
}

/** How many hours there are on how many days. */
function daysWords(words: Wording, bare: Uint8Array, shaded: Uint8Array): string {
  const t = words.of('rooms');
  const hours = (days: Uint8Array) => hoursText(words, sum(days));
  const on = (days: Uint8Array) => onDays(words, days.filter((n) => n > 0).length);
  const given = {
    bare: hours(bare),
    onBare: on(bare),
    shaded: hours(shaded),
    onShaded: on(shaded),
  };
  if (sum(shaded) === 0) return t('calendar.bareOnly', given);
  return sum(bare) === 0 ? t('calendar.shadedOnly', given) : t('calendar.both', given);
}

/** Where the hot days of the year lie. */
function seasonWords(words: Wording, days: Uint8Array): string {
  const months = monthSums(days);
  const most = Math.max(...months);
  return words.of('rooms')('calendar.season', {
    first: dayText(
      words,
      days.findIndex((n) => n > 0),
    ),
    last: dayText(
      words,
      days.findLastIndex((n) => n > 0),
    ),
    month: words.months('long')[months.indexOf(most)],
    hours: hoursText(words, most),
  });
}

/** One day of the calendars, in words: read by pointer and keys. */
export function readDay(
  words: Wording,
  data: RoomYearData,
  day: number,
): { when: string; what: string } {
  const { symbol } = data.temperature;
  const top = (values: Float64Array) => words.measured(values[day], 1, symbol);
  return {
    when: longDayText(words, data.calendar, day),
    what: words.of('rooms')('calendar.read', {
      bare: hoursText(words, data.without.hours[day]),
      bareTop: top(data.without.warmest),
      shaded: hoursText(words, data.with.hours[day]),
      shadedTop: top(data.with.warmest),
    }),
  };
}

/** One day of the lines, in words. */
export function readWarmest(
  words: Wording,
  data: RoomYearData,
  day: number,
): { when: string; what: string } {
  const show = (values: Float64Array) => words.measured(values[day], 1, data.temperature.symbol);
  return {
    when: longDayText(words, data.calendar, day),
    what: words.of('rooms')('warmest.read', {
      bare: show(data.without.warmest),
      shaded: show(data.with.warmest),
      outdoors: show(data.outdoor),
    }),
  };
}

/** What the lines of daily maxima show. */
export function describeWarmest(words: Wording, data: RoomYearData, room: string): string {
  const t = words.of('rooms');
  const { symbol } = data.temperature;
  const top = (values: Float64Array) => {
    const day = values.indexOf(Math.max(...values));
    const temperature = words.measured(values[day], 1, symbol);
    return t('warmest.top', { temperature, day: dayText(words, day) });
  };
  let hotter = 0;
  for (let day = 0; day < DAYS; day++) {
    if (data.without.warmest[day] > Math.max(data.outdoor[day], data.limit)) hotter++;
  }
  return [
    t('warmest.about', {
      room,
      bare: top(data.without.warmest),
      shaded: top(data.with.warmest),
      outdoors: top(data.outdoor),
    }),
    ...(hotter > 0 ? [t('warmest.hotter', { onDays: onDays(words, hotter) })] : []),
  ].join(' ');
}
