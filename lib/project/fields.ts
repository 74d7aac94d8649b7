import { config, z } from 'zod';

// Schemas make no code from text: a page with a strict content security policy allows none, and the
// browser complains at the attempt. It counts for the schemas made after it.
config({ jitless: true });

/** What a form or an error message must know of one field of the project file. */
export interface FieldHint {
  /** Range with its unit, or the form the text must have. */
  allowed: string;
  /** Where to find the value, one sentence. */
  where: string;
  min?: number;
  max?: number;
  unit?: string;
}

/** Hints by schema: one source for the checks, the messages and the app's forms. */
export const hints = z.registry<FieldHint>();

/** A figure with its range. `unit` may be empty for a share. */
export function quantity(min: number, max: number, unit: string, where: string) {
  const hint = { allowed: rangeText(min, max, unit), where, min, max, unit };
  // Adding 0 turns -0 into 0, which JSON cannot tell apart.
  return z
    .number()
    .min(min)
    .max(max)
    .overwrite((x) => x + 0)
    .register(hints, hint);
}

/** A whole number with its range. */
export function whole(min: number, max: number, where: string) {
  const hint = { allowed: `whole number, ${rangeText(min, max, '')}`, where, min, max };
  return z
    .int()
    .min(min)
    .max(max)
    .overwrite((x) => x + 0)
    .register(hints, hint);
}

function rangeText(min: number, max: number, unit: string): string {
  return `${min} to ${max}${unit ? ` ${unit}` : ''}`;
}

/** A name people read: not blank. */
export function nameText(where: string) {
  return z
    .string()
    .max(120)
    .regex(/\S/)
    .register(hints, { allowed: '1 to 120 characters, not blank', where });
}

/** Where figures come from: a sentence, not blank. */
export function sourceText(where: string) {
  return z
    .string()
    .max(1000)
    .regex(/\S/)
    .register(hints, { allowed: '1 to 1000 characters, not blank', where });
}

/** Free text, may be empty. */
export function freeText(where: string) {
  return z.string().max(5000).register(hints, { allowed: 'up to 5000 characters', where });
}

/** An id other parts of the file refer to. */
export function idText(where: string) {
  return z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/)
    .register(hints, {
      allowed: '1 to 64 letters, digits, dots, hyphens or underscores, a letter or digit first',
      where,
    });
}

const DAYS_OF_LEAP_YEAR = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A day of the year as `MM-DD`; 29 February is a day. */
export function monthDay(where: string) {
  return z
    .string()
    .refine(isMonthDay, { error: 'is no day of the year' })
    .register(hints, { allowed: 'MM-DD from 01-01 to 12-31, such as 06-21', where });
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
export function clockMinutes(where: string) {
  return z
    .int()
    .min(0)
    .max(1440)
    .multipleOf(15)
    .overwrite((x) => x + 0)
    .register(hints, {
      allowed: '0 to 1440 minutes after midnight in steps of 15',
      where,
      min: 0,
      max: 1440,
      unit: 'min',
    });
}

/** The same kind of figure for head, sill, left and right. */
export function sides(min: number, max: number, where: string) {
  return z.strictObject({
    head: quantity(min, max, 'm', where),
    sill: quantity(min, max, 'm', where),
    left: quantity(min, max, 'm', where),
    right: quantity(min, max, 'm', where),
  });
}

/** Twelve monthly figures, January first. */
export function twelve(min: number, max: number, unit: string, where: string) {
  return z.array(quantity(min, max, unit, where)).length(12);
}

/** A list whose length is kept within reason, so that a broken file cannot stall the page. */
export function listOf<T extends z.ZodType>(item: T, max = 500) {
  return z.array(item).max(max);
}
