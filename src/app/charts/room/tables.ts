import { DAYS, dayOfYear, monthOfDay } from '../../../../lib/time/index.ts';
import type { Wording } from '../../../words/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';
import type { RoomYearData } from './roomYear.ts';

interface Column {
  head: string;
  digits?: number;
  of: (day: number) => string | number;
}

function dayTable(
  words: Wording,
  { calendar }: RoomYearData,
  columns: readonly Column[],
): FigureTable {
  const head = words.of('rooms')('calendar.date');
  const date: Column = { head, of: (day) => dateOf(calendar.year, day) };
  const all = [date, ...columns];
  return { columns: all, rowCount: DAYS, cell: (day, column) => all[column].of(day) };
}

function dateOf(year: number, day: number): string {
  const month = monthOfDay(day);
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${year}-${pad(month)}-${pad(day - dayOfYear(month, 1) + 1)}`;
}

/** Hot hours of each day. */
export function daysTable(words: Wording, data: RoomYearData): FigureTable {
  const t = words.of('rooms');
  const figure = words.decimal(String(Number(data.limit.toFixed(1))));
  const limit = `${figure} ${data.temperature.symbol}`;
  return dayTable(words, data, [
    { head: t('calendar.headWithout', { limit }), of: (day) => data.without.hours[day] },
    { head: t('calendar.headWith', { limit }), of: (day) => data.with.hours[day] },
  ]);
}

/** Warmest hour of each day. */
export function warmestTable(words: Wording, data: RoomYearData): FigureTable {
  const t = words.of('rooms');
  const unit = data.temperature.symbol;
  const column = (head: string, values: Float64Array): Column => ({
    head,
    digits: 1,
    of: (day) => values[day],
  });
  return dayTable(words, data, [
    column(t('warmest.headWithout', { unit }), data.without.warmest),
    column(t('warmest.headWith', { unit }), data.with.warmest),
    column(t('warmest.headOutdoors', { unit }), data.outdoor),
  ]);
}
