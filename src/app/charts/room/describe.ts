import { DAYS, monthOfDay } from '../../../../lib/time/index.ts';
import { MONTHS, dayWords, figure, longDayWords, measured } from '../words.ts';
import type { RoomYearData } from './roomYear.ts';

const sum = (days: ArrayLike<number>) => Array.from(days).reduce((total, n) => total + n, 0);
const count = (days: Uint8Array) => days.reduce((total, n) => total + (n > 0 ? 1 : 0), 0);

/** `1 hour`, `3 hours`. */
export function hoursText(hours: number): string {
  return `${figure(hours)}\u00a0${hours === 1 ? 'hour' : 'hours'}`;
}

function daysText(days: number): string {
  return `${figure(days)}\u00a0${days === 1 ? 'day' : 'days'}`;
}

/** A temperature with as many decimals as it needs, one at most. */
export function plainTemperature(value: number, symbol: string): string {
  return measured(value, Math.abs(value - Math.round(value)) < 0.05 ? 0 : 1, symbol);
}

/** What the calendars of hot hours show. */
export function describeDays(data: RoomYearData, room: string): string {
  const limit = plainTemperature(data.limit, data.temperature.symbol);
  const bare = data.without.hours;
  const shaded = data.with.hours;
  if (sum(bare) + sum(shaded) === 0) {
    return `${room} is never over ${limit}, neither without shading nor with it.`;
  }
  const intro = `Hours over ${limit} in ${room}, a cell a day, a row a month.`;
  const on = (days: Uint8Array) =>
    sum(days) === 0
      ? 'there is no such hour'
      : `there are ${hoursText(sum(days))} on ${daysText(count(days))}`;
  const first = bare.findIndex((n) => n > 0);
  const last = bare.findLastIndex((n) => n > 0);
  const season =
    first >= 0
      ? ` Without, the first such day is ${dayWords(first)}, the last ${dayWords(last)}`
      : '';
  const worst = worstMonth(bare);
  const most = season && worst ? `, and ${worst.name} has most (${hoursText(worst.hours)}).` : '';
  return `${intro} Without shading ${on(bare)}, with it ${on(shaded)}.${season}${most}`;
}

function worstMonth(days: Uint8Array): { name: string; hours: number } | undefined {
  const months = new Array<number>(12).fill(0);
  for (let day = 0; day < DAYS; day++) months[monthOfDay(day) - 1] += days[day];
  const hours = Math.max(...months);
  return hours > 0 ? { name: MONTHS[months.indexOf(hours)], hours } : undefined;
}

/** One day of the calendars, in words: read by pointer and keys. */
export function readDay(data: RoomYearData, day: number): { when: string; what: string } {
  const { temperature } = data;
  const one = ({ hours, warmest }: RoomYearData['without']) =>
    `${hoursText(hours[day])} (up to ${measured(warmest[day], 1, temperature.symbol)})`;
  return {
    when: longDayWords(data.calendar, day),
    what: `without ${one(data.without)}, with ${one(data.with)}`,
  };
}

/** One day of the lines, in words. */
export function readWarmest(data: RoomYearData, day: number): { when: string; what: string } {
  const show = (values: Float64Array) => measured(values[day], 1, data.temperature.symbol);
  return {
    when: longDayWords(data.calendar, day),
    what: `without ${show(data.without.warmest)}, with ${show(data.with.warmest)}, outdoors ${show(data.outdoor)}`,
  };
}

/** What the lines of daily maxima show. */
export function describeWarmest(data: RoomYearData, room: string): string {
  const { symbol } = data.temperature;
  const top = (values: Float64Array) => {
    const day = values.indexOf(Math.max(...values));
    return `${measured(values[day], 1, symbol)} (${dayWords(day)})`;
  };
  let hotter = 0;
  for (let day = 0; day < DAYS; day++) {
    if (data.without.warmest[day] > Math.max(data.outdoor[day], data.limit)) hotter++;
  }
  const over =
    hotter > 0
      ? ` Without shading it is over the limit and hotter than outdoors at its hottest on ${daysText(hotter)}.`
      : '';
  return (
    `Warmest hour of each day. ${room} gets up to ${top(data.without.warmest)} without shading ` +
    `and ${top(data.with.warmest)} with it; outdoors it gets up to ${top(data.outdoor)}.${over}`
  );
}
