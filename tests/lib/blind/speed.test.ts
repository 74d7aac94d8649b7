import { describe, expect, it } from 'vitest';
import { blindOptics, trackedDiffuseGain } from '../../../lib/blind/index.ts';
import type { DirectionSet } from '../../../lib/opening/index.ts';
import { glass, randomSource, slats } from './samples.ts';

/** Median time of one run over blinds that have never been seen before, ms. */
function medianCold(runs: number, run: (reflectance: number) => void): number {
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    run(0.2 + (0.5 * i) / runs + Math.random() * 1e-6);
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[runs >> 1];
}

const white = (reflectance: number) =>
  slats({ reflectanceUpper: reflectance, reflectanceLower: reflectance });

// Limits are the ones the app is laid out for; an idle machine needs about a tenth of them.
describe('time for a blind not seen before', () => {
  it('tables at one slat angle: under 2 ms', () => {
    const time = medianCold(40, (r) => blindOptics(white(r), { kind: 'tilt', angle: 40 }));
    expect(time).toBeLessThan(2);
  });

  it('tables of slats that track: under 20 ms', () => {
    expect(medianCold(15, (r) => blindOptics(white(r), { kind: 'track' }))).toBeLessThan(20);
  });

  it('tracked diffuse gain of 1,000 directions with tables at hand: under 5 ms', () => {
    const random = randomSource(61);
    const spread = (from: number, to: number) =>
      Float64Array.from({ length: 1000 }, () => from + (to - from) * random());
    const set: DirectionSet = {
      cosIncidence: spread(0, 1),
      profileAngle: spread(0, 90),
      weight: spread(0, 0.001),
    };
    const blind = white(0.71);
    trackedDiffuseGain(blind, glass(0.5, 0.7), set);
    const time = medianCold(15, () => trackedDiffuseGain(blind, glass(0.5, 0.7), set));
    expect(time).toBeLessThan(5);
  });
});
