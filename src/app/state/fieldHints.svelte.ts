import type { FieldHint } from '../../../lib/project/index.ts';

let known = $state.raw<ReadonlyMap<string, FieldHint>>(new Map());

/**
 * Range, unit and where to find a field of the project file: `fieldHint('openings[].frame.Uf')`.
 * They come from the engine's worker, which has the schema; until they are there a form knows none.
 */
export function fieldHint(path: string): FieldHint | undefined {
  return known.get(path);
}

export function takeFieldHints(hints: ReadonlyMap<string, FieldHint>): void {
  known = hints;
}
