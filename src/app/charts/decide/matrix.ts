import { rgb } from 'd3';
import { TREATMENTS } from '../../../../lib/decide/index.ts';
import type { Cell, Decision, Others, Treatment } from '../../../../lib/decide/index.ts';

/** A figure of the matrix that can be shown. */
export const MATRIX_FIGURES = [
  'hours',
  'summerGain',
  'winterLost',
  'heatingKWh',
  'viewHoursLost',
] as const;
export type MatrixFigureId = (typeof MATRIX_FIGURES)[number];

/** One facade of the matrix with its cells in the order of TREATMENTS; gaps where nothing fits. */
export interface MatrixRow {
  facade: string;
  cells: (Cell | undefined)[];
}

export function matrixRows({ matrix }: Pick<Decision, 'matrix'>, others: Others): MatrixRow[] {
  return matrix.map(({ facade, cells }) => ({
    facade,
    cells: TREATMENTS.map((treatment: Treatment) => cells[others][treatment]),
  }));
}

/** Least and most of a figure over all cells; 0 to 0 where there are none. */
export function matrixRange(
  rows: readonly MatrixRow[],
  figure: MatrixFigureId,
): { low: number; high: number } {
  const values = rows.flatMap((row) => row.cells.flatMap((cell) => (cell ? cell[figure] : [])));
  if (values.length === 0) return { low: 0, high: 0 };
  return { low: Math.min(...values), high: Math.max(...values) };
}

/** Place of a value on a ramp, 0 to 1; 0 where all values are the same. */
export function placeIn({ low, high }: { low: number; high: number }, value: number): number {
  return high > low ? (value - low) / (high - low) : 0;
}

/** Black or white, whichever can be read better on a colour (WCAG 2.2, contrast ratio). */
export function inkOn(colour: string): string {
  const channel = (value: number) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  const { r, g, b } = rgb(colour);
  const luminance = 0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b);
  return 1.05 / (luminance + 0.05) > (luminance + 0.05) / 0.05 ? '#ffffff' : '#000000';
}
