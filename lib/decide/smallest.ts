import { bestOfSize, cheapestKept } from './exact.ts';
import type { Pick } from './exact.ts';
import { greedyChain, greedyKept, leastCost } from './greedy.ts';
import type { Creep, Judged } from './judged.ts';

/** Up to so many candidates are searched exactly. */
export const MOST_EXACT = 12;

/** What a search over the blinds of one part of the house found. */
export interface SearchResult {
  /** The cheapest choice that breaks no room; absent where none was found. */
  smallest?: Pick;
  /** No choice can be cheaper; the cost of `smallest` where it is exact. */
  leastCost: number;
  /** Best choice by number of blinds, from none to all. */
  front: Pick[];
  exact: boolean;
  /** Most by which one more blind was seen to make things worse; all 0: never. */
  creep: Creep;
  /** Choices judged. */
  evaluations: number;
}

/**
 * Searches the cheapest set and the front. Exact up to MOST_EXACT candidates: the branches cut
 * allow for the worst that one more blind was seen to do, and the search is repeated until nothing
 * worse is seen. Above that greedy, with a lower bound of the cost.
 */
export function searchBlinds(judged: Judged, prices: readonly number[]): SearchResult {
  judged.probe();
  const chain = greedyChain(judged, prices);
  const good = greedyKept(judged, prices, chain);
  if (judged.count > MOST_EXACT) {
    const creep = judged.creep();
    const bound = leastCost(judged, prices);
    return {
      smallest: good,
      // A bound argued from blinds that never do harm does not hold once one was seen to.
      leastCost: creep.broken === 0 ? bound : 0,
      front: chain,
      exact: false,
      creep,
      evaluations: judged.evaluations,
    };
  }
  for (let creep = judged.creep(); ;) {
    const smallest = cheapestKept(judged, prices, creep, good?.choice);
    const front = chain.map((pick, size) => bestOfSize(judged, prices, size, creep, pick.choice));
    const after = judged.creep();
    if (after.broken <= creep.broken && after.hours <= creep.hours) {
      const { evaluations } = judged;
      return { smallest, leastCost: smallest?.cost ?? 0, front, exact: true, creep, evaluations };
    }
    creep = after;
  }
}
