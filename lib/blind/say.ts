import type { TextKey } from '../problem/index.ts';
import type { ProblemBook } from '../words/index.ts';

export { problemRange as rangeText, sayProblem as say } from '../words/index.ts';
export type { ProblemUnit as RangeUnit } from '../words/index.ts';

/** Places of the sentences about blinds. */
export type SentenceKey = TextKey<ProblemBook['blind']>;
