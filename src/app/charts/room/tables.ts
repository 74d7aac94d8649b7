import { DAYS, dayOfYear, monthOfDay } from '../../../../lib/time/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';
import type { RoomYearData } from './roomYear.ts';

interface Column {
  head: string;
  digits?: number;
  of: (day: number) => string | number;
}

function dayTable(data: RoomYearData, columns: readonly Column[]): FigureTable {
  const date: Column = { head: 'Date', of: (day) => dateOf(data.calendar.year, day) };
  const all = [date, ...columns];
  return { columns: all, rowCount: DAYS, cell: (day, column) => all[column].of(day) };
}

function dateOf(year: number, day: number): string {
  const month = monthOfDay(day);
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${year}-${pad(month)}-${pad(day - dayOfYear(month, 1) + 1)}`;
}

/** Hot hours of each day. */
export function daysTable(data: RoomYearData): FigureTable {
  const over = `over ${Number(data.limit.toFixed(1))} ${data.temperature.symbol}`;
  return dayTable(data, [
    { head: `Hours ${over}, without`, of: (day) => data.without.hours[day] },
    { head: `Hours ${over}, with`, of: (day) => data.with.hours[day] },
  ]);
}

/** Warmest hour of each day. */
export function warmestTable(data: RoomYearData): FigureTable {
  const { symbol } = data.temperature;
  const column = (name: string, values: Float64Array): Column => ({
    head: `${name} (${symbol})`,
    digits: 1,
    of: (day) => values[day],
  });
  return dayTable(data, [
    column('Room without', data.without.warmest),
    column('Room with', data.with.warmest),
    column('Outdoors', data.outdoor),
  ]);
}
