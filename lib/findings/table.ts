/** A table of texts, to be shown in a terminal, on a page or in a file. */
export interface Table {
  title: string;
  columns: { head: string; align: 'left' | 'right' }[];
  rows: string[][];
}

/** The table as lines of plain text with columns of even width. */
export function tableText(table: Table): string {
  const widths = table.columns.map((column, i) =>
    Math.max(column.head.length, ...table.rows.map((row) => row[i].length)),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) =>
        table.columns[i].align === 'right' ? cell.padStart(widths[i]) : cell.padEnd(widths[i]),
      )
      .join('  ')
      .trimEnd();
  const heads = line(table.columns.map((c) => c.head));
  return [table.title, heads, '-'.repeat(heads.length), ...table.rows.map(line)].join('\n');
}
