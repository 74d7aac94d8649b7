import type { SunHours } from '../../worker/sunHours.ts';
import { CELLS, QUARTERS, clockOf } from '../charts/schedule/cells.ts';
import type { Cells } from '../charts/schedule/cells.ts';
import { MONTHS } from '../charts/words.ts';
import type { FigureTable } from '../parts/figure/table.ts';

/** The grid as a table: a row a quarter hour of each month. */
export function gridTable(
  cells: Cells,
  sun: SunHours | undefined,
  gain: { digits: number; symbol: string; show(value: number): number },
): FigureTable {
  const columns: { head: string; digits?: number; of: (cell: number) => string | number }[] = [
    { head: 'Month', of: (cell) => MONTHS[Math.floor(cell / QUARTERS)] },
    { head: 'From', of: (cell) => clockOf(cell % QUARTERS) },
    { head: 'To', of: (cell) => clockOf((cell % QUARTERS) + 1) },
    { head: 'Painted', of: (cell) => (cells[cell] ? 'yes' : 'no') },
    {
      head: 'Days with sun on the facade (%)',
      of: (cell) => (sun ? 100 * sun.sun[cell] : NaN),
    },
    {
      head: `Gain without shading (${gain.symbol})`,
      digits: gain.digits,
      of: (cell) => (sun ? gain.show(sun.gain[cell]) : NaN),
    },
  ];
  return { columns, rowCount: CELLS, cell: (row, column) => columns[column].of(row) };
}
