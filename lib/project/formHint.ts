import type { z } from 'zod';
import { hints, type FieldHint } from './fields.ts';
import { projectSchema } from './schema.ts';

/**
 * Range, unit and where to find a field, for a form: `fieldHint('openings[].frame.Uf')`. Where a
 * field exists in several kinds of a thing, the first kind that has it counts.
 */
export function fieldHint(path: string): FieldHint | undefined {
  const keys = path.replace(/\[\]/g, '.[]').split('.').filter(Boolean);
  return find(projectSchema, keys);
}

interface Definition {
  innerType?: z.core.$ZodType;
  in?: z.core.$ZodType;
  options?: readonly z.core.$ZodType[];
  element?: z.core.$ZodType;
  shape?: Record<string, z.core.$ZodType>;
}

function find(schema: z.core.$ZodType, keys: readonly string[]): FieldHint | undefined {
  const def = schema._zod.def as Definition;
  if (keys.length === 0 && hints.has(schema)) return hints.get(schema);
  const wrapped = def.innerType ?? def.in;
  if (wrapped) return find(wrapped, keys);
  if (def.options) {
    for (const option of def.options) {
      const hint = find(option, keys);
      if (hint) return hint;
    }
    return undefined;
  }
  const [key, ...rest] = keys;
  if (key === undefined) return undefined;
  const next =
    key === '[]' ? def.element : def.shape && Object.hasOwn(def.shape, key) && def.shape[key];
  return next ? find(next, rest) : undefined;
}
