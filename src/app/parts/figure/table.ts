import type { Wording } from '../../../words/index.ts';

/** One column of the data behind a chart; the head carries the unit. */
export interface FigureColumn {
  head: string;
  /** Decimals of figures; texts ignore it. */
  digits?: number;
}

/** The data behind a chart, cell by cell, so that thousands of rows cost nothing until shown. */
export interface FigureTable {
  columns: readonly FigureColumn[];
  rowCount: number;
  /** A text or a figure; a figure that is not a number leaves the cell empty. */
  cell(row: number, column: number): string | number;
}

/** A cell as the page shows it. */
export function cellText(
  words: Pick<Wording, 'number'>,
  table: FigureTable,
  row: number,
  column: number,
): string {
  const value = table.cell(row, column);
  if (typeof value === 'string') return value;
  if (!Number.isFinite(value)) return '';
  return words.number(value, table.columns[column].digits);
}
