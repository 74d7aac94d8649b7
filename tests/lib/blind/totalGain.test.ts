import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COS_INTERVALS } from '../../../lib/glazing/index.ts';
import {
  blindOptics,
  diffuseOptics,
  directionalGain,
  slatOptics,
  totalGain,
} from '../../../lib/blind/index.ts';
import type { Blind, BlindPosition, FabricBlind } from '../../../lib/blind/index.ts';
import { fabric, glass, slats } from './samples.ts';

const DOWN = { kind: 'down' } as const;

/** g_tot head-on of a fabric with glass. */
function headOn(blind: Blind, pane: ReturnType<typeof glass>): number {
  return directionalGain(totalGain(blind, blindOptics(blind, DOWN), pane), pane, 1, 0);
}

const at = (position: BlindPosition, given: Partial<FabricBlind> = {}) =>
  fabric({ position, ...given });

describe('ISO 52022-1 by hand: g 0.5, Ug 0.7, blind tau 0.1, rho 0.6, alpha 0.3', () => {
  const pane = glass(0.5, 0.7);

  it('external', () => {
    // G = 1 / (1/0.7 + 1/5 + 1/10) = 0.578512
    // 0.1 x 0.5 + 0.3 x 0.0578512 + 0.1 x 0.5 x 0.1157025 = 0.0731405
    expect(headOn(at('external'), pane)).toBeCloseTo(0.0731405, 6);
  });

  it('external with all of the light scattered by the cloth', () => {
    // The glass then shows its hemispherical g, 0.5 x 14/15 = 0.4666667:
    // 0.1 x 0.4666667 + 0.0173554 + 0.1 x 0.5333333 x 0.1157025 = 0.0701928
    const matt = at('external', { openness: 0, diffuseTransmittance: 0.1 });
    expect(headOn(matt, pane)).toBeCloseTo(0.0701928, 6);
  });

  it('internal', () => {
    // G = 1 / (1/0.7 + 1/30) = 0.684039; 0.5 (1 - 0.5 x 0.6 - 0.3 x 0.0228013) = 0.3465798
    expect(headOn(at('internal'), pane)).toBeCloseTo(0.3465798, 6);
  });

  it('between panes', () => {
    // G = 1 / (1/0.7 + 1/3) = 0.567568; 0.5 x 0.1 + 0.5 (0.3 + 0.5 x 0.6) 0.1891892 = 0.1067568
    expect(headOn(at('between'), pane)).toBeCloseTo(0.1067568, 6);
  });

  it('between panes in a vented cavity lies between closed and external, on the line', () => {
    const closed = headOn(at('between', { ventFactor: 0 }), pane);
    const open = headOn(at('between', { ventFactor: 1 }), pane);
    const half = headOn(at('between', { ventFactor: 0.5 }), pane);
    expect(open).toBeCloseTo(headOn(at('external'), pane), 12);
    expect(half).toBeCloseTo((closed + open) / 2, 12);
    expect(half).toBeGreaterThan(open);
    expect(half).toBeLessThan(closed);
  });
});

describe('total g', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const anyFabric = fc.tuple(share, share, share).map(([a, b, c]) => ({
    openness: a,
    diffuseTransmittance: (1 - a) * b,
    reflectance: (1 - a) * (1 - b) * c,
  }));
  const anyPosition = fc.constantFrom<BlindPosition[]>('external', 'between', 'internal');

  it('never exceeds the bare glass but by the heat of the blind itself', () => {
    fc.assert(
      fc.property(
        anyFabric,
        anyPosition,
        share,
        fc.double({ min: 0.3, max: 0.7, noNaN: true }),
        fc.double({ min: 0.4, max: 1.1, noNaN: true }),
        (given, position, ventFactor, g, Ug) => {
          const blind = fabric({ ...given, position, ventFactor });
          const pane = glass(g, Ug);
          const optics = blindOptics(blind, DOWN);
          const total = totalGain(blind, optics, pane);
          const heat = 1 / (1 / Ug + 1 / 5 + 1 / 10) / 10;
          let least = Infinity;
          let excess = -Infinity;
          // Past 75 degrees of incidence bare g falls below what the gap's warmth alone brings.
          for (let k = 32; k <= COS_INTERVALS; k++) {
            const tot = total.c0[k] + total.c1[k] * pane.g[k] + total.c2[k] * pane.g[k] ** 2;
            const bare = Math.max(pane.g[k], pane.gDiffuse);
            least = Math.min(least, tot);
            excess = Math.max(excess, tot - bare - optics.alpha[k] * heat);
          }
          expect(least).toBeGreaterThanOrEqual(0);
          expect(excess).toBeLessThanOrEqual(1e-12);
        },
      ),
      { numRuns: 200, seed: 41 },
    );
  });

  it('falls from none to internal to between to external for one cloth', () => {
    const pane = glass(0.5, 0.7);
    const [outside, middle, inside] = (['external', 'between', 'internal'] as const).map(
      (position) => headOn(at(position), pane),
    );
    expect(outside).toBeLessThan(middle);
    expect(middle).toBeLessThan(inside);
    expect(inside).toBeLessThan(0.5);
  });

  it('of a blind that lets everything through is that of the glass', () => {
    const nothing = { openness: 1, diffuseTransmittance: 0, reflectance: 0 };
    for (const position of ['external', 'internal', 'between'] as const) {
      expect(headOn(at(position, nothing), glass(0.5, 0.7))).toBeCloseTo(0.5, 12);
    }
  });

  it('of slats takes the direction apart from the incidence', () => {
    const pane = glass(0.5, 0.7);
    const blind = slats({ position: 'internal' });
    const total = totalGain(blind, blindOptics(blind, { kind: 'tilt', angle: 30 }), pane);
    // Same profile angle 40, sun from the side: cos i 0.5 instead of cos 40.
    const k = 0.5 * COS_INTERVALS;
    const { rho, alpha } = slatOptics(blind, 30, 40);
    const share = 1 / (1 / 0.7 + 1 / 30) / 30;
    const expected = pane.g[k] * (1 - pane.g[k] * rho - alpha * share);
    expect(directionalGain(total, pane, 0.5, 40)).toBeCloseTo(expected, 9);
  });

  it('behind matt glass sees evenly spread light whatever the sun does', () => {
    const pane = glass(0.5, 0.7, true);
    const blind = slats({ position: 'internal' });
    const optics = blindOptics(blind, { kind: 'tilt', angle: 30 });
    const total = totalGain(blind, optics, pane);
    const { rho, alpha } = diffuseOptics(optics).all;
    const share = 1 / (1 / 0.7 + 1 / 30) / 30;
    for (const j of [40, 90, 150]) {
      expect(total.c1[j]).toBeCloseTo(1 - alpha * share, 12);
      expect(total.c2[j]).toBeCloseTo(-rho, 12);
    }
    const tracked = totalGain(blind, blindOptics(blind, { kind: 'track' }), pane);
    const flat = diffuseOptics(blindOptics(blind, { kind: 'tilt', angle: 0 })).all;
    expect(tracked.c2[90 + 70]).toBeCloseTo(-flat.rho, 12);
  });
});
