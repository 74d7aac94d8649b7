import { MONTHS, QUARTERS, runsOf } from './cells.ts';
import type { CellBlock, Cells } from './cells.ts';

/** Room around the cells, px: clock times at the left, months at the foot. */
export const GRID_MARGIN = { left: 46, right: 2, top: 10, bottom: 24 };

export interface GridSize {
  width: number;
  height: number;
}

/** Height of a row of cells, px; finer rows are a little lower, so that a day stays in sight. */
const ROW_HEIGHT = { 1: 7, 2: 9 };
export type QuartersPerRow = keyof typeof ROW_HEIGHT;

/** Size of the cells in the width there is. */
export function gridSize(available: number, quartersPerRow: QuartersPerRow): GridSize {
  const width = Math.max(12 * 20, Math.min(960, available - GRID_MARGIN.left - GRID_MARGIN.right));
  return { width, height: (QUARTERS / quartersPerRow) * ROW_HEIGHT[quartersPerRow] };
}

/** Left edge of a month, 0 to 12. */
export function xOfMonth(size: GridSize, month: number): number {
  return (size.width * month) / MONTHS;
}

/** Height of a clock time in quarters, 0 to 96; midnight is at the foot. */
export function yOfQuarter(size: GridSize, quarter: number): number {
  return size.height * (1 - quarter / QUARTERS);
}

/** The cell under a point of the chart, kept on the grid. */
export function cellAt(size: GridSize, x: number, y: number): number {
  const across = Math.floor((x / size.width) * MONTHS);
  const up = Math.floor((1 - y / size.height) * QUARTERS);
  const month = Math.max(0, Math.min(MONTHS - 1, across));
  return month * QUARTERS + Math.max(0, Math.min(QUARTERS - 1, up));
}

/** A rectangle on the chart. */
export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

export function boxOf(size: GridSize, { months, quarters }: CellBlock): Box {
  const x = xOfMonth(size, months[0]);
  const y = yOfQuarter(size, quarters[1] + 1);
  return {
    x,
    y,
    width: xOfMonth(size, months[1] + 1) - x,
    height: yOfQuarter(size, quarters[0]) - y,
  };
}

/** The painted cells as one path to fill. */
export function filledPath(size: GridSize, cells: Cells): string {
  const parts: string[] = [];
  for (let month = 0; month < MONTHS; month++) {
    for (const [from, to] of runsOf(cells, month)) {
      const left = round(xOfMonth(size, month));
      const right = round(xOfMonth(size, month + 1));
      const top = round(yOfQuarter(size, to));
      const foot = round(yOfQuarter(size, from));
      parts.push(`M${left},${foot}H${right}V${top}H${left}Z`);
    }
  }
  return parts.join('');
}

/** The edges between painted and unpainted cells as one path to stroke. */
export function outlinePath(size: GridSize, cells: Cells): string {
  const at = (month: number, quarter: number) =>
    month >= 0 && month < MONTHS && quarter >= 0 && quarter < QUARTERS
      ? cells[month * QUARTERS + quarter]
      : 0;
  const parts: string[] = [];
  for (let month = 0; month <= MONTHS; month++) {
    const x = round(xOfMonth(size, month));
    for (let q = 0; q < QUARTERS; q++) {
      if (at(month - 1, q) === at(month, q)) continue;
      const from = q;
      while (q + 1 < QUARTERS && at(month - 1, q + 1) !== at(month, q + 1)) q++;
      parts.push(`M${x},${round(yOfQuarter(size, from))}V${round(yOfQuarter(size, q + 1))}`);
    }
  }
  for (let q = 0; q <= QUARTERS; q++) {
    const y = round(yOfQuarter(size, q));
    for (let month = 0; month < MONTHS; month++) {
      if (at(month, q - 1) === at(month, q)) continue;
      const from = month;
      while (month + 1 < MONTHS && at(month + 1, q - 1) !== at(month + 1, q)) month++;
      parts.push(`M${round(xOfMonth(size, from))},${y}H${round(xOfMonth(size, month + 1))}`);
    }
  }
  return parts.join('');
}

/** Stretches of equal values of a month, for as few rectangles as can be. */
export interface Stretch {
  month: number;
  from: number;
  to: number;
  value: number;
}

export function stretchesOf(values: ArrayLike<number>): Stretch[] {
  const stretches: Stretch[] = [];
  for (let month = 0; month < MONTHS; month++) {
    const row = month * QUARTERS;
    for (let q = 0; q < QUARTERS;) {
      const from = q;
      const value = values[row + q];
      while (q < QUARTERS && values[row + q] === value) q++;
      stretches.push({ month, from, to: q, value });
    }
  }
  return stretches;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

/** Distance between the lines of a hatching, px. */
const HATCH = 8;

/** Slanting lines over the whole chart; shown through the painted cells only. */
export function hatchPath(size: GridSize): string {
  const parts: string[] = [];
  for (let x = HATCH / 2; x < size.width + size.height; x += HATCH) {
    parts.push(`M${round(x)},0L${round(x - size.height)},${size.height}`);
  }
  return parts.join('');
}
