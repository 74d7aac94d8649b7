import type { z } from 'zod';
import { hints, type FieldHint } from './fields.ts';

type Key = PropertyKey;
/** The part of a zod schema's definition the walk reads. */
interface Definition {
  type: string;
  shape?: Record<string, z.core.$ZodType>;
  element?: z.core.$ZodType;
  innerType?: z.core.$ZodType;
  in?: z.core.$ZodType;
  options?: readonly z.core.$ZodType[];
  discriminator?: string;
}

const definition = (schema: z.core.$ZodType): Definition => schema._zod.def as Definition;

/** Whether a value is an object with named fields. */
export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The value at a path, undefined where the path leaves the data. */
export function valueAt(root: unknown, path: readonly Key[]): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<Key, unknown>)[key];
  }
  return value;
}

/** Takes the wrappers (optional, default, pipe) off and picks the branch of a union that fits. */
export function bare(schema: z.core.$ZodType, value: unknown): z.core.$ZodType {
  const def = definition(schema);
  if (def.innerType) return bare(def.innerType, value);
  if (def.type === 'pipe' && def.in) return bare(def.in, value);
  if (def.type !== 'union' || hints.has(schema)) return schema;
  const branch = def.options?.find((option) => fits(option, value, def.discriminator));
  return branch ? bare(branch, value) : schema;
}

function fits(option: z.core.$ZodType, value: unknown, discriminator?: string): boolean {
  const def = definition(option);
  if (def.type === 'array') return Array.isArray(value);
  if (def.type !== 'object') return false;
  if (!isRecord(value)) return false;
  if (!discriminator) return true;
  const literal = def.shape?.[discriminator];
  return literal?._zod.values?.has(value[discriminator] as z.core.util.Primitive) ?? false;
}

/** The schema one step down, or undefined where there is none. */
export function childSchema(
  schema: z.core.$ZodType,
  value: unknown,
  key: Key,
): z.core.$ZodType | undefined {
  let def = definition(bare(schema, value));
  if (def.type === 'union') {
    const branch = def.options?.find((option) => fits(option, value, def.discriminator));
    if (!branch) return undefined;
    def = definition(branch);
  }
  if (def.type === 'array') return def.element;
  return typeof key === 'string' && def.shape && Object.hasOwn(def.shape, key)
    ? def.shape[key]
    : undefined;
}

/** The schema at a path of the data, wrappers taken off. */
export function schemaAt(
  schema: z.core.$ZodType,
  root: unknown,
  path: readonly Key[],
): z.core.$ZodType | undefined {
  let current: z.core.$ZodType | undefined = schema;
  let value = root;
  for (const key of path) {
    current = childSchema(current, value, key);
    if (!current) return undefined;
    value = valueAt(value, [key]);
  }
  return bare(current, value);
}

/** The hint of the field at a path, if it has one. */
export function hintAt(
  schema: z.core.$ZodType,
  root: unknown,
  path: readonly Key[],
): FieldHint | undefined {
  const found = schemaAt(schema, root, path);
  return found && hints.get(found);
}

/**
 * Field names of an object schema in the order they are written, of all its kinds together where the
 * data does not tell which; empty for anything else.
 */
export function fieldNames(schema: z.core.$ZodType | undefined, value: unknown): string[] {
  if (!schema) return [];
  const { shape, options } = definition(bare(schema, value));
  const shapes = options ? options.map((option) => definition(option).shape) : [shape];
  return [...new Set(shapes.flatMap((fields) => Object.keys(fields ?? {})))];
}

/**
 * A path as a person reads it, naming listed things: `openings[2] "West door".width`. The file as a
 * whole is `project`.
 */
export function pathText(root: unknown, path: readonly Key[]): string {
  let text = '';
  let value = root;
  for (const key of path) {
    value = valueAt(value, [key]);
    if (typeof key === 'number') text += `[${key}]${label(value)}`;
    else text += (text ? '.' : '') + (/^\w+$/.test(String(key)) ? String(key) : quoted(key));
  }
  return text || 'project';
}

/** The keys of a path below one thing, as the checks of the other folders write it: `rules[1].when`. */
export function keysOf(field: string): Key[] {
  return (field.match(/[^.[\]]+/g) ?? []).map((key) => (/^\d+$/.test(key) ? Number(key) : key));
}

function label(value: unknown): string {
  if (!isRecord(value)) return '';
  const text = [value.name, value.id].find((t) => typeof t === 'string' && t.trim() !== '');
  return text === undefined ? '' : ` ${quoted(text)}`;
}

function quoted(text: unknown): string {
  const whole = String(text);
  return JSON.stringify(whole.length > 40 ? `${whole.slice(0, 37)}...` : whole);
}
