import Papa from 'papaparse';
import type { FigureTable } from './table.ts';

const csvStyle = { newline: '\r\n', escapeFormulae: /^[=+\-@\t\r\n]/ } as const;

/**
 * The table as CSV with a line of heads. A text that starts like a formula is made harmless; units
 * are in plain letters (m2), as spreadsheets guess the encoding of a file.
 */
export function tableCsv(table: FigureTable): string {
  const rows = Array.from({ length: table.rowCount }, (_, row) =>
    table.columns.map(({ digits = 0 }, column) => {
      const value = table.cell(row, column);
      if (typeof value === 'string') return value;
      return Number.isFinite(value) ? Number(value.toFixed(digits)) : '';
    }),
  );
  const fields = table.columns.map(({ head }) => plainUnits(head));
  return `${Papa.unparse({ fields, data: rows }, csvStyle)}\r\n`;
}

function plainUnits(head: string): string {
  return head.replace(/²/g, '2').replace(/³/g, '3').replace(/°/g, '');
}
