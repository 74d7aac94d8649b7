import { readFileSync } from 'node:fs';
import type { ProjectLibrary } from '../../../lib/project/index.ts';

const data = new URL('../../../data/', import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(name, data), 'utf8'));

/** The examples that ship, by name. */
export const EXAMPLES = ['studio', 'bellingham', 'albuquerque'] as const;

export function exampleText(name: (typeof EXAMPLES)[number]): string {
  return readFileSync(new URL(`examples/${name}.shadewright.json`, data), 'utf8');
}

/** What ships with the program. */
export function shippedLibrary(): ProjectLibrary {
  return {
    glazings: read('glazings.json').glazings,
    blinds: read('blinds.json').blinds,
    stations: read('climates.json').stations,
  };
}
