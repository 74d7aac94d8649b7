import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { copyName, freeFileName, newId } from '../../../../src/app/files/names.ts';

describe('names of copies', () => {
  it('counts up from the first copy, also for a copy of a copy', () => {
    expect(copyName('House', 'copy')).toBe('House (copy)');
    expect(copyName('House', 'copy', ['House (copy)'])).toBe('House (copy 2)');
    expect(copyName('House (copy)', 'copy', ['House (copy)', 'House (copy 2)'])).toBe(
      'House (copy 3)',
    );
    expect(copyName('Haus (Kopie)', 'Kopie', ['Haus (Kopie)'])).toBe('Haus (Kopie 2)');
  });

  it('gives a free name of at most 120 characters for any name', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 120 }), (name) => {
        const taken = [name];
        for (let n = 0; n < 12; n++) {
          const copy = copyName(name, 'copy', taken);
          expect(taken).not.toContain(copy);
          expect(copy.length).toBeLessThanOrEqual(120);
          taken.push(copy);
        }
      }),
    );
  });
});

describe('names of weather files', () => {
  it('keeps a free name and its ending', () => {
    expect(freeFileName('site.csv')).toBe('site.csv');
    expect(freeFileName('site.csv', ['site.csv'])).toBe('site (2).csv');
    expect(freeFileName('site', ['site', 'site (2)'])).toBe('site (3)');
    expect(freeFileName('  ')).toBe('weather');
  });

  it('fits the project file and is free, whatever the name', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (name) => {
        const first = freeFileName(name);
        const second = freeFileName(name, [first]);
        expect(second).not.toBe(first);
        for (const given of [first, second]) {
          expect(given.length).toBeLessThanOrEqual(120);
          expect(given).toMatch(/\S/);
        }
      }),
    );
  });
});

it('makes ids that differ', () => {
  const ids = Array.from({ length: 500 }, newId);
  expect(new Set(ids).size).toBe(500);
  expect(ids[0]).toMatch(/^[0-9a-f]{24}$/);
});
