import { calendar, lines, tmy3Columns, tmy3Heading, tmy3Rows, tmy3Text } from './synthetic.ts';

/** A weather text that cannot be taken, and what its refusal must say. */
export interface BrokenText {
  name: string;
  text: string;
  expect: RegExp;
}

export type Column = keyof typeof tmy3Columns;

/** TMY3 rows with one column made anew; `undefined` leaves a row as it is. */
export function withColumn(
  column: Column,
  make: (value: string, row: number) => string | undefined,
): string {
  const rows = tmy3Rows().map((row, i) => {
    const cells = row.split(',');
    const at = tmy3Columns[column];
    cells[at] = make(cells[at], i) ?? cells[at];
    return cells.join(',');
  });
  return lines(tmy3Heading, rows);
}

export function withRows(change: (rows: string[]) => string[]): string {
  return lines(tmy3Heading, change(tmy3Rows()));
}

export function withHeading(from: string, to: string): string {
  return tmy3Text().replace(from, to);
}

export function swapColumns(a: Column, b: Column): string {
  const rows = tmy3Rows().map((row) => {
    const cells = row.split(',');
    const [i, j] = [tmy3Columns[a], tmy3Columns[b]];
    [cells[i], cells[j]] = [cells[j], cells[i]];
    return cells.join(',');
  });
  return lines(tmy3Heading, rows);
}

/** First row of a month and day. */
export function rowOf(month: number, day: number): number {
  return calendar.findIndex((c) => c.month === month && c.day === day);
}
