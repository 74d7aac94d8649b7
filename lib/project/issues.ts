import type { z } from 'zod';
import { showValue, type Problem } from '../problem/index.ts';
import { nearest } from './nearest.ts';
import { fieldNames, hintAt, isRecord, pathText, schemaAt, valueAt } from './walk.ts';

type Issue = z.core.$ZodIssue;

/** Turns what zod found into problems a person can mend. `root` is the data that was checked. */
export function problemsOf(
  issues: readonly Issue[],
  schema: z.core.$ZodType,
  root: unknown,
): Problem[] {
  const problems = issues.flatMap((issue) => problemsOfOne(issue, schema, root));
  // One word for each place: a value past its range may break a second rule of the same field.
  return [...new Map(problems.reverse().map((p) => [p.path, p])).values()].reverse();
}

function problemsOfOne(issue: Issue, schema: z.core.$ZodType, root: unknown): Problem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => unknownField([...issue.path, key], schema, root));
  }
  if (issue.code === 'invalid_union') {
    const inner = issue.errors.find((branch) => branch.every((i) => i.path.length > 0));
    if (inner) {
      const whole = inner.map((i) => ({ ...i, path: [...issue.path, ...i.path] }));
      return problemsOf(whole, schema, root);
    }
  }
  return [plainProblem(issue, schema, root), ...fieldsOfNoKind(issue, schema, root)];
}

function plainProblem(issue: Issue, schema: z.core.$ZodType, root: unknown): Problem {
  const value = valueAt(root, issue.path);
  const hint = hintAt(schema, root, issue.path);
  const kind = kindOf(issue);
  const names = fieldNames(schemaAt(schema, root, issue.path), value);
  const fields = names.length ? `an object with ${names.join(', ')}` : undefined;
  const allowed = hint?.allowed ?? fields ?? kind.allowed;
  const missing = value === undefined;
  const repairs = [missing ? 'Add it.' : repair(issue, value), hint?.where].filter(Boolean);
  return {
    path: pathText(root, issue.path),
    message: missing ? 'is missing' : kind.message,
    value: show(value),
    allowed,
    fix: repairs.join(' ') || 'Change it to what is allowed.',
  };
}

/** Where the kind of a thing is not known, the fields that none of its kinds has. */
function fieldsOfNoKind(issue: Issue, schema: z.core.$ZodType, root: unknown): Problem[] {
  if (issue.code !== 'invalid_union' || !issue.discriminator) return [];
  const parent = issue.path.slice(0, -1);
  const value = valueAt(root, parent);
  const names = fieldNames(schemaAt(schema, root, parent), value);
  if (!isRecord(value)) return [];
  return Object.keys(value)
    .filter((key) => !names.includes(key))
    .map((key) => unknownField([...parent, key], schema, root));
}

function unknownField(path: PropertyKey[], schema: z.core.$ZodType, root: unknown): Problem {
  const parent = path.slice(0, -1);
  const parentValue = valueAt(root, parent);
  const names = fieldNames(schemaAt(schema, root, parent), parentValue);
  const free = names.filter((name) => !isRecord(parentValue) || !Object.hasOwn(parentValue, name));
  const guess = nearest(String(path.at(-1)), free) ?? nearest(String(path.at(-1)), names);
  return {
    path: pathText(root, path),
    message: 'is not a field of the project file',
    value: show(valueAt(root, path)),
    allowed: names.join(', '),
    fix: guess ? `Did you mean "${guess}"? Rename it, or delete it.` : 'Delete it.',
  };
}

/** What is wrong and what is allowed, as far as the issue alone tells. */
function kindOf(issue: Issue): { message: string; allowed: string } {
  switch (issue.code) {
    case 'invalid_type':
      return { message: `must be ${typeName(issue.expected)}`, allowed: typeName(issue.expected) };
    case 'too_small':
    case 'too_big':
      return sizeKind(issue);
    case 'not_multiple_of':
      return {
        message: `must be a multiple of ${issue.divisor}`,
        allowed: `multiples of ${issue.divisor}`,
      };
    case 'invalid_value':
      return { message: 'is not one of the choices', allowed: choices(issue.values) };
    case 'invalid_union':
      if ('options' in issue && issue.options) {
        return { message: 'is not one of the choices', allowed: choices(issue.options) };
      }
      return { message: 'is of no kind that is allowed here', allowed: unionChoices(issue) };
    case 'custom':
      return { message: issue.message, allowed: 'see the fix' };
    default:
      return { message: 'is not of the form that is allowed', allowed: 'see the fix' };
  }
}

function sizeKind(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig) {
  const limit = issue.code === 'too_small' ? issue.minimum : issue.maximum;
  const bound = issue.code === 'too_small' ? 'at least' : 'at most';
  if (issue.origin === 'array') {
    const count = issue.exact ? `exactly ${limit}` : `${bound} ${limit}`;
    return { message: `must have ${count} entries`, allowed: `${count} entries` };
  }
  if (issue.origin === 'string') {
    return {
      message: `must have ${bound} ${limit} characters`,
      allowed: `${bound} ${limit} characters`,
    };
  }
  return {
    message: issue.code === 'too_small' ? 'is too small' : 'is too large',
    allowed: `${bound} ${limit}`,
  };
}

function unionChoices(issue: z.core.$ZodIssueInvalidUnion): string {
  return issue.errors
    .flatMap((branch) => branch.slice(0, 1))
    .map((first) => kindOf(first).allowed)
    .join(' or ');
}

function choices(values: readonly unknown[]): string {
  return values.map((v) => JSON.stringify(v)).join(', ');
}

function typeName(expected: string): string {
  const names: Record<string, string> = {
    number: 'a finite number',
    int: 'a whole number',
    string: 'text',
    boolean: 'true or false',
    array: 'a list',
    object: 'an object with named fields',
  };
  return names[expected] ?? expected;
}

/** What to do about a value of the wrong type or choice; empty where the range says it all. */
function repair(issue: Issue, value: unknown): string {
  if (issue.code === 'invalid_type') return retype(issue.expected, value);
  const options =
    issue.code === 'invalid_value'
      ? issue.values
      : issue.code === 'invalid_union' && 'options' in issue
        ? (issue.options ?? [])
        : [];
  if (!options.length) return '';
  const words = options.filter((o) => typeof o === 'string');
  const guess = typeof value === 'string' ? nearest(value, words) : undefined;
  return guess ? `Did you mean "${guess}"?` : 'Take one of the choices.';
}

function retype(expected: string, value: unknown): string {
  switch (expected) {
    case 'number':
    case 'int': {
      if (typeof value === 'number' && Number.isFinite(value)) return 'Round it.';
      const quoted = typeof value === 'string' && value.trim() !== '';
      return quoted && Number.isFinite(Number(value))
        ? 'Write the number without quotes.'
        : 'Write a number.';
    }
    case 'string':
      return 'Write text in quotes.';
    case 'boolean':
      return 'Write true or false without quotes.';
    case 'array':
      return 'Write a list in square brackets.';
    default:
      return 'Write named fields in braces.';
  }
}

/** A value for display; never throws, whatever the value. */
export function show(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
  if (typeof value !== 'object' || value === null) return showValue(value);
  try {
    const text = JSON.stringify(value);
    if (text.length <= 60) return text;
  } catch {
    // Too deep or circular to print: the summary below says enough.
  }
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return `an object with ${Object.keys(value).length} fields`;
}
