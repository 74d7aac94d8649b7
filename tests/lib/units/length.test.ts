import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../lib/problem/index.ts';
import { formatFeetInches, parseLength } from '../../../lib/units/index.ts';
import { evenly } from './evenly.ts';

/** What each entry means, worked by hand: 1 ft is 304.8 mm and 1 in 25.4 mm exactly. */
const understood: [string, number][] = [
  [`6' 8 1/2"`, 2.0447],
  [`6' 8 1/2`, 2.0447],
  [`6'-8 1/2"`, 2.0447],
  ['6′ 8½″', 2.0447],
  [`6’ 8''`, 2.032],
  ['6-8', 2.032],
  ['6-8 1/2', 2.0447],
  ['6-8-1/2', 2.0447],
  [`6'8`, 2.032],
  ['6 ft 8 in', 2.032],
  ['6 feet 8 inches', 2.032],
  ['6.5 ft', 1.9812],
  [`7'`, 2.1336],
  ['80 1/2 in', 2.0447],
  ['80-1/2"', 2.0447],
  ['80.5"', 2.0447],
  ['3/4 in', 0.01905],
  ['3/4', 0.01905],
  ['2,04 m', 2.04],
  ['2.04m', 2.04],
  ['1,250 m', 1.25],
  ['.5 m', 0.5],
  ['204 cm', 2.04],
  ['20,4 CM', 0.204],
  ['2040 mm', 2.04],
  ['2040', 2.04],
  ['200', 0.2],
  ['2.04', 2.04],
  ['2,04', 2.04],
  ['1,250', 1.25],
  ['0', 0],
  ['2 metres', 2],
];

describe('parseLength', () => {
  it.each(understood)('%s is %f m', (text, metres) => {
    expect(parseLength(text, 'metric')).toBeCloseTo(metres, 12);
  });

  it('takes a bare number as inches in the imperial system', () => {
    expect(parseLength('80', 'imperial')).toBeCloseTo(2.032, 12);
    expect(parseLength('80 1/2', 'imperial')).toBeCloseTo(2.0447, 12);
    expect(parseLength('2.04 m', 'imperial')).toBe(2.04);
    expect(parseLength('6-8', 'imperial')).toBeCloseTo(2.032, 12);
  });

  const refused = [
    '',
    'two',
    '6 13',
    `6' 13"`,
    '5/4 in',
    '-3 m',
    '2.0.4 m',
    '3 furlong',
    '6-12',
    `"`,
  ];
  it.each([...refused, '20', '99', '2,040 mm', '2.040 mm', '12,500'])(
    'refuses "%s" and shows what is understood',
    (text) => {
      const attempt = () => parseLength(text, 'metric', 'openings[0].width');
      expect(attempt).toThrow(InputError);
      expect(attempt).toThrow(/openings\[0\]\.width: .*Write it like .*204 cm.*6' 8 1\/2"/);
    },
  );

  it('says what is unclear', () => {
    expect(() => parseLength('20')).toThrow(/unit is missing/);
    expect(() => parseLength('2,040 mm')).toThrow(/thousands or decimals/);
    expect(() => parseLength('1,250', 'imperial')).toThrow(/thousands or decimals/);
  });
});

describe('formatFeetInches', () => {
  it.each([
    [2.0447, `6' 8 1/2"`],
    [2.032, `6' 8"`],
    [1.8288, `6' 0"`],
    [0.1905, `7 1/2"`],
    [0.0015875, `1/16"`],
    [0.3047, `1' 0"`], // rounds up to the next foot
    [0, `0"`],
    [-0.0254, `-1"`],
    [-0.0001, `0"`],
  ])('%f m is %s', (metres, text) => {
    expect(formatFeetInches(metres)).toBe(text);
  });

  it('is read back within half a sixteenth of an inch', () => {
    fc.assert(
      fc.property(evenly(0, 100), (metres) => {
        const back = parseLength(formatFeetInches(metres), 'metric');
        expect(Math.abs(back - metres)).toBeLessThan(0.0254 / 32 + 1e-12);
      }),
      { numRuns: 500 },
    );
  });
});
