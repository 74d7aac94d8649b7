import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blindOptics,
  cutOffAngle,
  profileOfIndex,
  STANDING_ANGLE,
  TRACK_MARGIN,
  trackingAngle,
  viewThrough,
} from '../../../lib/blind/index.ts';
import { straightShare } from './rays.ts';
import { fabric, slats } from './samples.ts';

/** Slats that can close: at least as wide as their spacing. */
const closing = fc
  .double({ min: 1.02, max: 1.8, noNaN: true })
  .map((ratio) => slats({ slatWidth: 0.05 * ratio, slatSpacing: 0.05, angleMax: 90 }));
const high = fc.double({ min: 1, max: 85, noNaN: true });

describe('cutOffAngle', () => {
  it('is the flattest angle at which no ray gets through', () => {
    fc.assert(
      fc.property(closing, high, (blind, p) => {
        const cut = cutOffAngle(blind, p);
        expect(straightShare(blind, cut + 0.01, p, 400)).toBe(0);
        // One degree flatter must leak, unless the slats lie flat already; 20,000 rays find a slit
        // of 1/20,000 of the spacing, thinner than one degree opens at any of these angles.
        if (cut > 1) expect(straightShare(blind, cut - 1, p, 20_000)).toBeGreaterThan(0);
      }),
      { numRuns: 80, seed: 21 },
    );
  });

  it('agrees with the textbook case of slats as wide as apart: 90 - 2 p', () => {
    const square = slats({ slatWidth: 0.05, slatSpacing: 0.05, angleMax: 90 });
    // sin(a + p) = cos p = sin(90 - p).
    for (const p of [5, 20, 40]) expect(cutOffAngle(square, p)).toBeCloseTo(90 - 2 * p, 9);
    expect(cutOffAngle(square, 45)).toBeCloseTo(0, 9);
    expect(cutOffAngle(square, 70)).toBe(0);
  });

  it('stays within the drive and lies flat for the sun level or below', () => {
    expect(cutOffAngle(slats({ angleMax: 30 }), 5)).toBe(30);
    expect(cutOffAngle(slats({ angleMin: 20 }), 80)).toBe(20);
    expect(cutOffAngle(slats({ angleMin: 20 }), -10)).toBe(20);
    expect(cutOffAngle(slats({ angleMin: -60 }), 80)).toBe(0);
    expect(cutOffAngle(slats(), 0)).toBe(0);
    // Slats too narrow to close: the angle square to the sun lets least through.
    const narrow = slats({ slatWidth: 0.04, slatSpacing: 0.08, angleMax: 90 });
    expect(cutOffAngle(narrow, 30)).toBeCloseTo(60, 9);
  });
});

describe('trackingAngle', () => {
  it('closes a margin past the cut-off in whole degrees, inside the drive', () => {
    fc.assert(
      fc.property(closing, high, (blind, p) => {
        const angle = trackingAngle(blind, p);
        const cut = cutOffAngle(blind, p);
        expect(Number.isInteger(angle)).toBe(true);
        expect(angle).toBeGreaterThanOrEqual(blind.angleMin);
        expect(angle).toBeLessThanOrEqual(blind.angleMax);
        if (cut > 0 && angle < blind.angleMax) {
          expect(angle).toBeGreaterThanOrEqual(cut + TRACK_MARGIN - 1e-6);
          expect(angle).toBeLessThan(cut + TRACK_MARGIN + 1);
        }
        expect(straightShare(blind, trackingAngle(blind, p, 0) + 1e-6, p, 400)).toBe(0);
      }),
      { numRuns: 80, seed: 22 },
    );
  });
});

describe('slats that track', () => {
  it('stop direct light at every profile angle above the level', () => {
    const optics = blindOptics(slats({ angleMax: 90 }), { kind: 'track' });
    for (let j = 0; j < optics.rho.length; j++) {
      const p = profileOfIndex(j);
      expect(optics.slatAngle[j]).toBe(trackingAngle(slats({ angleMax: 90 }), p));
      if (p > 0) expect(optics.tauDirect[j]).toBe(0);
      const sum = optics.tauDirect[j] + optics.tauDiffuse[j] + optics.rho[j] + optics.alpha[j];
      expect(Math.abs(sum - 1)).toBeLessThan(1e-9);
    }
  });

  it('of two drives with other ends have tables of their own', () => {
    const free = blindOptics(slats({ angleMax: 80 }), { kind: 'track' });
    const held = blindOptics(slats({ angleMax: 30 }), { kind: 'track' });
    expect(free.slatAngle[100]).toBeGreaterThan(30);
    expect(held.slatAngle[100]).toBe(30);
    expect(held.tauDirect[100]).toBeGreaterThan(0);
  });
});

describe('settings', () => {
  it('tilt to whole degrees within the drive, stand at 45 when only lowered', () => {
    const angleOf = (angle: number) => blindOptics(slats(), { kind: 'tilt', angle }).slatAngle[0];
    expect(angleOf(37.4)).toBe(37);
    expect(angleOf(120)).toBe(80);
    expect(angleOf(-20)).toBe(0);
    expect(blindOptics(slats(), { kind: 'down' }).slatAngle[0]).toBe(STANDING_ANGLE);
    expect(() => angleOf(NaN)).toThrow(/angle/);
  });
});

describe('viewThrough', () => {
  it('is the open share of a level view', () => {
    const at = (angle: number) => {
      const blind = slats();
      return viewThrough(blind, blindOptics(blind, { kind: 'tilt', angle }))[90];
    };
    expect(at(0)).toBe(1);
    // A slat at 30 degrees hides half its width of the spacing: 1 - 40 / 72.
    expect(at(30)).toBeCloseTo(1 - 40 / 72, 12);
    expect(at(70)).toBe(0);
    const cloth = fabric({ openness: 0.04 });
    expect(viewThrough(cloth, blindOptics(cloth, { kind: 'down' }))[0]).toBe(0.04);
  });

  it('follows the slats where they track: open under a high sun, all but shut under a low one', () => {
    const blind = slats();
    const view = viewThrough(blind, blindOptics(blind, { kind: 'track' }));
    expect(view[90 + 60]).toBe(1);
    const low = (trackingAngle(blind, 5) * Math.PI) / 180;
    expect(view[90 + 5]).toBeCloseTo(1 - (80 / 72) * Math.sin(low), 12);
    expect(view[90 + 5]).toBeLessThan(0.01);
  });
});
