import { describe, expect, it } from 'vitest';
import {
  interfaceReflectance,
  paneOptics,
  refractedCosine,
  traceStack,
} from '../../../lib/glazing/index.ts';
import sheet from '../../reference/glass-solar-heat-gain-1977.json';
import reference from '../../reference/single-pane-angular.json';

const cosine = (degrees: number) => Math.cos((degrees * Math.PI) / 180);

/** One face and the way through the pane, polarisations averaged: what the reference computes. */
function faceAndPath(cos: number): number {
  const [n, extinction, thickness] = [1.526, 4, 0.002];
  const passed =
    (1 - interfaceReflectance(cos, n, 's') + 1 - interfaceReflectance(cos, n, 'p')) / 2;
  return passed * Math.exp((-extinction * thickness) / refractedCosine(cos, n));
}

describe('one face between air and glass', () => {
  // The reference is printed to 5 digits; the rest of 0.0005 is room for its own rounding.
  it.each(reference.rows)('at $incidence degrees as an independent library', (row) => {
    const relative = faceAndPath(cosine(row.incidence)) / faceAndPath(1);
    expect(Math.abs(relative - row.iamPhysical)).toBeLessThan(0.0005);
  });

  it('Duffie & Beckman (2013), example 5.1.1: 0.0434 at normal, 0.185 and 0.001 at 60', () => {
    // Printed to three decimals.
    expect(interfaceReflectance(1, 1.526, 's')).toBeCloseTo(0.0434, 4);
    expect(interfaceReflectance(1, 1.526, 'p')).toBeCloseTo(0.0434, 4);
    expect(Math.abs(interfaceReflectance(0.5, 1.526, 's') - 0.185)).toBeLessThan(0.0006);
    expect(Math.abs(interfaceReflectance(0.5, 1.526, 'p') - 0.001)).toBeLessThan(0.0006);
  });

  it('reflects nothing polarised in the plane of incidence at Brewster’s angle, tan i = n', () => {
    expect(interfaceReflectance(Math.cos(Math.atan(1.526)), 1.526, 'p')).toBeLessThan(1e-30);
  });
});

describe('one pane', () => {
  it('Duffie & Beckman (2013), example 5.3.1: 2.3 mm, 32 1/m, 60 degrees (from memory)', () => {
    // Transmittance by polarisation 0.624 and 0.912, mean 0.768; printed to three decimals after
    // rounding on the way, hence 0.001.
    const s = paneOptics(0.5, 0.0023, 32, 1.526, 's');
    const p = paneOptics(0.5, 0.0023, 32, 1.526, 'p');
    expect(Math.abs(s.tau - 0.624)).toBeLessThan(0.001);
    expect(Math.abs(p.tau - 0.912)).toBeLessThan(0.001);
    expect(Math.abs((s.tau + p.tau) / 2 - 0.768)).toBeLessThan(0.001);
  });

  const { thickness, extinctionTimesThickness, transmittance, absorptance } = sheet.sheet;
  const pane = {
    thickness,
    extinction: extinctionTimesThickness / thickness,
    refractiveIndex: 1.526,
  };
  const polynomial = (c: number, a: number[]) => a.reduce((sum, x, j) => sum + x * c ** j, 0);

  it.each([0, 20, 40, 50, 60, 70, 75, 80, 85])(
    'double-strength sheet at %i degrees as the handbook’s polynomials',
    (angle) => {
      // The polynomials wave about the exact curve by up to 0.006 (their value at normal incidence,
      // 0.870, is below that at 20 degrees, 0.876, where the exact curve falls).
      const c = cosine(angle);
      const { tau, alpha } = traceStack([pane], c);
      expect(Math.abs(tau - polynomial(c, transmittance))).toBeLessThan(0.006);
      expect(Math.abs(alpha[0]! - polynomial(c, absorptance))).toBeLessThan(0.006);
    },
  );
});
