import { describe, expect, it } from 'vitest';
import { previewTable, readTypicalYear } from '../../../../lib/climate/index.ts';
import type { TypicalYear } from '../../../../lib/climate/index.ts';
import { InputError } from '../../../../lib/problem/index.ts';
import { brokenWeatherTexts } from './broken.ts';
import { inventedSite, pvgisText, seeded, tableText, tmy3Text } from './synthetic.ts';

const broken = brokenWeatherTexts();

function refusal(text: string): unknown {
  try {
    readTypicalYear(text, { site: inventedSite });
    return undefined;
  } catch (error) {
    return error;
  }
}

function finite(year: TypicalYear): boolean {
  return [year.ghi, year.dni, year.dhi, year.dryBulb, year.wind].every(
    (values) => values.length === 8760 && values.every(Number.isFinite),
  );
}

describe('broken weather texts', () => {
  it('are sixty different ones, the same every time', () => {
    expect(new Set(broken.map((b) => b.name)).size).toBe(60);
    expect(new Set(broken.map((b) => b.text)).size).toBe(60);
    const again = brokenWeatherTexts();
    expect(again.every((b, i) => b.text === broken[i].text)).toBe(true);
  });

  it.each(broken.map((b) => [b.name, b] as const))('%s: one clear problem', (_, b) => {
    const error = refusal(b.text);
    expect(error).toBeInstanceOf(InputError);
    const { problems, message } = error as InputError;
    expect(problems).toHaveLength(1);
    expect(problems[0].fix).toMatch(/\w/);
    expect(message).toMatch(b.expect);
    expect(message.length).toBeLessThan(420);
  });
});

describe('texts hurt at random', () => {
  // No outside reference exists for junk: the property is that nothing but InputError comes out, and
  // that what is read holds no gaps.
  const sources = [tmy3Text(), pvgisText(), tableText()];
  const junk = [
    '',
    ',',
    ';',
    '\n',
    '"',
    '-',
    'x',
    '99999',
    '\t',
    '\r',
    '-9900',
    '.',
    'e9',
    '\u0000',
  ];

  it('give a whole year or an InputError, never another error or NaN', () => {
    const chance = seeded(2026);
    let read = 0;
    let refused = 0;
    for (let trial = 0; trial < 24; trial++) {
      let text = sources[trial % sources.length];
      const gentle = trial % 2 === 0;
      const cuts = 1 + Math.floor(chance() * 3);
      for (let c = 0; c < cuts; c++) {
        const at = Math.floor(chance() * (chance() < 0.3 ? 800 : text.length));
        // A gentle hurt changes one digit where there is one, any other cuts and puts in junk.
        const length = gentle ? Number(/\d/.test(text[at])) : Math.floor(chance() ** 4 * 60);
        const digit = length > 0 ? String(Math.floor(chance() * 10)) : '';
        const put = gentle ? digit : junk[Math.floor(chance() * junk.length)];
        text = text.slice(0, at) + put + text.slice(at + length);
      }
      if (trial % 4 === 0) {
        const { year, checks } = previewTable(text, undefined, inventedSite);
        expect(Boolean(year) || checks.some((check) => check.level === 'error')).toBe(true);
      }
      try {
        expect(finite(readTypicalYear(text, { site: inventedSite }))).toBe(true);
        read++;
      } catch (error) {
        expect(error).toBeInstanceOf(InputError);
        refused++;
      }
    }
    // Both ends are met, so the property was tried on each.
    expect(read).toBeGreaterThan(3);
    expect(refused).toBeGreaterThan(8);
  });
});
