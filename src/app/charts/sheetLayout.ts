import { line } from 'd3';
import { DAYS, dayOfYear } from '../../../lib/time/index.ts';
import type { Wording } from '../../words/index.ts';

/** Space around the cells of a year sheet, px. */
export const SHEET_MARGIN = { left: 44, right: 10, top: 8, bottom: 24 };

/** Size of the cells of a year sheet, px. */
export interface SheetSize {
  width: number;
  height: number;
}

/** Cells for the width at hand: flat enough to be seen whole, high enough to hit an hour. */
export function sheetSize(available: number): SheetSize {
  const width = Math.max(120, available - SHEET_MARGIN.left - SHEET_MARGIN.right);
  return { width, height: Math.round(Math.max(216, Math.min(384, width * 0.42)) / 24) * 24 };
}

export const xOfDay = (size: SheetSize, day: number): number => (day / DAYS) * size.width;
export const yOfClock = (size: SheetSize, hours: number): number => (1 - hours / 24) * size.height;

/** Local day and clock hour under a point of the cells; the nearest one for points outside. */
export function cellUnder(size: SheetSize, x: number, y: number): { day: number; clock: number } {
  const inside = (value: number, most: number) => Math.max(0, Math.min(most, Math.floor(value)));
  return {
    day: inside((x / size.width) * DAYS, DAYS - 1),
    clock: inside((1 - y / size.height) * 24, 23),
  };
}

/** Path through one local clock time a day, broken where a day has none. */
export function clockPath(size: SheetSize, hours: ArrayLike<number>): string {
  const path = line<number>()
    .defined((h) => Number.isFinite(h))
    .x((_, day) => xOfDay(size, day + 0.5))
    .y((h) => yOfClock(size, h));
  return path(Array.from(hours)) ?? '';
}

/** First days and names of the months. */
export function monthMarks(words: Wording): { name: string; start: number; middle: number }[] {
  return words.months('short').map((name, i) => {
    const start = dayOfYear(i + 1, 1);
    const end = i === 11 ? DAYS : dayOfYear(i + 2, 1);
    return { name, start, middle: (start + end) / 2 };
  });
}
