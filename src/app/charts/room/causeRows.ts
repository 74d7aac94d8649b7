import type { CauseKind } from '../../../../lib/room/index.ts';
import type { RoomDetail } from '../../../../lib/study/index.ts';
import type { Wording } from '../../../words/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';

/** One source of heat in the hours over the limit, without and with shading. */
export interface CauseRow {
  kind: CauseKind;
  /** Id of the opening whose sun it is. */
  opening?: string;
  name: string;
  /** Degree-hours over the limit that it makes, Kh. */
  without: number;
  with: number;
  /** The same as shares of all degree-hours. */
  shareWithout: number;
  shareWith: number;
}

/** Smallest share that gets a bar of its own. */
const LEAST = 0.005;

/** What heats a room, the greatest part without shading first. */
export function causeRows(
  words: Wording,
  without: RoomDetail,
  shaded: RoomDetail,
  nameOf: (opening: string) => string,
): CauseRow[] {
  const t = words.of('rooms');
  const key = (kind: string, opening = '') => `${kind}|${opening}`;
  const after = new Map(shaded.causes.causes.map((c) => [key(c.kind, c.opening), c]));
  return without.causes.causes
    .map((cause): CauseRow => {
      const { kind, opening, degreeHours, share } = cause;
      const left = after.get(key(kind, opening));
      return {
        kind,
        ...(opening === undefined ? {} : { opening }),
        name: kind === 'opening' ? nameOf(opening ?? '') : t(`causes.${kind}`),
        without: degreeHours,
        with: left?.degreeHours ?? 0,
        shareWithout: share,
        shareWith: left?.share ?? 0,
      };
    })
    .filter((row) => Math.max(row.shareWithout, row.shareWith) >= LEAST)
    .sort((a, b) => b.without - a.without || b.with - a.with);
}

/** Sentences that name the opening to blame. */
export function blameWords(words: Wording, rows: readonly CauseRow[], limit: string): string {
  const suns = rows.filter((row) => row.kind === 'opening');
  const topOf = (pick: (row: CauseRow) => number) =>
    suns.toSorted((a, b) => pick(b) - pick(a)).find((row) => pick(row) > 0);
  const bare = topOf((row) => row.shareWithout);
  const left = topOf((row) => row.shareWith);
  return [bareWords(words, rows, bare, limit), leftWords(words, rows, bare, left, limit)]
    .filter(Boolean)
    .join(' ');
}

function bareWords(
  words: Wording,
  rows: readonly CauseRow[],
  first: CauseRow | undefined,
  limit: string,
): string {
  const t = words.of('rooms');
  if (first) {
    const all = rows
      .filter((row) => row.kind === 'opening')
      .reduce((sum, row) => sum + row.shareWithout, 0);
    return t('causes.bare', {
      limit,
      opening: first.name,
      share: words.share(first.shareWithout),
      all: words.share(all),
    });
  }
  if (rows.some((row) => row.without > 0)) return t('causes.noSun');
  return t('causes.bareNever', { limit });
}

function leftWords(
  words: Wording,
  rows: readonly CauseRow[],
  bare: CauseRow | undefined,
  first: CauseRow | undefined,
  limit: string,
): string {
  const t = words.of('rooms');
  if (first) {
    const share = words.share(first.shareWith);
    if (first === bare) return t('causes.sameFirst', { share });
    return t('causes.otherFirst', { opening: first.name, share });
  }
  return rows.some((row) => row.with > 0) ? '' : t('causes.shadedNever', { limit });
}

/** The bars as a table; degree-hours in shown units. */
export function causeTable(
  words: Wording,
  rows: readonly CauseRow[],
  symbol: string,
  show: (degreeHours: number) => number,
): FigureTable {
  const t = words.of('rooms');
  const columns: { head: string; digits?: number; of: (row: CauseRow) => string | number }[] = [
    { head: t('causes.head'), of: (row) => row.name },
    { head: t('causes.headWithout', { unit: symbol }), of: (row) => show(row.without) },
    {
      head: t('causes.headWithout', { unit: '%' }),
      digits: 1,
      of: (row) => row.shareWithout * 100,
    },
    { head: t('causes.headWith', { unit: symbol }), of: (row) => show(row.with) },
    { head: t('causes.headWith', { unit: '%' }), digits: 1, of: (row) => row.shareWith * 100 },
  ];
  return {
    columns,
    rowCount: rows.length,
    cell: (row, column) => columns[column].of(rows[row]),
  };
}
