import type { z } from 'zod';
import { projectSchema, type Project } from './schema.ts';
import { childSchema, fieldNames, isRecord } from './walk.ts';

/**
 * The project as the text of its file: fields in the order of the schema whatever order they were
 * made in, indented by two, lists of plain values on one line. Reading it back gives the same
 * project, and writing that gives the same text.
 */
export function serializeProject(project: Project): string {
  return `${write(project, projectSchema, '')}\n`;
}

function write(value: unknown, schema: z.core.$ZodType | undefined, indent: string): string {
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.every((item) => typeof item !== 'object' || item === null)) {
      return `[${value.map((item) => JSON.stringify(item)).join(', ')}]`;
    }
    const rows = value.map((item, i) =>
      write(item, schema && childSchema(schema, value, i), inner),
    );
    return `[\n${inner}${rows.join(`,\n${inner}`)}\n${indent}]`;
  }
  if (!isRecord(value)) return JSON.stringify(value);
  const rows = orderedKeys(value, schema).map(
    (key) =>
      `${JSON.stringify(key)}: ${write(value[key], schema && childSchema(schema, value, key), inner)}`,
  );
  return rows.length ? `{\n${inner}${rows.join(`,\n${inner}`)}\n${indent}}` : '{}';
}

/** Present fields in schema order; any others after them by name. Undefined ones are left out. */
function orderedKeys(value: Record<string, unknown>, schema: z.core.$ZodType | undefined) {
  const present = Object.keys(value).filter((key) => value[key] !== undefined);
  const known = fieldNames(schema, value).filter((key) => present.includes(key));
  return [...known, ...present.filter((key) => !known.includes(key)).sort()];
}
