export { entryRange, sayEntry } from './entry.ts';
export type { EntryBook, EntryUnit } from './entry.ts';
export { problemRange, sayProblem } from './problems.ts';
export type { ProblemBook, ProblemUnit } from './problems.ts';
