export { formatProblem, InputError, problem, showValue } from './problem.ts';
export type { Problem, ProblemTexts } from './problem.ts';
export { rangesFrom } from './range.ts';
export { decimalText, figureText, inTurn, monthText, sayFrom, verbatim } from './text.ts';
export type { Book, Say, Text, TextKey, TextValue, Written } from './text.ts';
