import type { BlindSet } from '../../../../lib/decide/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';

/** A point of the front: the best set with so many blinds. */
export interface FrontPoint {
  count: number;
  hours: number;
  broken: number;
  cost: number;
  openings: string[];
  /** It is the smallest set itself, or as many blinds as that has. */
  smallest: boolean;
}

/**
 * The front with the smallest set marked. The cheapest set may be another than the best of its
 * number; it then stands in the place of that one, so that what is marked is what is named.
 */
export function frontPoints(front: readonly BlindSet[], smallest?: BlindSet): FrontPoint[] {
  return front.map((best, count) => {
    const marked = smallest?.openings.length === count;
    const { hours, broken, cost, openings } = marked ? smallest : best;
    return { count, hours, broken, cost, openings, smallest: marked };
  });
}

/** The next point by an arrow key, Home or End; undefined for another key. */
export function frontByKey(at: number, count: number, key: string): number | undefined {
  const last = count - 1;
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return Math.min(at + 1, last);
    case 'ArrowLeft':
    case 'ArrowDown':
      return Math.max(at - 1, 0);
    case 'Home':
      return 0;
    case 'End':
      return last;
    default:
      return undefined;
  }
}

/** Heads of the data table, in the order of its columns. */
export type FrontHeads = Record<'count' | 'hours' | 'broken' | 'cost' | 'where', string>;

export function frontTable(
  points: readonly FrontPoint[],
  heads: FrontHeads,
  where: (openings: readonly string[]) => string,
): FigureTable {
  const columns = [
    { head: heads.count, of: (p: FrontPoint) => p.count },
    { head: heads.hours, of: (p: FrontPoint) => p.hours },
    { head: heads.broken, of: (p: FrontPoint) => p.broken },
    { head: heads.cost, digits: 2, of: (p: FrontPoint) => p.cost },
    { head: heads.where, of: (p: FrontPoint) => where(p.openings) },
  ];
  return {
    columns,
    rowCount: points.length,
    cell: (row, column) => columns[column].of(points[row]),
  };
}
