import { MOST_KEPT, freeId, houseOf } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
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

/** Whether a project may keep another one. */
export function mayKeep({ schemes = [] }: Project): boolean {
  return schemes.length < MOST_KEPT;
}

/** Keeps the house as it stands in a project under a name. */
export function keepScheme(draft: Project, house: Project, name: string): void {
  const kept = draft.schemes ?? [];
  const id = freeId(
    'kept',
    kept.map((scheme) => scheme.id),
  );
  draft.schemes = [...kept, { id, house: { ...houseOf(house), name } }];
}

/** Forgets a kept scheme. */
export function dropScheme(draft: Project, id: string): void {
  const left = draft.schemes?.filter((scheme) => scheme.id !== id) ?? [];
  if (left.length > 0) draft.schemes = left;
  else delete draft.schemes;
}
