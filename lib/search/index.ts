export { runSearch, searchSchedule, withFound } from './search.ts';
export { searchTargets, targetNamed, withSchedule } from './target.ts';
export { plainRules } from './plainRules.ts';
export { familyWords, searchWords, searchWordsFrom } from './words.ts';
export type { SearchWords } from './words.ts';
export { MOST_RUNS, SEARCH_WEIGHTS, compareScores } from './weights.ts';
export type { Score } from './weights.ts';
export type {
  AllowedValues,
  FamilyFinding,
  FamilyId,
  IdealFinding,
  SearchFigures,
  SearchFindings,
  SearchOptions,
  SearchProgress,
  SearchTarget,
  SearchWeights,
} from './types.ts';
