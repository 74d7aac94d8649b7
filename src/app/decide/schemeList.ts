import type { Scheme } from '../../../lib/sure/index.ts';

export const FEWEST_SCHEMES = 2;
export const MOST_SCHEMES = 6;

/** Ids of the stock schemes. */
export const STOCK_SCHEMES = [
  'planned',
  'none',
  'internal',
  'external',
  'smallest',
  'overhang',
] as const;
export type StockScheme = (typeof STOCK_SCHEMES)[number];

export function isStock(id: string): id is StockScheme {
  return (STOCK_SCHEMES as readonly string[]).includes(id);
}

/** Schemes chosen of a list, in the order of the list. */
export function chosenSchemes(all: readonly Scheme[], ids: ReadonlySet<string>): Scheme[] {
  return all.filter(({ id }) => ids.has(id));
}
