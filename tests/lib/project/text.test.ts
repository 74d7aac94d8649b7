import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { isMonthDay } from '../../../lib/project/fields.ts';
import { editDistance, nearest } from '../../../lib/project/nearest.ts';

describe('days of the year', () => {
  it('are those a leap year has, by an independent calendar', () => {
    for (let month = 0; month < 100; month++) {
      for (let day = 0; day < 100; day++) {
        const text = `${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
        const valid = DateTime.fromFormat(`2024-${text}`, 'yyyy-MM-dd').isValid;
        if (isMonthDay(text) !== valid) expect.fail(text);
      }
    }
    expect(isMonthDay('02-29')).toBe(true);
  });
});

/** The same distance straight from its definition: every way to correct, without a table. */
function byDefinition(a: string, b: string): number {
  if (!a || !b) return a.length + b.length;
  const least = Math.min(
    byDefinition(a.slice(1), b.slice(1)) + (a[0] === b[0] ? 0 : 1),
    byDefinition(a.slice(1), b) + 1,
    byDefinition(a, b.slice(1)) + 1,
  );
  const swapped = a.length > 1 && b.length > 1 && a[0] === b[1] && a[1] === b[0];
  return swapped ? Math.min(least, byDefinition(a.slice(2), b.slice(2)) + 1) : least;
}

describe('the nearest word', () => {
  it('counts corrections as their definition does', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 6 });
    fc.assert(
      fc.property(word, word, (a, b) => editDistance(a, b) === byDefinition(a, b)),
      { numRuns: 150 },
    );
  });

  it('suggests for slips and keeps still for other words', () => {
    expect(nearest('widht', ['height', 'width', 'wall'])).toBe('width');
    expect(nearest('west-wall', ['east-wall', 'north-wall', 'west-walls'])).toBe('west-walls');
    expect(nearest('west', ['east', 'south'])).toBeUndefined();
    expect(nearest('colour', ['width', 'wall'])).toBeUndefined();
    expect(nearest('', ['width'])).toBeUndefined();
  });
});
