import { describe, expect, it } from 'vitest';
import { looseWords } from '../../support/looseWords.ts';

/** What stays in the sources: names that are the same in every language. */
const NAMES: readonly RegExp[] = [/^Shadewright$/, /^(English|Deutsch)$/];

const folders = [
  'charts',
  'client',
  'decide',
  'files',
  'openings',
  'panels',
  'parts',
  'rooms',
  'schedules',
  'shell',
  'site',
  'state',
];

describe('words on screen come from the language files', () => {
  it.each(folders)('src/app/%s has none of its own', (folder) => {
    expect(looseWords(`src/app/${folder}`, NAMES)).toEqual([]);
  });
});
