import type { RuleConditions } from '../../../../lib/schedule/index.ts';

/** A day of twelve months in quarter hours: cell `month * 96 + quarter`, months from 0. */
export const QUARTERS = 96;
export const MONTHS = 12;
export const CELLS = MONTHS * QUARTERS;
const MINUTES = 15;

/** 1 where a cell is painted; CELLS values. */
export type Cells = Uint8Array;
type Grid = NonNullable<RuleConditions['grid']>;

/** Months and quarters between two corners, all included. */
export interface CellBlock {
  months: [first: number, last: number];
  quarters: [first: number, last: number];
}

/** Painted spans as cells. A span past midnight wraps inside its month; equal ends are all day. */
export function cellsOf(grid: Grid): Cells {
  const cells = new Uint8Array(CELLS);
  for (const { month, from, to } of grid) {
    const row = (month - 1) * QUARTERS;
    const first = (from / MINUTES) % QUARTERS;
    const length = (to / MINUTES - first + QUARTERS) % QUARTERS || QUARTERS;
    for (let i = 0; i < length; i++) cells[row + ((first + i) % QUARTERS)] = 1;
  }
  return cells;
}

/** Cells as painted spans, in order and as few as can be. */
export function gridOf(cells: Cells): Grid {
  const grid: Grid = [];
  for (let month = 0; month < MONTHS; month++) {
    for (const [from, to] of runsOf(cells, month)) {
      grid.push({ month: month + 1, from: from * MINUTES, to: to * MINUTES });
    }
  }
  return grid;
}

/** Stretches of painted quarters of a month: first quarter and the one after the last. */
export function runsOf(cells: Cells, month: number): [from: number, to: number][] {
  const runs: [number, number][] = [];
  const row = month * QUARTERS;
  for (let quarter = 0; quarter < QUARTERS; quarter++) {
    if (!cells[row + quarter]) continue;
    const from = quarter;
    while (quarter < QUARTERS && cells[row + quarter]) quarter++;
    runs.push([from, quarter]);
  }
  return runs;
}

/** The block between two cells, whole rows of `quartersPerRow` each. */
export function blockBetween(a: number, b: number, quartersPerRow: number): CellBlock {
  const [monthA, monthB] = [a, b].map((cell) => Math.floor(cell / QUARTERS));
  const [rowA, rowB] = [a, b].map((cell) => Math.floor((cell % QUARTERS) / quartersPerRow));
  const last = (Math.max(rowA, rowB) + 1) * quartersPerRow - 1;
  return {
    months: [Math.min(monthA, monthB), Math.max(monthA, monthB)],
    quarters: [Math.min(rowA, rowB) * quartersPerRow, last],
  };
}

/** A copy with a block painted or erased. */
export function withBlock(cells: Cells, block: CellBlock, painted: boolean): Cells {
  const next = cells.slice();
  const [first, last] = block.quarters;
  for (let month = block.months[0]; month <= block.months[1]; month++) {
    next.fill(painted ? 1 : 0, month * QUARTERS + first, month * QUARTERS + last + 1);
  }
  return next;
}

/** Whether a whole row of a month is painted, only part of it, or none. */
export function paintedAt(
  cells: Cells,
  cell: number,
  quartersPerRow: number,
): 'all' | 'part' | 'none' {
  const start = cell - (cell % quartersPerRow);
  let count = 0;
  for (let i = 0; i < quartersPerRow; i++) count += cells[start + i];
  if (count === 0) return 'none';
  return count === quartersPerRow ? 'all' : 'part';
}

export function isSame(a: Cells, b: Cells): boolean {
  return a.every((value, i) => value === b[i]);
}

/** Quarters that a paging key goes: three hours. */
const PAGE = 12;

/**
 * The cell an arrow or paging key leads to, kept on the grid; undefined for other keys. Later hours
 * are further up, as in the year sheet.
 */
export function cellByKey(cell: number, key: string, quartersPerRow: number): number | undefined {
  const month = Math.floor(cell / QUARTERS);
  const quarter = cell % QUARTERS;
  const row = quarter - (quarter % quartersPerRow);
  const at = (m: number, q: number) =>
    Math.max(0, Math.min(MONTHS - 1, m)) * QUARTERS +
    Math.max(0, Math.min(QUARTERS - quartersPerRow, q));
  switch (key) {
    case 'ArrowLeft':
      return at(month - 1, row);
    case 'ArrowRight':
      return at(month + 1, row);
    case 'ArrowUp':
      return at(month, row + quartersPerRow);
    case 'ArrowDown':
      return at(month, row - quartersPerRow);
    case 'PageUp':
      return at(month, row + PAGE);
    case 'PageDown':
      return at(month, row - PAGE);
    case 'Home':
      return at(0, row);
    case 'End':
      return at(MONTHS - 1, row);
    default:
      return undefined;
  }
}

/** A quarter as a clock time, 0 to 96: `14:30`. */
export function clockOf(quarter: number): string {
  const pad = (n: number) => String(n).padStart(2, '0');
  return `${pad(Math.floor(quarter / 4))}:${pad((quarter % 4) * 15)}`;
}
