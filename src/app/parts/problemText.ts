import type { Problem } from '../../../lib/problem/index.ts';
import type { Wording } from '../../words/index.ts';

/** The sentences of a problem in the language of the page. */
export interface ToldProblem {
  /** What is wrong, without a full stop. */
  message: string;
  /** What stands there now. */
  value?: string;
  allowed?: string;
  fix?: string;
}

/**
 * A problem in the language of the page; in English where its sentences are not in the language
 * files.
 */
export function problemText(words: Wording, problem: Problem): ToldProblem {
  const { texts } = problem;
  const { allowed, fix } = problem;
  return {
    message: texts ? words.text(texts.message) : problem.message,
    value: valueText(words, problem),
    allowed: texts?.allowed ? words.text(texts.allowed) : allowed,
    fix: texts?.fix ? words.text(texts.fix) : fix,
  };
}

/** What is wrong with an entry and what to do about it, for under its field. */
export function problemLine(words: Wording, problem: Problem): string {
  const { message, fix = '' } = problemText(words, problem);
  return words.of('common')('problems.line', { message, fix });
}

function valueText(words: Wording, { value, texts }: Problem): string | undefined {
  if (texts?.value) return words.text(texts.value);
  if (value === 'missing') return words.of('common')('problems.missing');
  // Letters of the user stand in quotes, lists in brackets.
  return value && /^-?\d/.test(value) ? words.decimal(value) : value;
}
