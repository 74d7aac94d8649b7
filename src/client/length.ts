import type { Sheet } from './sheet.ts';

/** How closely a sheet is set. */
export type Setting = 'plain' | 'close' | 'closest';

/** A sheet longer than this is set more closely, so that it keeps to two sides of paper. */
const PLAIN_MOST = 1760;
const CLOSE_MOST = 1880;

/** Height of a full line of text, and how many letters it holds; in units of the pictures, 640 wide. */
const LINE = 16;
const LETTERS = 105;
/** Heads, gaps and lines that are not full. */
const LOOSE = 1.3;
/** Height of a row of the facade table, whose sentences run over two lines. */
const ROW = 28;

/**
 * How closely a sheet must be set to keep to two sides: by its letters, rows and pictures, an
 * estimate that was fitted to printed pages.
 */
export function settingOf({ year, ring, day, facades, ...words }: Sheet): Setting {
  const text = (lettersOf(words) / LETTERS) * LINE * LOOSE;
  const pictures = year.height + ring.height + day.height;
  const length = text + pictures + facades.table.rows.length * ROW;
  if (length <= PLAIN_MOST) return 'plain';
  return length <= CLOSE_MOST ? 'close' : 'closest';
}

function lettersOf(value: unknown): number {
  if (typeof value === 'string') return value.length;
  if (typeof value !== 'object' || value === null) return 0;
  return Object.values(value).reduce<number>((sum, part) => sum + lettersOf(part), 0);
}
