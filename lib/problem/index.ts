export { formatProblem, InputError, problem, showValue } from './problem.ts';
export type { Problem, ProblemTexts } from './problem.ts';
export { fill, inTurn, sayFrom, verbatim } from './text.ts';
export type { Book, Say, Text, TextKey, TextValue } from './text.ts';
