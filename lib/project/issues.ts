import type { z } from 'zod';
import { inTurn, verbatim } from '../problem/index.ts';
import type { Problem, Text } from '../problem/index.ts';
import { nearest } from './nearest.ts';
import { say, told, type RuleBroken } from './say.ts';
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
  const fields = names.length ? say('objectOf', { fields: names.join(', ') }) : undefined;
  const allowed = hint?.allowed ?? fields ?? kind.allowed;
  const missing = value === undefined;
  const repairs = [missing ? say('add') : repair(issue, value), hint?.where];
  const fixes = repairs.filter((text) => text !== undefined);
  const message = missing ? say('missing') : kind.message;
  const fix = fixes.length > 0 ? inTurn(...fixes) : say('mend');
  return told(pathText(root, issue.path), { message, allowed, fix }, value);
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
  const texts = {
    message: say('field.unknown'),
    allowed: verbatim(names.join(', ')),
    fix: guess ? say('field.rename', { guess }) : say('delete'),
  };
  return told(pathText(root, path), texts, valueAt(root, path));
}

interface Kind {
  message: Text;
  allowed: Text;
}

/** What is wrong and what is allowed, as far as the issue alone tells. */
function kindOf(issue: Issue): Kind {
  switch (issue.code) {
    case 'invalid_type': {
      const type = typeName(issue.expected);
      return { message: say('type.must', { type }), allowed: type };
    }
    case 'too_small':
    case 'too_big':
      return sizeKind(issue);
    case 'not_multiple_of': {
      const step = String(issue.divisor);
      return {
        message: say('multiple.must', { step }),
        allowed: say('multiple.allowed', { step }),
      };
    }
    case 'invalid_value':
      return { message: say('choice.not'), allowed: choices(issue.values) };
    case 'invalid_union':
      if ('options' in issue && issue.options) {
        return { message: say('choice.not'), allowed: choices(issue.options) };
      }
      return { message: say('choice.noKind'), allowed: unionChoices(issue) };
    case 'custom':
      return {
        message: say(`broken.${(issue.params as { broken: RuleBroken }).broken}`),
        allowed: say('seeFix'),
      };
    default:
      return { message: say('form'), allowed: say('seeFix') };
  }
}

function sizeKind(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig): Kind {
  const small = issue.code === 'too_small';
  const limit = Number(small ? issue.minimum : issue.maximum);
  if (issue.origin === 'array') {
    const how = issue.exact ? 'exactly' : small ? 'least' : 'most';
    const allowed = issue.exact ? 'allowedExactly' : small ? 'allowedLeast' : 'allowedMost';
    return {
      message: say(`entries.${how}`, { limit }),
      allowed: say(`entries.${allowed}`, { limit }),
    };
  }
  if (issue.origin === 'string') {
    return {
      message: say(small ? 'letters.least' : 'letters.most', { limit }),
      allowed: say(small ? 'letters.allowedLeast' : 'letters.allowedMost', { limit }),
    };
  }
  return {
    message: say(small ? 'size.small' : 'size.large'),
    allowed: say(small ? 'size.least' : 'size.most', { limit }),
  };
}

function unionChoices(issue: z.core.$ZodIssueInvalidUnion): Text {
  const [first, ...rest] = issue.errors
    .flatMap((branch) => branch.slice(0, 1))
    .map((inner) => kindOf(inner).allowed);
  return rest.reduce((before, next) => say('or', { first: before, second: next }), first);
}

function choices(values: readonly unknown[]): Text {
  return verbatim(values.map((v) => JSON.stringify(v)).join(', '));
}

const TYPES = ['number', 'int', 'string', 'boolean', 'array', 'object'] as const;

function typeName(expected: string): Text {
  const known = TYPES.find((type) => type === expected);
  return known ? say(`type.${known}`) : verbatim(expected);
}

/** What to do about a value of the wrong type or choice; none where the range says it all. */
function repair(issue: Issue, value: unknown): Text | undefined {
  if (issue.code === 'invalid_type') return retype(issue.expected, value);
  const options =
    issue.code === 'invalid_value'
      ? issue.values
      : issue.code === 'invalid_union' && 'options' in issue
        ? (issue.options ?? [])
        : [];
  if (!options.length) return undefined;
  const words = options.filter((o) => typeof o === 'string');
  const guess = typeof value === 'string' ? nearest(value, words) : undefined;
  return guess ? say('didYouMean', { guess }) : say('choice.take');
}

function retype(expected: string, value: unknown): Text {
  switch (expected) {
    case 'number':
    case 'int': {
      if (typeof value === 'number' && Number.isFinite(value)) return say('retype.round');
      const quoted = typeof value === 'string' && value.trim() !== '';
      const unquote = quoted && Number.isFinite(Number(value));
      return say(unquote ? 'retype.unquote' : 'retype.number');
    }
    case 'string':
      return say('retype.string');
    case 'boolean':
      return say('retype.boolean');
    case 'array':
      return say('retype.array');
    default:
      return say('retype.object');
  }
}
