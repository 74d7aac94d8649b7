import type { z } from 'zod';
import { hints, type FieldHint } from './fields.ts';
import { projectSchema } from './schema.ts';

interface Definition {
  innerType?: z.core.$ZodType;
  in?: z.core.$ZodType;
  options?: readonly z.core.$ZodType[];
  element?: z.core.$ZodType;
  shape?: Record<string, z.core.$ZodType>;
}

/**
 * Range, unit and where to find every field that has them, for forms; by path:
 * `openings[].frame.Uf`. Where a field exists in several kinds of a thing, the first kind that has
 * it counts.
 */
export function fieldHints(): Map<string, FieldHint> {
  const found = new Map<string, FieldHint>();
  collect(projectSchema, '', found);
  return found;
}

function collect(schema: z.core.$ZodType, path: string, found: Map<string, FieldHint>): void {
  const hint = hints.get(schema);
  if (hint && !found.has(path)) found.set(path, hint);
  const { innerType, in: input, options, element, shape } = schema._zod.def as Definition;
  const wrapped = innerType ?? input;
  if (wrapped) collect(wrapped, path, found);
  for (const option of options ?? []) collect(option, path, found);
  if (element) collect(element, `${path}[]`, found);
  for (const [key, field] of Object.entries(shape ?? {})) {
    // A kept house has the fields of the project itself.
    if (path === 'schemes[]' && key === 'house') continue;
    collect(field, path ? `${path}.${key}` : key, found);
  }
}
