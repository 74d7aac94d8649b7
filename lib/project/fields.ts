import { config, z } from 'zod';
import fields from '../../data/words/en/fields.json' with { type: 'json' };
import { inTurn, sayFrom } from '../problem/index.ts';
import type { Text, TextKey } from '../problem/index.ts';
import type { RuleBroken } from './say.ts';

// Schemas make no code from text: a page with a strict content security policy allows none, and the
// browser complains at the attempt. It counts for the schemas made after it.
config({ jitless: true });

/** Makes the sentences of the hints. */
export const say = sayFrom('fields', fields);
/** The place of a sentence in the language files: `opening.width`. */
export type FieldKey = TextKey<typeof fields>;
/** Where to find a value: a sentence, or two of them. */
type Where = FieldKey | readonly [FieldKey, FieldKey];

/** Units that are the same in every language; none for a share. */
const SYMBOLS = [
  '',
  'm',
  'm/s',
  '1/m',
  '1/h',
  'min',
  'K',
  'W',
  'W/K',
  'W/mK',
  'J/K',
  'J/kgK',
] as const;
export type FieldUnit = (typeof SYMBOLS)[number] | keyof typeof fields.unit;

/** What a form or an error message must know of one field of the project file. */
export interface FieldHint {
  /** Range with its unit, or the form the text must have. */
  allowed: Text;
  /** Where to find the value, one sentence or two. */
  where: Text;
  min?: number;
  max?: number;
}

/** Hints by schema: one source for the checks, the messages and the app's forms. */
export const hints = z.registry<FieldHint>();

/** A figure with its range. */
export function quantity(min: number, max: number, unit: FieldUnit, where: Where) {
  // Adding 0 turns -0 into 0, which JSON cannot tell apart.
  return z
    .number()
    .min(min)
    .max(max)
    .overwrite((x) => x + 0)
    .register(hints, { allowed: rangeText(min, max, unit), where: whereText(where), min, max });
}

/** A whole number with its range. */
export function whole(min: number, max: number, where: Where) {
  return z
    .int()
    .min(min)
    .max(max)
    .overwrite((x) => x + 0)
    .register(hints, {
      allowed: say('range.whole', { min, max }),
      where: whereText(where),
      min,
      max,
    });
}

function rangeText(min: number, max: number, unit: FieldUnit): Text {
  if (unit === '') return say('range.between', { min, max });
  return say('range.measured', { min, max, unit: unitText(unit) });
}

function unitText(unit: FieldUnit): string | Text {
  const symbol = SYMBOLS.find((s) => s === unit);
  return symbol ?? say(`unit.${unit as keyof typeof fields.unit}`);
}

function whereText(where: Where): Text {
  return typeof where === 'string' ? say(where) : inTurn(...where.map((key) => say(key)));
}

/** A name people read: not blank. */
export function nameText(where: Where) {
  return z
    .string()
    .max(120)
    .regex(/\S/)
    .register(hints, { allowed: say('form.name'), where: whereText(where) });
}

/** Where figures come from: a sentence, not blank. */
export function sourceText(where: Where) {
  return z
    .string()
    .max(1000)
    .regex(/\S/)
    .register(hints, { allowed: say('form.source'), where: whereText(where) });
}

/** Free text, may be empty. */
export function freeText(where: Where) {
  return z
    .string()
    .max(5000)
    .register(hints, { allowed: say('form.text'), where: whereText(where) });
}

/** An id other parts of the file refer to. */
export function idText(where: Where) {
  return z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/)
    .register(hints, {
      allowed: say('form.id'),
      where: whereText(where),
    });
}

/** What to tell where a rule of a field's own is broken. */
export function because(broken: RuleBroken): { params: { broken: RuleBroken } } {
  return { params: { broken } };
}

const DAYS_OF_LEAP_YEAR = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A day of the year as `MM-DD`; 29 February is a day. */
export function monthDay(where: Where) {
  return z
    .string()
    .refine(isMonthDay, because('noDay'))
    .register(hints, { allowed: say('form.day'), where: whereText(where) });
}

/** Whether a text is a day `MM-DD` of a leap year. */
export function isMonthDay(text: string): boolean {
  const match = /^(\d\d)-(\d\d)$/.exec(text);
  if (!match) return false;
  const days = DAYS_OF_LEAP_YEAR[Number(match[1]) - 1] ?? 0;
  const day = Number(match[2]);
  return day >= 1 && day <= days;
}

/** A clock time in quarter hours after midnight. */
export function clockMinutes(where: Where) {
  return z
    .int()
    .min(0)
    .max(1440)
    .multipleOf(15)
    .overwrite((x) => x + 0)
    .register(hints, {
      allowed: say('range.clock'),
      where: whereText(where),
      min: 0,
      max: 1440,
    });
}

/** The same kind of figure for head, sill, left and right. */
export function sides(min: number, max: number, where: Where) {
  return z.strictObject({
    head: quantity(min, max, 'm', where),
    sill: quantity(min, max, 'm', where),
    left: quantity(min, max, 'm', where),
    right: quantity(min, max, 'm', where),
  });
}

/** Twelve monthly figures, January first. */
export function twelve(min: number, max: number, unit: FieldUnit, where: Where) {
  return z.array(quantity(min, max, unit, where)).length(12);
}

/** A list whose length is kept within reason, so that a broken file cannot stall the page. */
export function listOf<T extends z.ZodType>(item: T, max = 500) {
  return z.array(item).max(max);
}
