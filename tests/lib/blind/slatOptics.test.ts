import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blindOptics,
  diffuseOptics,
  profileOfIndex,
  slatOptics,
} from '../../../lib/blind/index.ts';
import type { SlatBlind } from '../../../lib/blind/index.ts';
import { solveSlats } from '../../../lib/blind/radiosity.ts';
import reference from '../../reference/shading-devices.json';
import { straightShare, traceSlats } from './rays.ts';
import { randomSource, slats } from './samples.ts';

/** Any slat blind with the two sides and the material free. */
const anySlats = fc
  .record({
    ratio: fc.double({ min: 0.6, max: 2, noNaN: true }),
    upper: fc.double({ min: 0, max: 1, noNaN: true }),
    lower: fc.double({ min: 0, max: 1, noNaN: true }),
    through: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ ratio, upper, lower, through }) =>
    slats({
      slatWidth: 0.05 * ratio,
      slatSpacing: 0.05,
      slatTransmittance: 0.5 * through,
      reflectanceUpper: upper * (1 - 0.5 * through),
      reflectanceLower: lower * (1 - 0.5 * through),
      angleMin: -90,
      angleMax: 90,
    }),
  );
const angleTo = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });

describe('light through slats', () => {
  it('is all accounted for, to rounding, for any slats, angle and direction', () => {
    fc.assert(
      fc.property(anySlats, angleTo(90), angleTo(90), (blind, angle, p) => {
        const split = slatOptics(blind, angle, p);
        const parts = Object.values(split) as number[];
        // Absorption is solved by itself, not as the remainder, so this is a real balance.
        expect(Math.abs(parts.reduce((sum, part) => sum + part, 0) - 1)).toBeLessThan(1e-9);
        for (const part of parts) expect(part).toBeGreaterThan(-1e-12);
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it('agrees with ray casting for random slats, angles and directions', () => {
    const random = randomSource(20240621);
    fc.assert(
      fc.property(anySlats, angleTo(75), angleTo(80), (blind, angle, p) => {
        const rays = 20_000;
        const cast = traceSlats(blind, angle, p, rays, random);
        const split = slatOptics(blind, angle, p);
        // Four standard errors of 20,000 rays are at most 0.0142; strips of evenly spread light add
        // up to 0.005.
        for (const part of ['tauDirect', 'tauDiffuse', 'rho', 'alpha'] as const) {
          expect(Math.abs(split[part] - cast[part])).toBeLessThan(0.02);
        }
      }),
      { numRuns: 60, seed: 12 },
    );
  });

  it('passes straight what geometry leaves open', () => {
    fc.assert(
      fc.property(anySlats, angleTo(85), angleTo(85), (blind, angle, p) => {
        // 2,000 rays over a spacing resolve the open height to 1 / 2,000 at each of its two ends.
        expect(
          Math.abs(slatOptics(blind, angle, p).tauDirect - straightShare(blind, angle, p, 2000)),
        ).toBeLessThan(0.0011);
      }),
      { numRuns: 100, seed: 13 },
    );
  });

  it('turned upside down does to light from below what it did to light from above', () => {
    fc.assert(
      fc.property(anySlats, angleTo(85), angleTo(85), (blind, angle, p) => {
        const turned: SlatBlind = {
          ...blind,
          reflectanceUpper: blind.reflectanceLower,
          reflectanceLower: blind.reflectanceUpper,
        };
        const one = slatOptics(blind, angle, p);
        const other = slatOptics(turned, -angle, -p);
        expect(other.tauDiffuse).toBeCloseTo(one.tauDiffuse, 10);
        expect(other.rho).toBeCloseTo(one.rho, 10);
      }),
      { numRuns: 50, seed: 14 },
    );
  });

  it('passes the same share of even light from either face (reciprocity)', () => {
    fc.assert(
      fc.property(anySlats, fc.integer({ min: 1, max: 80 }), (blind, angle) => {
        // Seen from the room the blind is its mirror image: the same slats at minus the angle.
        const from = (a: number) =>
          diffuseOptics(blindOptics(blind, { kind: 'tilt', angle: a })).all;
        const out = from(angle);
        const back = from(-angle);
        // The radiosity strips are reciprocal; straight lines over whole degrees are not quite.
        expect(
          Math.abs(out.tauDirect + out.tauDiffuse - back.tauDirect - back.tauDiffuse),
        ).toBeLessThan(0.001);
      }),
      { numRuns: 40, seed: 15 },
    );
  });
});

describe('limits', () => {
  it('closed opaque slats let next to nothing through', () => {
    const optics = blindOptics(slats({ angleMax: 90 }), { kind: 'tilt', angle: 90 });
    for (let j = 0; j < optics.rho.length; j++) {
      if (Math.abs(profileOfIndex(j)) > 60) continue;
      // The slit left between overlapping slats at 89.9 degrees is 0.002 of a spacing wide.
      expect(optics.tauDirect[j]).toBe(0);
      expect(optics.tauDiffuse[j]).toBeLessThan(0.005);
    }
  });

  it('flat slats let level light through whole', () => {
    const split = slatOptics(slats(), 0, 0);
    expect(split.tauDirect).toBe(1);
    expect(split.rho + split.alpha + split.tauDiffuse).toBe(0);
  });

  it('white slats absorb nothing, black ones scatter nothing', () => {
    for (const angle of [-60, 0, 30, 70]) {
      for (const p of [-50, 0, 20, 65]) {
        const white = slatOptics(slats({ reflectanceUpper: 1, reflectanceLower: 1 }), angle, p);
        expect(white.alpha).toBe(0);
        const black = slatOptics(slats({ reflectanceUpper: 0, reflectanceLower: 0 }), angle, p);
        expect(black.tauDiffuse).toBe(0);
        expect(black.rho).toBe(0);
      }
    }
  });

  it('the strips in use are within 0.005 of eight times as many', () => {
    for (const angle of [0, 20, 45, 70]) {
      const coarse = solveSlats(slats(), angle);
      const fine = solveSlats(slats(), angle, 96);
      // Whole slat side lit, the sum that every even source sees.
      const last = (ends: Float64Array) => ends[ends.length - 1];
      expect(Math.abs(last(coarse.upper.inward) - last(fine.upper.inward))).toBeLessThan(0.005);
      expect(Math.abs(last(coarse.lower.outward) - last(fine.lower.outward))).toBeLessThan(0.005);
    }
  });
});

describe('published figures', () => {
  it('black flat slats as wide as apart see through by crossed strings: root 2 less 1', () => {
    const black = slats({
      slatWidth: 0.05,
      slatSpacing: 0.05,
      reflectanceUpper: 0,
      reflectanceLower: 0,
    });
    const { all } = diffuseOptics(blindOptics(black, { kind: 'tilt', angle: 0 }));
    // Hottel's crossed strings for opposite sides of a square; whole-degree tables add up to 1e-4.
    expect(Math.abs(all.tauDirect - (Math.SQRT2 - 1))).toBeLessThan(2e-4);
    // What is left lands on the two other sides: 2 x (1 - root(1/2)).
    expect(Math.abs(all.alpha - 2 * (1 - Math.SQRT1_2))).toBeLessThan(2e-4);
  });

  it('crossed strings hold at a slant too: rhombus of slats at 30 degrees', () => {
    const black = slats({
      slatWidth: 0.05,
      slatSpacing: 0.05,
      reflectanceUpper: 0,
      reflectanceLower: 0,
    });
    const { all } = diffuseOptics(blindOptics(black, { kind: 'tilt', angle: 30 }));
    // Diagonals of a unit rhombus with angles 60 and 120 are 1 and root 3; sides 1 and 1.
    expect(Math.abs(all.tauDirect - (1 + Math.sqrt(3) - 2) / 2)).toBeLessThan(2e-4);
  });

  it('a flat white cell of grey slats follows the enclosure of two even sides', () => {
    // One strip a side, square cell, light from the level half-space evenly: a textbook two-surface
    // balance. J = rho (F_open + F_slat J) with F_open 1 - 1/root 2 and F_slat root 2 - 1;
    // transmitted = F_through + 2 (1 - 1/root 2) J.
    const rho = 0.5;
    const side = 1 - Math.SQRT1_2;
    const opposite = Math.SQRT2 - 1;
    const radiosity = (rho * side) / (1 - rho * opposite);
    const solved = solveSlats(
      slats({
        slatWidth: 1,
        slatSpacing: 1,
        reflectanceUpper: rho,
        reflectanceLower: rho,
      }),
      0,
      1,
    );
    expect(side * solved.upper.inward[1] * 2).toBeCloseTo(2 * side * radiosity, 12);
  });

  it('lies near the rule for slats at 45 degrees', () => {
    const rule = reference.slatsAt45;
    for (const rho of [0.3, 0.5, 0.7]) {
      for (const p of [30, 45, 60]) {
        const blind = slats({ reflectanceUpper: rho, reflectanceLower: rho });
        const split = slatOptics(blind, 45, p);
        // The rule is one straight line for all slat spacings and sun heights with two-figure
        // coefficients; inter-reflection bends it by about rho squared / 10 either way: 0.04.
        expect(split.tauDirect).toBe(0);
        expect(Math.abs(split.tauDiffuse - rule.tauOfRho * rho)).toBeLessThan(0.04);
        expect(Math.abs(split.rho - rule.rhoOfRho * rho)).toBeLessThan(0.04);
      }
    }
  });
});
