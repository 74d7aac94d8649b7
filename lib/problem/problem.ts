import type { Text } from './text.ts';

/** One thing wrong with what the user gave, said so that it can be mended. */
export interface Problem {
  /** Where: a field path such as `openings[2].width`, or `line 14, column "DNI"`. */
  path: string;
  /** What is wrong, in one sentence without the path. */
  message: string;
  /** What stands there now, shortened for display. */
  value?: string;
  /** What is allowed, with the unit: `0.1 to 10 m`. */
  allowed?: string;
  /** What to do about it. */
  fix?: string;
  /** The same sentences with their places in the language files. */
  texts?: ProblemTexts;
}

export interface ProblemTexts {
  message: Text;
  allowed?: Text;
  fix?: Text;
  /** What stands there, where words tell it: `a list of 3`. */
  value?: Text;
  /** Where, where words tell it: `line 14, column "DNI"`. */
  where?: Text;
}

/** A problem told in sentences of the language files; its place a field path or words. */
export function problem(
  at: string | Text,
  sentences: ProblemTexts,
  ...given: [value?: unknown]
): Problem {
  const texts = typeof at === 'string' ? sentences : { ...sentences, where: at };
  const { message, allowed, fix, value } = texts;
  return {
    path: typeof at === 'string' ? at : at.english,
    message: message.english,
    ...(value ? { value: value.english } : given.length > 0 && { value: showValue(given[0]) }),
    ...(allowed && { allowed: allowed.english }),
    ...(fix && { fix: fix.english }),
    texts,
  };
}

/** Thrown for bad input only; a program fault is any other error. */
export class InputError extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: Problem | readonly Problem[]) {
    const list = Array.isArray(problems) ? problems : [problems as Problem];
    super(list.map(formatProblem).join('\n'));
    this.name = 'InputError';
    this.problems = list;
  }
}

/** One line a person can act on: `path: message (is X; allowed A). Fix.` */
export function formatProblem(p: Problem): string {
  const facts = [
    p.value === undefined ? '' : `is ${p.value}`,
    p.allowed === undefined ? '' : `allowed: ${p.allowed}`,
  ].filter(Boolean);
  const detail = facts.length ? ` (${facts.join('; ')})` : '';
  const fix = p.fix ? ` ${p.fix}` : '';
  return `${p.path}: ${p.message}${detail}.${fix}`;
}

/** A value as shown in a problem: JSON, cut at 60 characters. */
export function showValue(value: unknown): string {
  let text: string;
  if (value === undefined) return 'missing';
  if (typeof value === 'number') return String(value);
  try {
    text = JSON.stringify(value) ?? String(value);
  } catch {
    text = String(value);
  }
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
