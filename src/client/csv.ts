import Papa from 'papaparse';
import type { OpeningSummary } from '../worker/api.ts';
import { blindName, orderItems, powerText } from './orderList.ts';
import { openingOf, wallOf } from './facts.ts';
import type { PageFacts } from './facts.ts';
import type { PictureTable } from './marks.ts';
import type { Teller } from './teller.ts';

/**
 * Texts that a spreadsheet would take for a formula get an apostrophe before them: those that begin
 * with = + - @, a tab or a line feed (OWASP, "CSV Injection"). Figures are written as figures, so a
 * negative one stays what it is.
 */
export function safeText(text: string): string {
  return /^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text;
}

/** Rows as CSV that a spreadsheet opens cleanly: a byte order mark tells it the letters. */
export function csvText(heads: readonly string[], rows: readonly (string | number)[][]): string {
  const safe = (cell: string | number) => (typeof cell === 'string' ? safeText(cell) : cell);
  const data = rows.map((row) => row.map(safe));
  const text = Papa.unparse({ fields: heads.map(safeText), data }, { newline: '\r\n' });
  return `\ufeff${text}\r\n`;
}

/** Monthly sums of every opening and the house, kWh: a row a quantity. */
export function monthlyCsv(facts: PageFacts, teller: Teller): string {
  const { t, words } = teller;
  const heads = [
    t('csv.facade'),
    t('csv.opening'),
    t('csv.quantity'),
    ...words.months('long').map((month) => `${month} (kWh)`),
    `${t('in.year')} (kWh)`,
  ];
  const rows = (facade: string, opening: string, sums: OpeningSummary['sums']) =>
    (['incident', 'sunlit', 'without', 'with'] as const).map((key) => [
      facade,
      opening,
      t(`quantity.${key}`),
      ...sums[key].months.map(exact),
      exact(sums[key].year),
    ]);
  return csvText(heads, [
    ...facts.study.openings.flatMap((o) => rows(wallOf(facts, o.wall).name, o.name, o.sums)),
    ...rows('', t('in.house'), facts.study.total),
  ]);
}

/** The order list with bare figures in SI. */
export function orderCsv(facts: PageFacts, teller: Teller): string {
  const { t } = teller;
  const heads = (
    [
      'opening',
      'facing',
      'width',
      'height',
      'pieces',
      'kind',
      'group',
      'channel',
      'windHead',
      'movesHead',
      'gatheredHead',
      'neededHead',
      'note',
    ] as const
  ).map((key) => t(`order.${key}`));
  const rows = orderItems(facts).map((item) => [
    openingOf(facts, item.opening.id).name,
    item.azimuth,
    item.opening.width,
    item.opening.height,
    item.opening.count,
    blindName(item.blind, teller),
    item.group?.name ?? '',
    item.group?.channel ?? '',
    item.windLimit ?? '',
    exact(item.movesPerDay),
    exact(item.drive.gathered),
    exact(item.drive.needed),
    [item.from === 'answer' ? t('order.added') : '', powerText(item, teller)]
      .filter(Boolean)
      .join(' '),
  ]);
  return csvText(heads, rows);
}

export function pictureCsv({ columns, rows }: PictureTable): string {
  const data = rows.map((row) =>
    row.map((cell, i) =>
      typeof cell === 'number' ? Number(cell.toFixed(columns[i]?.digits ?? 0)) : cell,
    ),
  );
  return csvText(
    columns.map((c) => c.head),
    data,
  );
}

/** Three decimals: a watt hour. */
function exact(value: number): number {
  return Math.round(value * 1000) / 1000;
}
