import { compareOutcomes } from './judged.ts';
import type { Choice, Judged } from './judged.ts';
import { pickOf } from './exact.ts';
import type { Pick } from './exact.ts';

/** The choices a greedy search goes through, from no blind to all; each adds one. */
export function greedyChain(judged: Judged, prices: readonly number[]): Pick[] {
  const choice = new Uint8Array(judged.count);
  const chain = [pickOf(judged, prices, choice)];
  for (let size = 1; size <= judged.count; size++) {
    let best: Pick | undefined;
    let added = -1;
    for (let i = 0; i < judged.count; i++) {
      if (choice[i] === 1) continue;
      choice[i] = 1;
      if (!best || compareOutcomes(judged.of(choice), best.outcome) < 0) {
        best = pickOf(judged, prices, choice);
        added = i;
      }
      choice[i] = 0;
    }
    choice[added] = 1;
    chain.push(best!);
  }
  return chain;
}

/**
 * A choice that breaks no room, found without a full search: the first of the greedy chain that
 * does, less every blind it can do without, the dearest first. Absent where the chain has none.
 */
export function greedyKept(
  judged: Judged,
  prices: readonly number[],
  chain: readonly Pick[],
): Pick | undefined {
  const first = chain.find((pick) => pick.outcome.broken === 0);
  if (!first) return undefined;
  const choice = first.choice.slice();
  const order = [...choice.keys()].sort((a, b) => prices[b] - prices[a] || b - a);
  for (const i of order) {
    if (choice[i] === 0) continue;
    choice[i] = 0;
    if (judged.of(choice).broken > 0) choice[i] = 1;
  }
  return pickOf(judged, prices, choice);
}

/**
 * A price no choice that keeps every room can be under. Wherever all blinds but those of a bundle
 * still leave a room broken, at least one of the bundle is needed, as fewer blinds are no better.
 * Bundles are made that share no opening, so the cheapest of each adds up. Sound where one more
 * blind never breaks a room.
 */
export function leastCost(judged: Judged, prices: readonly number[]): number {
  const free = new Set(Array.from({ length: judged.count }, (_, i) => i));
  let sum = 0;
  for (;;) {
    const bundle = nextBundle(judged, free);
    if (!bundle) return sum;
    sum += Math.min(...bundle.map((i) => prices[i]));
    for (const i of bundle) free.delete(i);
  }
}

/** A smallest-by-removal bundle among the free candidates without which a room is broken. */
function nextBundle(judged: Judged, free: ReadonlySet<number>): number[] | undefined {
  const all: Choice = new Uint8Array(judged.count).fill(1);
  const breaksWithout = (bundle: readonly number[]) => {
    const rest = all.slice();
    for (const i of bundle) rest[i] = 0;
    return judged.of(rest).broken > 0;
  };
  // Single openings first: they make the most bundles.
  for (const i of free) if (breaksWithout([i])) return [i];
  let bundle = [...free];
  if (bundle.length === 0 || !breaksWithout(bundle)) return undefined;
  for (const i of [...bundle]) {
    const less = bundle.filter((x) => x !== i);
    if (less.length > 0 && breaksWithout(less)) bundle = less;
  }
  return bundle;
}
