import { InputError, showValue } from '../problem/index.ts';
import type { SearchFigures, SearchOptions, SearchWeights } from './types.ts';

/**
 * What is given up, in view hours (common practice: one kWh of useful sun weighs as much as an hour
 * of view, ten moves of a motor too; hours over count only beyond the criterion).
 */
export const SEARCH_WEIGHTS: SearchWeights = { viewHour: 1, usefulKWh: 1, move: 0.1, hourOver: 0 };

/** Studies that one search runs at most. */
export const MOST_RUNS = 150;
/** Fewer leave no room to search. */
const LEAST_RUNS = 20;

/** What counts in the order of schedules. */
export type Score = Pick<SearchFigures, 'broken' | 'beyond' | 'price'>;

/**
 * Below 0 where `a` is the better: fewer rooms that break their criterion, then less beyond it, then
 * the lower price.
 */
export function compareScores(a: Score, b: Score): number {
  return a.broken - b.broken || a.beyond - b.beyond || a.price - b.price;
}

export function priceOf(
  figures: Pick<SearchFigures, 'viewHoursLost' | 'usefulLost' | 'moves' | 'hours'>,
  weights: SearchWeights,
): number {
  return (
    weights.viewHour * figures.viewHoursLost +
    weights.usefulKWh * Math.max(figures.usefulLost, 0) +
    weights.move * figures.moves +
    weights.hourOver * figures.hours
  );
}

/** The weights of a search. @throws InputError for one below 0 */
export function weightsOf(options: SearchOptions): SearchWeights {
  const weights = { ...SEARCH_WEIGHTS, ...options.weights };
  for (const [name, value] of Object.entries(weights)) {
    if (Number.isFinite(value) && value >= 0) continue;
    throw new InputError({
      path: `weights.${name}`,
      message: 'must be 0 or more',
      value: showValue(value),
      allowed: '0 or more',
      fix: 'Say how many view hours it is worth; leave it out for the usual weight.',
    });
  }
  return weights;
}

/** The part of the limit to keep in hand. @throws InputError for one that leaves nothing */
export function reserveOf({ reserve = 0 }: SearchOptions): number {
  if (reserve >= 0 && reserve < 1) return reserve;
  throw new InputError({
    path: 'reserve',
    message: 'is out of range',
    value: showValue(reserve),
    allowed: '0 to under 1',
    fix: 'Give a part of the limit: 0.1 keeps a tenth of it in hand.',
  });
}

/** The most studies of a search. @throws InputError for too few */
export function mostRunsOf({ mostRuns = MOST_RUNS }: SearchOptions): number {
  if (Number.isInteger(mostRuns) && mostRuns >= LEAST_RUNS) return mostRuns;
  throw new InputError({
    path: 'mostRuns',
    message: 'is out of range',
    value: showValue(mostRuns),
    allowed: `a whole number of ${LEAST_RUNS} or more`,
    fix: `Leave it out for ${MOST_RUNS}.`,
  });
}
