import type { CauseKind } from '../../../../lib/room/index.ts';
import type { RoomDetail } from '../../../../lib/study/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';
import { percent } from '../words.ts';

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

const NAMES: Record<Exclude<CauseKind, 'opening'>, string> = {
  people: 'People',
  appliances: 'Lights and appliances',
  outdoorAir: 'Warm air from outside',
  envelope: 'Warmth through walls, roof, floor and panes',
  heating: 'Heat left over from heating',
  cooling: 'Cooling',
};

/** Smallest share that gets a bar of its own. */
const LEAST = 0.005;

/** What heats a room, the greatest part without shading first. */
export function causeRows(
  without: RoomDetail,
  shaded: RoomDetail,
  nameOf: (opening: string) => string,
): CauseRow[] {
  const key = (kind: string, opening = '') => `${kind}|${opening}`;
  const after = new Map(shaded.causes.causes.map((c) => [key(c.kind, c.opening), c]));
  return without.causes.causes
    .map((cause): CauseRow => {
      const { kind, opening, degreeHours, share } = cause;
      const left = after.get(key(kind, opening));
      return {
        kind,
        ...(opening === undefined ? {} : { opening }),
        name: kind === 'opening' ? nameOf(opening ?? '') : NAMES[kind],
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
export function blameWords(rows: readonly CauseRow[], limit: string): string {
  const suns = rows.filter((row) => row.kind === 'opening');
  const total = (pick: (row: CauseRow) => number) => suns.reduce((sum, row) => sum + pick(row), 0);
  const topOf = (pick: (row: CauseRow) => number) =>
    suns.toSorted((a, b) => pick(b) - pick(a)).find((row) => pick(row) > 0);
  const bare = topOf((row) => row.shareWithout);
  const left = topOf((row) => row.shareWith);
  const words: string[] = [];
  if (bare) {
    words.push(
      `Without shading more of the heat over ${limit} comes through ${bare.name} than through any ` +
        `other opening: ${percent(bare.shareWithout)}; all glass together brings ` +
        `${percent(total((row) => row.shareWithout))}.`,
    );
  } else if (rows.some((row) => row.without > 0)) {
    words.push(`Without shading the sun has no part in it.`);
  } else words.push(`Without shading the room is never over ${limit}.`);
  if (left) {
    const same = left === bare;
    words.push(
      same
        ? `With shading it still is the first, with ${percent(left.shareWith)} of what is left.`
        : `With shading it is ${left.name}, with ${percent(left.shareWith)} of what is left.`,
    );
  } else if (!rows.some((row) => row.with > 0)) {
    words.push(`With shading the room is never over ${limit}.`);
  }
  return words.join(' ');
}

/** The bars as a table; degree-hours in shown units. */
export function causeTable(
  rows: readonly CauseRow[],
  symbol: string,
  show: (degreeHours: number) => number,
): FigureTable {
  const columns: { head: string; digits?: number; of: (row: CauseRow) => string | number }[] = [
    { head: 'Cause', of: (row) => row.name },
    { head: `Without (${symbol})`, of: (row) => show(row.without) },
    { head: 'Without (%)', digits: 1, of: (row) => row.shareWithout * 100 },
    { head: `With (${symbol})`, of: (row) => show(row.with) },
    { head: 'With (%)', digits: 1, of: (row) => row.shareWith * 100 },
  ];
  return {
    columns,
    rowCount: rows.length,
    cell: (row, column) => columns[column].of(rows[row]),
  };
}
