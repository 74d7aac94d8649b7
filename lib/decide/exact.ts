import { compareOutcomes } from './judged.ts';
import type { Choice, Creep, Judged, Outcome } from './judged.ts';

/** A choice of blinds with its price and how it fares. */
export interface Pick {
  choice: Choice;
  cost: number;
  outcome: Outcome;
}

/**
 * The cheapest choice that breaks no room, among equally cheap ones that with the fewest hours, then
 * the first in order; absent where there is none. Branch and bound over all choices: a branch is
 * left when it already costs more than the best, or when even all the blinds still open to it leave
 * a room broken. The second is sound as long as one more blind never breaks more rooms than
 * `creep.broken`; at 1 or more it never cuts.
 *
 * @param prices above 0, one a candidate
 * @param start a choice known to do, to cut by from the start
 */
export function cheapestKept(
  judged: Judged,
  prices: readonly number[],
  creep: Creep,
  start?: Choice,
): Pick | undefined {
  const { count } = judged;
  const choice = new Uint8Array(count);
  let best: Pick | undefined;
  const offer = (cost: number, outcome: Outcome) => {
    const better =
      !best || cost < best.cost || (cost === best.cost && outcome.hours < best.outcome.hours);
    if (better) best = { choice: choice.slice(), cost, outcome };
  };
  let most = start ? priceOf(start, prices) : Infinity;

  const visit = (i: number) => {
    const cost = priceOf(choice, prices);
    if (cost > most) return;
    const outcome = judged.of(choice);
    if (outcome.broken === 0) {
      offer(cost, outcome);
      most = best!.cost;
      return;
    }
    if (i === count) return;
    if (allFrom(judged, choice, i).broken > creep.broken * (count - i)) return;
    choice[i] = 1;
    visit(i + 1);
    choice[i] = 0;
    visit(i + 1);
  };
  visit(0);
  return best ?? (start && pickOf(judged, prices, start));
}

/**
 * The best choice of exactly `size` blinds: fewest rooms broken, then fewest hours, then the first
 * in order. A branch is left when even all the blinds still open to it do no better than the best,
 * with `creep` allowed for each blind that would be left out again.
 *
 * @param start any choice of that size, to cut by from the start
 */
export function bestOfSize(
  judged: Judged,
  prices: readonly number[],
  size: number,
  creep: Creep,
  start: Choice,
): Pick {
  const { count } = judged;
  const choice = new Uint8Array(count);
  let best: Pick | undefined;
  // What must be reached; equal is good enough for the start, which need not be the first in order.
  let goal = { outcome: judged.of(start), open: true };

  const visit = (i: number, have: number) => {
    const need = size - have;
    if (need > count - i) return;
    if (need === 0) {
      const outcome = judged.of(choice);
      if (best && compareOutcomes(outcome, best.outcome) >= 0) return;
      best = { choice: choice.slice(), cost: priceOf(choice, prices), outcome };
      goal = { outcome, open: false };
      return;
    }
    const spare = count - i - need;
    const all = allFrom(judged, choice, i);
    const least = {
      broken: all.broken - creep.broken * spare,
      hours: all.hours - creep.hours * spare,
    };
    const order = compareOutcomes(least, goal.outcome);
    if (goal.open ? order > 0 : order >= 0) return;
    choice[i] = 1;
    visit(i + 1, have + 1);
    choice[i] = 0;
    visit(i + 1, have);
  };
  visit(0, 0);
  return best ?? pickOf(judged, prices, start);
}

/** A choice with its price and outcome. */
export function pickOf(judged: Judged, prices: readonly number[], choice: Choice): Pick {
  return { choice: choice.slice(), cost: priceOf(choice, prices), outcome: judged.of(choice) };
}

export function priceOf(choice: Choice, prices: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < choice.length; i++) if (choice[i] === 1) sum += prices[i];
  return sum;
}

/** The outcome with every candidate from `i` on given a blind. */
function allFrom(judged: Judged, choice: Choice, i: number): Outcome {
  const all = choice.slice();
  all.fill(1, i);
  return judged.of(all);
}
