import type { Sheet } from './sheet.ts';

/** A sheet longer than this is set smaller, so that it keeps to two sides of paper. */
const MOST = 1760;

/** Height of a full line of text, and how many letters it holds; in units of the pictures, 640 wide. */
const LINE = 16;
const LETTERS = 105;
/** Heads, gaps and lines that are not full. */
const LOOSE = 1.3;
/** Height of a row of the facade table, whose sentences run over two lines. */
const ROW = 28;

/**
 * Whether a sheet must be set smaller to keep to two sides: by its letters, rows and pictures, an
 * estimate that was fitted to the printed examples.
 */
export function isLong({ year, ring, day, facades, ...words }: Sheet): boolean {
  const text = (lettersOf(words) / LETTERS) * LINE * LOOSE;
  const pictures = year.height + ring.height + day.height;
  return text + pictures + facades.table.rows.length * ROW > MOST;
}

function lettersOf(value: unknown): number {
  if (typeof value === 'string') return value.length;
  if (typeof value !== 'object' || value === null) return 0;
  return Object.values(value).reduce<number>((sum, part) => sum + lettersOf(part), 0);
}
