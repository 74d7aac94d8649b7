import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { languages } from '../../../src/words/index.ts';
import { loadWords } from '../../../src/words/namespaces.ts';
import type { Namespace } from '../../../src/words/namespaces.ts';

type Tree = { [key: string]: string | Tree };

const FOLDER = 'data/words';

/** Sentences of a language file by their places. */
function sentences(language: string, file: string): Map<string, string> {
  const tree = JSON.parse(readFileSync(`${FOLDER}/${language}/${file}.json`, 'utf8')) as Tree;
  const walk = (branch: Tree, path: string): [string, string][] =>
    Object.entries(branch).flatMap(([key, value]): [string, string][] =>
      typeof value === 'string' ? [[path + key, value]] : walk(value, `${path}${key}.`),
    );
  return new Map(walk(tree, ''));
}

const holes = (text: string) =>
  [...new Set([...text.matchAll(/\{\{(\w+)\}\}/g)].map((m) => m[1]!))].sort();

/** Text that need not differ: without words once places to fill in and units are left out. */
const wordless = (text: string) => !/[a-z]{4}/.test(text.replace(/\{\{\w+\}\}/g, ''));

const filesOf = (language: string) =>
  readdirSync(`${FOLDER}/${language}`).map((name) => name.replace('.json', '') as Namespace);
const files = filesOf('en');

describe('the language files', () => {
  it('are the same in every language, and each can be loaded', async () => {
    for (const language of languages) {
      expect(filesOf(language).sort(), language).toEqual([...files].sort());
      for (const file of files) {
        const words = await loadWords(language, file);
        expect(Object.keys(words).length, `${language}/${file}`).toBeGreaterThan(0);
      }
    }
  });

  describe.each(files)('%s', (file) => {
    const english = sentences('en', file);
    const german = sentences('de', file);

    it('has every sentence in both languages, with the same places to fill in', () => {
      expect([...german.keys()].sort()).toEqual([...english.keys()].sort());
      for (const [key, text] of english) {
        expect(text.trim(), key).not.toBe('');
        expect(german.get(key)!.trim(), key).not.toBe('');
        expect(holes(german.get(key)!), key).toEqual(holes(text));
      }
    });

    it('is translated: few sentences are the same in both languages', () => {
      const worded = [...english].filter(([, text]) => !wordless(text));
      const same = worded.filter(([key, text]) => german.get(key) === text);
      // Titles of publications and words both languages share, such as Album or Material.
      expect(same.length, JSON.stringify(same)).toBeLessThanOrEqual(0.12 * worded.length + 1);
    });
  });
});
