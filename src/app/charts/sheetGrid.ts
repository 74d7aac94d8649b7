import { DAYS, HOURS, STEPS, STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';

export const CELLS = DAYS * 24;

/** The hours of a typical year laid out by local day and clock hour; cell = day x 24 + clock. */
export interface SheetGrid {
  /** Hour in each cell, -1 where the clock skips it; CELLS values. */
  hour: Int32Array;
  /** The other hour of a cell that the clock passes twice, -1 elsewhere; CELLS values. */
  second: Int32Array;
  /** Cell of each hour; HOURS values. */
  cell: Uint16Array;
}

/** Puts every hour into the cell of the local clock at its start. */
export function sheetGrid(calendar: YearCalendar): SheetGrid {
  const hour = new Int32Array(CELLS).fill(-1);
  const second = new Int32Array(CELLS).fill(-1);
  const cell = new Uint16Array(HOURS);
  for (let h = 0; h < HOURS; h++) {
    const step = h * STEPS_PER_HOUR;
    const at = calendar.day[step] * 24 + Math.floor(calendar.quarter[step] / STEPS_PER_HOUR);
    cell[h] = at;
    if (hour[at] < 0) hour[at] = h;
    else second[at] = h;
  }
  return { hour, second, cell };
}

/** What a cell shows: its hour's value, the mean of two, or not a number where it has none. */
export function cellValue(grid: SheetGrid, values: ArrayLike<number>, cell: number): number {
  const first = grid.hour[cell];
  if (first < 0) return NaN;
  const second = grid.second[cell];
  return second < 0 ? values[first] : (values[first] + values[second]) / 2;
}

/** Hour at a local day and clock hour; the next one where the clock skips it. */
export function hourAt(grid: SheetGrid, day: number, clock: number): number {
  const from = (((day + DAYS) % DAYS) * 24 + clock) % CELLS;
  for (let i = 0; i < CELLS; i++) {
    const hour = grid.hour[(from + i) % CELLS];
    if (hour >= 0) return hour;
  }
  return 0;
}

/** Local day and clock hour of an hour. */
export function dayAndClock(grid: SheetGrid, hour: number): { day: number; clock: number } {
  const cell = grid.cell[hour];
  return { day: Math.floor(cell / 24), clock: cell % 24 };
}

/**
 * Hour a key moves to, or undefined where the key does nothing. Up and down step by an hour; left
 * and right by a day; page keys by a week and, with Shift, by a month of 30 days; Home and End go
 * to the first and last day. All but up and down keep the clock; the year's ends meet.
 */
export function hourByKey(
  grid: SheetGrid,
  hour: number,
  key: string,
  shift = false,
): number | undefined {
  const { day, clock } = dayAndClock(grid, hour);
  const page = shift ? 30 : 7;
  switch (key) {
    case 'ArrowUp':
      return (hour + 1) % HOURS;
    case 'ArrowDown':
      return (hour + HOURS - 1) % HOURS;
    case 'ArrowRight':
      return hourAt(grid, day + 1, clock);
    case 'ArrowLeft':
      return hourAt(grid, day - 1, clock);
    case 'PageUp':
      return hourAt(grid, day + page, clock);
    case 'PageDown':
      return hourAt(grid, day - page, clock);
    case 'Home':
      return hourAt(grid, 0, clock);
    case 'End':
      return hourAt(grid, DAYS - 1, clock);
    default:
      return undefined;
  }
}

/** Days of a span, both ends included. */
export interface DaySpan {
  from: number;
  to: number;
}

/** A span between two days in either order, kept inside the year. */
export function spanBetween(a: number, b: number): DaySpan {
  const inside = (day: number) => Math.max(0, Math.min(DAYS - 1, day));
  return { from: inside(Math.min(a, b)), to: inside(Math.max(a, b)) };
}

/** Sum of hourly values over the hours of a span of local days. */
export function sumOfSpan(grid: SheetGrid, values: ArrayLike<number>, span: DaySpan): number {
  let sum = 0;
  for (let cell = span.from * 24; cell < (span.to + 1) * 24; cell++) {
    if (grid.hour[cell] >= 0) sum += values[grid.hour[cell]];
    if (grid.second[cell] >= 0) sum += values[grid.second[cell]];
  }
  return sum;
}

/** Number of hours in a span of local days. */
export function hoursOfSpan(grid: SheetGrid, span: DaySpan): number {
  let count = 0;
  for (let cell = span.from * 24; cell < (span.to + 1) * 24; cell++) {
    if (grid.hour[cell] >= 0) count++;
    if (grid.second[cell] >= 0) count++;
  }
  return count;
}

/**
 * The hours of a local day in the order they pass: 24, or 23 and 25 where the clock changes. Where
 * the first day of the year borrows an hour from the year's other end, that hour comes first.
 */
export function hoursOfDay(calendar: YearCalendar, day: number): number[] {
  const hours: number[] = [];
  for (let h = 0; h < HOURS; h++) {
    if (calendar.day[h * STEPS_PER_HOUR] === day) hours.push(h);
  }
  const cut = hours.findIndex((h, i) => i > 0 && h - hours[i - 1] > 24);
  return cut < 0 ? hours : [...hours.slice(cut), ...hours.slice(0, cut)];
}

/** Minutes of the local clock at the end of a step. */
export function clockAfter(calendar: YearCalendar, step: number): number {
  return (calendar.quarter[step % STEPS] * 15 + 15) % 1440;
}
