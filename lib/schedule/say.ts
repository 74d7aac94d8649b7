export { problemRange as rangeText, sayProblem as say } from '../words/index.ts';
export type { ProblemUnit as RangeUnit } from '../words/index.ts';
