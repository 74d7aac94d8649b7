import { DAYS, dayOfYear, daysInMonth, monthOfDay } from '../../../../lib/time/index.ts';

/** Columns of the calendar: days of the longest month. */
export const COLUMNS = 31;
export const ROWS = 12;
/** Room for the months' names before the cells and for their sums behind, px. */
const NAMES = 34;
const SUMS = 48;
/** Above the cells, for the caption, and below, for the dates, px. */
const TOP = 24;
const BOTTOM = 20;

/** Places of a calendar of 12 rows, a month each, and 31 columns, px. */
export interface CalendarLayout {
  left: number;
  top: number;
  /** Size of one cell, its gap included. */
  cellWidth: number;
  cellHeight: number;
  width: number;
  height: number;
}

/** A calendar as wide as there is room, its cells flat enough for two of them on one screen. */
export function calendarLayout(available: number): CalendarLayout {
  const cellWidth = Math.max(7, Math.min(30, (available - NAMES - SUMS) / COLUMNS));
  const cellHeight = Math.max(13, Math.min(16, Math.round(cellWidth * 0.75)));
  return {
    left: NAMES,
    top: TOP,
    cellWidth,
    cellHeight,
    width: NAMES + COLUMNS * cellWidth + SUMS,
    height: TOP + ROWS * cellHeight + BOTTOM,
  };
}

/** Row, from January 0, and column, from the first 0, of a day of the year. */
export function placeOfDay(day: number): { row: number; column: number } {
  const month = monthOfDay(day);
  return { row: month - 1, column: day - dayOfYear(month, 1) };
}

/** Day under a point of the calendar; the nearest one for points beside it. */
export function dayUnder(layout: CalendarLayout, x: number, y: number): number {
  const inside = (value: number, count: number) =>
    Math.max(0, Math.min(count - 1, Math.floor(value)));
  const row = inside((y - layout.top) / layout.cellHeight, ROWS);
  const column = inside((x - layout.left) / layout.cellWidth, daysInMonth[row]);
  return dayOfYear(row + 1, column + 1);
}

/**
 * Day a key moves to, or undefined where the key does nothing. Left and right step by a day, up and
 * down by a month on the same date, page keys by a week; Home and End go to the month's first and
 * last day. The year's ends meet.
 */
export function dayByKey(day: number, key: string): number | undefined {
  const { row, column } = placeOfDay(day);
  const round = (to: number) => (to + DAYS) % DAYS;
  const inMonth = (to: number) => dayOfYear(((to + ROWS) % ROWS) + 1, column + 1);
  switch (key) {
    case 'ArrowRight':
      return round(day + 1);
    case 'ArrowLeft':
      return round(day - 1);
    case 'ArrowDown':
      return inMonth(row + 1);
    case 'ArrowUp':
      return inMonth(row - 1);
    case 'PageUp':
      return round(day - 7);
    case 'PageDown':
      return round(day + 7);
    case 'Home':
      return dayOfYear(row + 1, 1);
    case 'End':
      return dayOfYear(row + 1, COLUMNS);
    default:
      return undefined;
  }
}

/** Sums of daily values by month, January first. */
export function monthSums(days: ArrayLike<number>): number[] {
  const sums = new Array<number>(ROWS).fill(0);
  for (let day = 0; day < DAYS; day++) sums[monthOfDay(day) - 1] += days[day];
  return sums;
}

/** Days drawn in one colour. */
export interface CellGroup {
  hours: number;
  path: string;
}

/** The cells of a calendar, one path for all days with the same number of hours. */
export function cellGroups(layout: CalendarLayout, hours: ArrayLike<number>): CellGroup[] {
  const width = layout.cellWidth - GAP;
  const height = layout.cellHeight - GAP;
  const paths = new Map<number, string>();
  for (let day = 0; day < DAYS; day++) {
    const { x, y } = cornerOfDay(layout, day);
    const cell = `M${round(x)} ${round(y)}h${round(width)}v${round(height)}h${round(-width)}z`;
    paths.set(hours[day], (paths.get(hours[day]) ?? '') + cell);
  }
  return [...paths].map(([count, path]) => ({ hours: count, path }));
}

/** Between cells, px. */
export const GAP = 1.5;

export function cornerOfDay(layout: CalendarLayout, day: number): { x: number; y: number } {
  const { row, column } = placeOfDay(day);
  return {
    x: layout.left + column * layout.cellWidth,
    y: layout.top + row * layout.cellHeight,
  };
}

const round = (px: number) => Math.round(px * 100) / 100;
