import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '../../../lib/blind/index.ts';
import { blinds, frames, glazings } from '../../../src/library/index.ts';
import { materials } from '../../../src/library/materials.ts';
import { Words } from '../../../src/words/index.ts';
import en from '../../../data/words/en/library.json';

const english = await Words.load('en', ['library']);
const german = await Words.load('de', ['library']);

const lists = { glazing: glazings, frame: frames, blind: blinds, material: materials } as const;
const namesOf = (list: keyof typeof en): Record<string, string> => en[list];
const parts = Object.keys(lists) as (keyof typeof lists)[];

describe.each(parts)('names of what ships: %s', (part) => {
  const shipped = lists[part];
  const source = `${part}Source` as const;

  it('are those of its data, and no others', () => {
    for (const list of [en[part], en[source]]) {
      expect(Object.keys(list).sort()).toEqual(shipped.map(({ id }) => id).sort());
    }
    for (const item of shipped) {
      expect(namesOf(part)[item.id]).toBe(item.name);
      expect(namesOf(source)[item.id]).toBe(item.source);
      expect(english.named(part, item.id, item.name)).toBe(item.name);
    }
  });

  it('differ in German, citations left as they are', () => {
    for (const { id, name, source: cited } of shipped) {
      expect(german.named(part, id, name), id).not.toBe(name);
      const told = german.named(source, id, cited);
      expect(told, id).not.toMatch(/common practice|from memory/);
      // Standards, authors and years are the same in both.
      const citation =
        /EN (ISO )?\d[\d-]*(:\d{4})?|ISO \d[\d-]*|[A-Z]\w+ & [A-Z]\w+|\b(19|20)\d\d\b/g;
      expect(told.match(citation), id).toEqual(cited.match(citation));
    }
  });
});

it('short names of frames are of those that ship', () => {
  expect(Object.keys(en.frameShort)).toEqual(frames.map(({ id }) => id));
});

it('cautions are those of the engine', () => {
  expect(en.caution).toEqual(CAUTIONS);
});

describe('names of the user', () => {
  it('are told as they were typed', () => {
    expect(german.named('blind', 'own-blind', 'Stoff {{x}} $t(blind)')).toBe(
      'Stoff {{x}} $t(blind)',
    );
    expect(german.named('glazing', 'constructor', 'Glas')).toBe('Glas');
    expect(german.named('glazing', 'own.glazing', 'Glas')).toBe('Glas');
  });

  it('stand in where the names are not loaded', async () => {
    const bare = await Words.load('de', []);
    expect(bare.named('blind', 'external-slats-80-light', 'Slats')).toBe('Slats');
  });
});
