import Papa from 'papaparse';

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
export function cellText(table: FigureTable, row: number, column: number): string {
  const value = table.cell(row, column);
  if (typeof value === 'string') return value;
  if (!Number.isFinite(value)) return '';
  const digits = table.columns[column].digits ?? 0;
  return value.toLocaleString('en', {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
}

const csvStyle = { newline: '\r\n', escapeFormulae: /^[=+@\t\r]|^-(?![\d.])/ } as const;

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
