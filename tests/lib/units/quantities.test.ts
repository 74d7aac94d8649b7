import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fromSI,
  quantities,
  rFromU,
  toSI,
  uFromR,
  type QuantityName,
  type UnitSystem,
} from '../../../lib/units/index.ts';
import { evenly } from './evenly.ts';

const names = Object.keys(quantities) as QuantityName[];
const systems: UnitSystem[] = ['metric', 'imperial'];

describe('factors of NIST SP 811 (2008), appendix B.8 and B.9, as printed', () => {
  // The guide prints seven significant figures, so half a unit of the last one is 5e-7 at most.
  const printed: [QuantityName, number][] = [
    ['length', 0.3048], // foot
    ['area', 0.09290304], // square foot
    ['uValue', 5.678263], // Btu(IT)/(h ft2 F)
    ['resistance', 0.1761102], // F h ft2/Btu(IT)
    ['psi', 1.730735], // Btu(IT) ft/(h ft2 F), the same as Btu(IT)/(h ft F)
    ['irradiance', 3.154591], // Btu(IT)/(ft2 h)
    ['irradiation', (1.135653e4 * 1000) / 3.6e6], // Btu(IT)/ft2 in J/m2
    ['energy', (1.055056e3 * 1000) / 3.6e6], // Btu(IT) in J
    ['power', 0.2930711], // Btu(IT)/h
    ['windSpeed', 0.44704], // mile per hour
    ['airFlow', 4.719474e-4 * 3600], // cubic foot per minute in m3/s
    ['temperatureDifference', 0.5555556], // degree Fahrenheit
  ];
  it.each(printed)('%s: one imperial unit', (quantity, size) => {
    expect(Math.abs(toSI(quantity, 'imperial', 1) / size - 1)).toBeLessThan(5e-7);
  });

  it('temperatures: t/C = (t/F - 32)/1.8', () => {
    expect(toSI('temperature', 'imperial', 32)).toBe(0);
    expect(toSI('temperature', 'imperial', 212)).toBeCloseTo(100, 12);
    expect(toSI('temperature', 'imperial', -40)).toBeCloseTo(-40, 12);
    expect(fromSI('temperature', 'imperial', 25)).toBeCloseTo(77, 12);
  });

  it('km/h is a third wind unit', () => {
    // Printed 2.777778 E-01.
    expect(quantities.windSpeed.also[0].toSI(1)).toBeCloseTo(0.2777778, 7);
  });
});

describe('R and U', () => {
  it('a Ug of 0.6 W/m2K is R 9.46', () => {
    // 1 / (0.6 x 0.1761102) = 9.4638, from the printed factor.
    expect(rFromU(0.6)).toBeCloseTo(9.4638, 3);
  });
  it('undo each other', () => {
    fc.assert(
      fc.property(evenly(0.05, 10), (u) => {
        expect(Math.abs(uFromR(rFromU(u)) / u - 1)).toBeLessThan(1e-14);
      }),
    );
  });
});

describe('pairs undo each other', () => {
  // A product and a quotient by the same factor lose at most two roundings each way; the offset of
  // 32 F costs up to 1e-14 near zero, hence the absolute part.
  it.each(names)('%s', (quantity) => {
    const anyValue = fc.oneof(evenly(-1e5, 1e5), fc.double({ min: -1e5, max: 1e5, noNaN: true }));
    fc.assert(
      fc.property(anyValue, fc.constantFrom(...systems), (value, system) => {
        const back = toSI(quantity, system, fromSI(quantity, system, value));
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-13 + 1e-14 * Math.abs(value));
      }),
    );
  });

  it('extinction is the same in both systems', () => {
    expect(fromSI('extinction', 'imperial', 20)).toBe(20);
  });
});
