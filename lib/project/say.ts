import { problem, showValue, verbatim } from '../problem/index.ts';
import type { Problem, ProblemTexts, Text, TextKey, TextValue } from '../problem/index.ts';
import { sayProblem } from '../words/index.ts';
import type { ProblemBook } from '../words/index.ts';

export type ProblemKey = TextKey<ProblemBook['project']>;
/** Rules of single fields that a range does not tell. */
export type RuleBroken = keyof ProblemBook['project']['broken'];

/** Makes the sentences of problems of a project. */
export function say(key: ProblemKey, values?: Record<string, TextValue>): Text {
  return sayProblem(`project.${key}`, values);
}

/** A problem and the value that stands there. */
export function told(path: string | Text, texts: ProblemTexts, value: unknown): Problem {
  const shown = showText(value);
  const inWords = shown.file === '' ? {} : { value: shown };
  return { ...problem(path, { ...texts, ...inWords }), value: shown.english };
}

/** A value for display; never throws, whatever the value. */
function showText(value: unknown): Text {
  if (typeof value === 'number' && !Number.isFinite(value)) return verbatim(String(value));
  if (typeof value !== 'object' || value === null) return verbatim(showValue(value));
  try {
    const text = JSON.stringify(value);
    if (text.length <= 60) return verbatim(text);
  } catch {
    // Too deep or circular to print: the summary below says enough.
  }
  if (Array.isArray(value)) return say('list', { count: value.length });
  return say('object', { count: Object.keys(value).length });
}
