import { describe, expect, it } from 'vitest';
import { COS_INTERVALS } from '../../../lib/glazing/index.ts';
import type { DirectionSet } from '../../../lib/opening/index.ts';
import {
  blindOptics,
  diffuseGain,
  diffuseOptics,
  slatOptics,
  totalGain,
  trackedDiffuseGain,
  trackingAngle,
} from '../../../lib/blind/index.ts';
import { fabric, glass, randomSource, slats } from './samples.ts';

/** Random directions of an even half hemisphere (above or below the level); weights add to 0.5. */
function halfSphere(sign: 1 | -1, count: number, seed: number): DirectionSet {
  const random = randomSource(seed);
  const set: DirectionSet = {
    cosIncidence: new Float64Array(count),
    profileAngle: new Float64Array(count),
    weight: new Float64Array(count).fill(0.5 / count),
  };
  for (let i = 0; i < count; i++) {
    // Cosine-weighted direction: a point spread evenly over the unit disc, lifted to the sphere.
    const radius = Math.sqrt(random());
    const turn = Math.PI * random();
    const y = sign * radius * Math.sin(turn);
    const z = Math.sqrt(1 - radius * radius);
    set.cosIncidence[i] = z;
    set.profileAngle[i] = (Math.atan2(y, z) * 180) / Math.PI;
  }
  return set;
}

const pane = glass(0.5, 0.7);
const gAt = (c: number) => 0.5 * (1 - (1 - c) ** 4);

describe('diffuseOptics of slats', () => {
  it.each([
    [1, 'sky'],
    [-1, 'ground'],
  ] as const)('is the mean over random directions of the half sphere (%i, %s)', (sign, half) => {
    const set = halfSphere(sign, 4000, 51);
    const blind = slats({ reflectanceLower: 0.4 });
    const mean = { tauDirect: 0, tauDiffuse: 0, rho: 0, alpha: 0 };
    for (const p of set.profileAngle) {
      const split = slatOptics(blind, 30, p);
      for (const part of Object.keys(mean) as (keyof typeof mean)[])
        mean[part] += split[part] / 4000;
    }
    const table = diffuseOptics(blindOptics(blind, { kind: 'tilt', angle: 30 }))[half];
    // Spread of a part between directions is under 0.35: four standard errors of 4,000 are 0.022.
    for (const part of Object.keys(mean) as (keyof typeof mean)[]) {
      expect(Math.abs(table[part] - mean[part])).toBeLessThan(0.022);
    }
    expect(table.tauDirect + table.tauDiffuse + table.rho + table.alpha).toBeCloseTo(1, 12);
  });

  it('refuses slats that track', () => {
    const optics = blindOptics(slats(), { kind: 'track' });
    expect(() => diffuseOptics(optics)).toThrow(/track/);
    expect(() => diffuseGain(totalGain(slats(), optics, pane), pane, halfSphere(1, 4, 1))).toThrow(
      /track/,
    );
  });
});

describe('diffuseGain', () => {
  it.each([1, -1] as const)('adds up each direction by the formula written out (%i)', (sign) => {
    const set = halfSphere(sign, 1500, 52);
    const blind = slats();
    const total = totalGain(blind, blindOptics(blind, { kind: 'tilt', angle: 40 }), pane);
    const G = 1 / (1 / 0.7 + 1 / 5 + 1 / 10);
    let sum = 0;
    for (let i = 0; i < 1500; i++) {
      const s = slatOptics(blind, 40, set.profileAngle[i]);
      const g = gAt(set.cosIncidence[i]);
      const tau = s.tauDirect + s.tauDiffuse;
      const gap = (G / 5) * (tau > 0.5 ? 2 * (1 - tau) : 1);
      const direct = s.tauDirect * (g + (1 - g) * gap);
      const scattered = s.tauDiffuse * (pane.gDiffuse + (1 - pane.gDiffuse) * gap);
      sum += set.weight[i] * (direct + scattered + (s.alpha * G) / 10);
    }
    // Only straight lines between whole degrees and between table cosines differ.
    expect(Math.abs(diffuseGain(total, pane, set) - sum)).toBeLessThan(2e-4);
  });

  it('of a cloth runs over the incidence', () => {
    const set = halfSphere(1, 500, 53);
    const blind = fabric({ position: 'internal', diffuseTransmittance: 0.1 });
    const optics = blindOptics(blind, { kind: 'down' });
    const total = totalGain(blind, optics, pane);
    const share = 1 / (1 / 0.7 + 1 / 30) / 30;
    let sum = 0;
    for (let i = 0; i < 500; i++) {
      const g = gAt(set.cosIncidence[i]);
      const alpha = optics.alpha[Math.round(set.cosIncidence[i] * COS_INTERVALS)];
      sum += set.weight[i] * g * (1 - g * 0.6 - alpha * share);
    }
    expect(Math.abs(diffuseGain(total, pane, set) - sum)).toBeLessThan(2e-4);
  });
});

describe('trackedDiffuseGain', () => {
  it.each(['external', 'internal', 'between'] as const)(
    'has the slats at their tracking angle for each profile angle (%s)',
    (position) => {
      const set = halfSphere(1, 500, 54);
      const blind = slats({ position });
      const tracked = trackedDiffuseGain(blind, pane, set);
      for (let p = -90; p <= 90; p += 3) {
        const angle = trackingAngle(blind, p);
        const still = totalGain(blind, blindOptics(blind, { kind: 'tilt', angle }), pane);
        // Straight lines over 5 degrees of slat angle.
        expect(Math.abs(tracked[p + 90] - diffuseGain(still, pane, set))).toBeLessThan(0.001);
      }
    },
  );

  it('of a cloth is the same at every angle', () => {
    const set = halfSphere(-1, 100, 55);
    const cloth = fabric();
    const tracked = trackedDiffuseGain(cloth, pane, set);
    const still = totalGain(cloth, blindOptics(cloth, { kind: 'down' }), pane);
    expect(new Set(tracked).size).toBe(1);
    expect(tracked[0]).toBe(diffuseGain(still, pane, set));
  });
});
