import { describe, expect, it } from 'vitest';
import {
  hottestAbsorptance,
  thermalStressCaution,
  type Glazing,
} from '../../../lib/glazing/index.ts';
import { clearGlazing, coatedGlazing } from './samples.ts';

/** Grey glass of 10 mm, extinction 90 1/m: exp(-0.9) passes, so more than half is absorbed. */
const grey: Glazing = {
  ...clearGlazing(1),
  angular: {
    kind: 'clear',
    panes: [{ thickness: 0.01, extinction: 90, refractiveIndex: 1.526 }],
  },
  g: 0.52,
  solarTransmittance: 0.37,
};
const solarControl = { ...coatedGlazing(3), g: 0.25, solarTransmittance: 0.21 };

describe('hottestAbsorptance', () => {
  it('of a grey pane: what is not reflected at the faces is absorbed on the way', () => {
    // By hand: r = 0.0434, a = exp(-0.9) = 0.4066; (1 - r)(1 - a) / (1 - r a) = 0.5779.
    expect(hottestAbsorptance(grey)).toBeCloseTo(0.5779, 3);
  });
  it('of clear float of 4 mm is small', () => {
    expect(hottestAbsorptance(clearGlazing(2))).toBeLessThan(0.12);
  });
});

describe('thermalStressCaution', () => {
  it('flags absorbing glass in part shade or with a blind close to it, and defers', () => {
    for (const glazing of [grey, solarControl]) {
      for (const situation of [{ shadedEdge: true }, { blindClose: true }]) {
        expect(thermalStressCaution(glazing, situation)).toMatch(
          /glass supplier.*thermal safety check/,
        );
      }
      expect(thermalStressCaution(glazing, {})).toBeUndefined();
    }
  });
  it('leaves common clear and low-e units alone', () => {
    for (const glazing of [clearGlazing(1), clearGlazing(3), coatedGlazing(3)]) {
      expect(thermalStressCaution(glazing, { shadedEdge: true, blindClose: true })).toBeUndefined();
    }
  });
  it('flags any glass that absorbs more than 400 W/m2', () => {
    expect(thermalStressCaution(coatedGlazing(3), { absorbedW: 430 })).toMatch(/430 W\/m²/);
    expect(thermalStressCaution(coatedGlazing(3), { absorbedW: 399 })).toBeUndefined();
  });
});
