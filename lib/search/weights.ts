import { InputError, problem } from '../problem/index.ts';
import type { SearchFigures, SearchOptions, SearchWeights } from './types.ts';
import { sayProblem as say } from '../words/index.ts';

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
    const texts = {
      message: say('search.weight'),
      allowed: say('search.weightAllowed'),
      fix: say('search.weightFix'),
    };
    throw new InputError(problem(`weights.${name}`, texts, value));
  }
  return weights;
}

/** The part of the limit to keep in hand. @throws InputError for one that leaves nothing */
export function reserveOf({ reserve = 0 }: SearchOptions): number {
  if (reserve >= 0 && reserve < 1) return reserve;
  const texts = {
    message: say('search.outOfRange'),
    allowed: say('search.reserveAllowed'),
    fix: say('search.reserveFix'),
  };
  throw new InputError(problem('reserve', texts, reserve));
}

/** The most studies of a search. @throws InputError for too few */
export function mostRunsOf({ mostRuns = MOST_RUNS }: SearchOptions): number {
  if (Number.isInteger(mostRuns) && mostRuns >= LEAST_RUNS) return mostRuns;
  const texts = {
    message: say('search.outOfRange'),
    allowed: say('search.runsAllowed', { least: LEAST_RUNS }),
    fix: say('search.runsFix', { most: MOST_RUNS }),
  };
  throw new InputError(problem('mostRuns', texts, mostRuns));
}
