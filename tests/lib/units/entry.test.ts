import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import german from '../../../data/words/de/entry.json' with { type: 'json' };
import english from '../../../data/words/en/entry.json' with { type: 'json' };
import { InputError } from '../../../lib/problem/index.ts';
import {
  formatQuantity,
  formatR,
  parseQuantity,
  quantities,
  unitOf,
  type QuantityName,
  type UnitSystem,
} from '../../../lib/units/index.ts';
import { evenly } from './evenly.ts';

const names = Object.keys(quantities) as QuantityName[];

describe('parseQuantity', () => {
  // Expected values by the printed factors of NIST SP 811 (2008), to the digits given.
  it.each<[QuantityName, string, UnitSystem, number, number]>([
    ['temperature', '77 F', 'metric', 25, 9],
    ['temperature', '77 °F', 'metric', 25, 9],
    ['temperature', '25', 'metric', 25, 9],
    ['temperature', '77', 'imperial', 25, 9],
    ['temperature', '−4 °F', 'metric', -20, 9],
    ['temperatureDifference', '3.6 F', 'metric', 2, 9],
    ['uValue', '0,6 W/m2K', 'imperial', 0.6, 9],
    ['uValue', '0.6 W/(m²·K)', 'imperial', 0.6, 9],
    ['uValue', '0.1 Btu/h ft2 F', 'metric', 0.5678263, 6],
    ['uValue', '0.1 BTU/(hr·ft²·°F)', 'metric', 0.5678263, 6],
    ['uValue', 'R-10', 'metric', 0.5678263, 6],
    ['uValue', '0,106', 'imperial', 0.6018959, 5],
    ['resistance', 'R 10', 'metric', 1.761102, 5],
    ['irradiance', '216 Btu/h ft²', 'metric', 681.3917, 3],
    ['windSpeed', '36 km/h', 'metric', 10, 9],
    ['windSpeed', '20 mph', 'metric', 8.9408, 9],
    ['airFlow', '100 cfm', 'metric', 169.9011, 3],
    ['energy', '10 kBtu', 'metric', 2.930711, 5],
    ['extinction', '20', 'imperial', 20, 9],
    ['length', '6-8', 'metric', 2.032, 9],
  ])('%s %s (%s) is %f', (quantity, text, system, value, digits) => {
    expect(parseQuantity(quantity, text, system)).toBeCloseTo(value, digits);
  });

  it.each<[QuantityName, string, RegExp]>([
    ['temperature', 'warm', /Write it like 25 C or 77 F/],
    ['temperature', '25 kg', /unit "kg"/],
    ['irradiance', '1,085', /thousands or decimals/],
    ['uValue', 'R 0', /above 0/],
    ['windSpeed', '', /is not understood/],
    ['windSpeed', 'R 5', /is not understood/],
    ['area', '1.2.3 m2', /is not understood/],
  ])('%s "%s" is refused with a reason', (quantity, text, reason) => {
    const attempt = () => parseQuantity(quantity, text, 'metric', 'some.field');
    expect(attempt).toThrow(InputError);
    expect(attempt).toThrow(reason);
    expect(attempt).toThrow(/^some\.field: /);
  });

  it.each([
    ['English', english.like, /^Write it like (.+)\.$/, ' or '],
    ['German', german.like, /^Schreibweise: (.+)\.$/, ' oder '],
  ] as const)('understands its own examples in %s', (_, like, sentence, or) => {
    expect(Object.keys(like).sort()).toEqual([...names].sort());
    for (const name of names) {
      const examples = sentence.exec(like[name])![1].split(or);
      expect(examples.length, name).toBeGreaterThan(1);
      for (const example of examples) {
        expect(parseQuantity(name, example, 'metric'), `${name} ${example}`).toBeGreaterThan(0);
      }
    }
  });

  it('says the same of both ways to write an example', () => {
    for (const name of names) {
      expect(
        german.like[name]
          .match(/[\d,]+/g)!
          .join(' ')
          .replaceAll(',', '.'),
      ).toBe(
        english.like[name]
          .slice(0, -1)
          .match(/[\d.]+/g)!
          .join(' '),
      );
    }
  });
});

describe('formatQuantity', () => {
  it('shows the unit of the system', () => {
    expect(formatQuantity('uValue', 0.6, 'metric')).toBe('0.60 W/m²K');
    expect(formatQuantity('temperature', 25, 'imperial')).toBe('77.0 °F');
    expect(formatQuantity('length', 2.0447, 'imperial')).toBe(`6' 8 1/2"`);
    expect(formatQuantity('length', 2.0447, 'imperial', { digits: 2 })).toBe('6.71 ft');
    expect(formatQuantity('irradiance', 681.39, 'imperial', { symbol: false })).toBe('216');
    expect(formatQuantity('temperature', -0.01, 'metric')).toBe('0.0 °C');
    expect(formatR(0.6)).toBe('R 9.5');
  });

  it('is read back within half of its last digit', () => {
    const anyName = fc.constantFrom(...names.filter((n) => n !== 'length'));
    const anySystem = fc.constantFrom<UnitSystem>('metric', 'imperial');
    const anyValue = evenly(-2000, 2000);
    fc.assert(
      fc.property(anyName, anySystem, anyValue, (name, system, value) => {
        const unit = unitOf(name, system);
        const back = parseQuantity(name, formatQuantity(name, value, system), 'metric');
        const halfDigit = 0.5 * 10 ** -unit.digits * 1.0001;
        expect(Math.abs(unit.fromSI(back) - unit.fromSI(value))).toBeLessThanOrEqual(halfDigit);
      }),
      { numRuns: 500 },
    );
  });
});
