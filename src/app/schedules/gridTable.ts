import type { Wording } from '../../words/index.ts';
import type { SunHours } from '../../worker/sunHours.ts';
import { CELLS, QUARTERS, clockOf } from '../charts/schedule/cells.ts';
import type { Cells } from '../charts/schedule/cells.ts';
import type { FigureTable } from '../parts/figure/table.ts';

/** The grid as a table: a row a quarter hour of each month. */
export function gridTable(
  words: Wording,
  cells: Cells,
  sun: SunHours | undefined,
  gain: { digits: number; symbol: string; show(value: number): number },
): FigureTable {
  const t = words.of('schedules');
  const months = words.months('long');
  const columns: { head: string; digits?: number; of: (cell: number) => string | number }[] = [
    { head: t('grid.table.month'), of: (cell) => months[Math.floor(cell / QUARTERS)] },
    { head: t('grid.table.from'), of: (cell) => clockOf(cell % QUARTERS) },
    { head: t('grid.table.to'), of: (cell) => clockOf((cell % QUARTERS) + 1) },
    {
      head: t('grid.table.painted'),
      of: (cell) => (cells[cell] ? t('grid.table.yes') : t('grid.table.no')),
    },
    {
      head: t('grid.table.sun'),
      of: (cell) => (sun ? 100 * sun.sun[cell] : NaN),
    },
    {
      head: t('grid.table.gain', { unit: gain.symbol }),
      digits: gain.digits,
      of: (cell) => (sun ? gain.show(sun.gain[cell]) : NaN),
    },
  ];
  return { columns, rowCount: CELLS, cell: (row, column) => columns[column].of(row) };
}
