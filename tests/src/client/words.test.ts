import { describe, expect, it } from 'vitest';
import { defaultSources } from '../../../lib/project/index.ts';
import { DEFAULT_PATHS } from '../../../src/client/defaultMarks.ts';
import de from '../../../data/words/de/client.json';
import en from '../../../data/words/en/client.json';
import { Words } from '../../../src/words/index.ts';
import { presetSchedules, describeSchedule } from '../../../lib/schedule/index.ts';
import { scheduleWords } from '../../../src/words/rules.ts';

type Tree = { [key: string]: string | Tree };

function leaves(tree: Tree, path = ''): [string, string][] {
  return Object.entries(tree).flatMap(([key, value]): [string, string][] =>
    typeof value === 'string' ? [[path + key, value]] : leaves(value, `${path}${key}.`),
  );
}

const english = new Map(leaves(en as Tree));
const german = new Map(leaves(de as Tree));
const holes = (text: string) => [...text.matchAll(/\{\{(\w+)\}\}/g)].map((m) => m[1]).sort();

describe('the words of the client page', () => {
  it('are there in both languages, with the same places to fill in', () => {
    expect([...german.keys()].sort()).toEqual([...english.keys()].sort());
    for (const [key, text] of english) {
      expect(holes(german.get(key)!), key).toEqual(holes(text));
      expect(text.trim(), key).not.toBe('');
    }
  });

  it('are translated: few words are the same in both', () => {
    const same = [...english].filter(
      ([key, text]) => german.get(key) === text && /[a-z]{4}/.test(text),
    );
    // Paths, names of publications and international words; all else must differ.
    expect(same.length / english.size).toBeLessThan(0.12);
  });

  it('name each default with the source the program gives', () => {
    for (const [key, path] of Object.entries(DEFAULT_PATHS)) {
      expect(english.get(`defaultSource.${key}`), key).toBe(defaultSources[path]);
    }
  });

  it('tell every ready-made schedule in German without an English word', async () => {
    const words = await Words.load('de', ['client', 'library', 'rules']);
    for (const { schedule } of presetSchedules()) {
      const text = describeSchedule(schedule, 'metric', scheduleWords(words)).join(' ');
      expect(text).not.toMatch(/\b(the|when|from|down|raised|all year|until|at least|moves)\b/i);
      expect(text).toMatch(/unten|oben/);
    }
  });
});
