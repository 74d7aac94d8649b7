import type { Table } from '../../lib/findings/index.ts';

export function column(head: string, align: 'left' | 'right' = 'left'): Table['columns'][number] {
  return { head, align };
}

/** Pairs of what and how much, one under the other. */
export function keyTable(title: string, rows: string[][]): Table {
  return { title, columns: [column(''), column('')], rows };
}
