import { beforeEach, describe, expect, it, vi } from 'vitest';
import german from '../../../../data/words/de/year.json';
import shell from '../../../../data/words/en/shell.json';
import site from '../../../../data/words/en/site.json';
import english from '../../../../data/words/en/year.json';
import type { Language, Namespace } from '../../../../src/words/index.ts';

const loading = vi.hoisted(() => ({
  /** Files that cannot be had: `de/year`. */
  gone: new Set<string>(),
  /** How often a file was asked for. */
  asked: new Map<string, number>(),
  /** Files whose first answer comes late. */
  late: new Set<string>(),
}));

vi.mock('../../../../src/words/namespaces.ts', async (original) => {
  const real = await original<typeof import('../../../../src/words/namespaces.ts')>();
  return {
    ...real,
    loadWords: async (language: Language, namespace: Namespace) => {
      const file = `${language}/${namespace}`;
      const times = (loading.asked.get(file) ?? 0) + 1;
      loading.asked.set(file, times);
      if (loading.gone.has(file)) throw new Error(`no ${file}`);
      if (loading.late.has(file) && times === 1) {
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
      return real.loadWords(language, namespace);
    },
  };
});

// Nothing reads them again here, so that state is a plain value.
vi.stubGlobal('$state', { raw: (value: unknown) => value });
const { WordsState } = await import('../../../../src/app/state/words.svelte.ts');

beforeEach(() => Object.values(loading).forEach((list) => list.clear()));

describe('the words of the page', () => {
  it('are in the chosen language, in every part that was asked for', async () => {
    const words = new WordsState('en');
    await words.need(['year']);
    expect(words.of('year')('drawing')).toBe(english.drawing);
    await words.show('de');
    await words.need(['site']);
    expect([words.language, words.has('site'), words.has('rooms')]).toEqual(['de', true, false]);
    expect(words.of('year')('drawing')).toBe(german.drawing);
  });

  it('stay as they are where a language cannot be had, and go on loading', async () => {
    const words = new WordsState('en');
    await words.need(['year']);
    loading.gone.add('de/year');
    await expect(words.show('de')).rejects.toThrow('no de/year');
    expect(words.language).toBe('en');
    await words.need(['site']);
    expect(words.of('site')('place.title')).toBe(site.place.title);
    loading.gone.clear();
    await words.show('de');
    expect(words.language).toBe('de');
  });

  it('are all there whichever of two parts comes first', async () => {
    const words = new WordsState('en');
    loading.late.add('en/shell');
    await Promise.all([words.need(['shell']), words.need(['year'])]);
    expect(words.of('year')('drawing')).toBe(english.drawing);
    expect(words.of('shell')('page.computing')).toBe(shell.page.computing);
  });
});
