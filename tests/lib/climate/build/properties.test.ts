import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildTypicalYear, normalsProblems } from '../../../../lib/climate/build/index.ts';
import type { BuildPlace } from '../../../../lib/climate/build/index.ts';
import type { MonthlyNormals } from '../../../../lib/climate/index.ts';
import { byDay, byMonth, expectSoundHours, mean, months, outsideHours, sum } from './support.ts';

interface Wish {
  latitude: number;
  longitude: number;
  elevation: number;
  /** Monthly clearness, diffuse share, wind; 12 values each. */
  clearness: number[];
  diffuse: number[];
  wind: number[];
  mean: number;
  swing: number;
  range: number[];
  /** Where the mean lies between minimum and maximum. */
  place: number;
  give: { diffuse: boolean; spreads: boolean };
  spread: number;
  clearnessSpread: number;
  seed: number;
}

const twelve = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: 12, maxLength: 12 });

const wishes: fc.Arbitrary<Wish> = fc.record({
  latitude: fc.double({ min: -75, max: 75, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  elevation: fc.double({ min: -100, max: 4500, noNaN: true }),
  clearness: twelve(0.08, 0.78),
  diffuse: twelve(0.2, 0.95),
  wind: twelve(0.3, 12),
  mean: fc.double({ min: -15, max: 30, noNaN: true }),
  swing: fc.double({ min: 0, max: 18, noNaN: true }),
  range: twelve(5, 18),
  place: fc.double({ min: 0.44, max: 0.52, noNaN: true }),
  give: fc.record({ diffuse: fc.boolean(), spreads: fc.boolean() }),
  spread: fc.double({ min: 0.5, max: 5, noNaN: true }),
  clearnessSpread: fc.double({ min: 0, max: 0.35, noNaN: true }),
  seed: fc.nat(),
});

function granted(wish: Wish): { place: BuildPlace; normals: MonthlyNormals } {
  const standardOffset = Math.round(wish.longitude / 15);
  const { latitude, longitude, elevation } = wish;
  const place = { latitude, longitude, elevation, standardOffset, name: 'Anywhere' };
  const outside = byMonth(byDay(outsideHours({ ...place, startUtc: -standardOffset }), sum), mean);
  const south = latitude < 0 ? Math.PI : 0;
  const temperature = months.map(
    (m) => wish.mean - wish.swing * Math.cos((2 * Math.PI * (m - 0.5)) / 12 + south),
  );
  const ghiKWhPerM2Day = outside.map((x, m) => (x / 1000) * wish.clearness[m]);
  const normals: MonthlyNormals = {
    ghiKWhPerM2Day,
    dryBulbMean: temperature,
    dryBulbDailyMin: temperature.map((t, m) => t - wish.place * wish.range[m]),
    dryBulbDailyMax: temperature.map((t, m) => t + (1 - wish.place) * wish.range[m]),
    wind: wish.wind,
  };
  if (wish.give.diffuse) {
    normals.dhiKWhPerM2Day = ghiKWhPerM2Day.map((x, m) => x * wish.diffuse[m]);
  }
  if (wish.give.spreads) {
    normals.dailyMeanTempStd = months.map((m) => Math.min(wish.spread, 0.35 * wish.range[m]));
    normals.dailyClearnessStd = months.map(() => wish.clearnessSpread);
  }
  return { place, normals };
}

describe('built years of any plausible normals', () => {
  it('have sound hours and exact means from 75 south to 75 north', () => {
    fc.assert(
      fc.property(wishes, (wish) => {
        const { place, normals } = granted(wish);
        expect(normalsProblems(normals, place.latitude)).toEqual([]);
        const year = buildTypicalYear(normals, place, { seed: wish.seed });
        expectSoundHours(year);
        const ghi = byMonth(byDay(year.ghi, sum), mean);
        const warmth = byMonth(byDay(year.dryBulb, mean), mean);
        const wind = byMonth(byDay(year.wind, mean), mean);
        const lowest = byMonth(
          byDay(year.dryBulb, (day) => Math.min(...day)),
          mean,
        );
        const highest = byMonth(
          byDay(year.dryBulb, (day) => Math.max(...day)),
          mean,
        );
        for (const m of months) {
          const wanted = normals.ghiKWhPerM2Day[m] * 1000;
          expect(Math.abs(ghi[m] - wanted)).toBeLessThan(0.005 * wanted + 0.01);
          expect(Math.abs(warmth[m] - normals.dryBulbMean[m])).toBeLessThan(0.1);
          expect(wind[m]).toBeCloseTo(wish.wind[m], 6);
          if (!wish.give.spreads) continue;
          expect(Math.abs(lowest[m] - normals.dryBulbDailyMin[m])).toBeLessThan(0.5);
          expect(Math.abs(highest[m] - normals.dryBulbDailyMax[m])).toBeLessThan(0.5);
        }
      }),
      { numRuns: 30, seed: 20 },
    );
  });

  // From the poles to the equator at the very least and most that is taken.
  it.each([90, -90, 75, 67, 66.5, 0, -45])('hold at the limits, latitude %f', (latitude) => {
    const normals: MonthlyNormals = {
      ghiKWhPerM2Day: new Array<number>(12).fill(14),
      dryBulbMean: new Array<number>(12).fill(10),
      dryBulbDailyMin: new Array<number>(12).fill(5),
      dryBulbDailyMax: new Array<number>(12).fill(15),
    };
    const most = normalsProblems(normals, latitude).map((p) =>
      Number(/to ([\d.]+) kWh/.exec(p.allowed!)![1]),
    );
    expect(most).toHaveLength(12);
    const place = { latitude, longitude: 0, elevation: 0, standardOffset: 0, name: 'Limit' };
    for (const share of [0, 0.03, 0.985]) {
      normals.ghiKWhPerM2Day = most.map((x) => x * share);
      const year = buildTypicalYear(normals, place);
      expectSoundHours(year);
      // Up to 0.02 kWh/m2 a day may be asked for in the dark, and is left out.
      const gap = sum(normals.ghiKWhPerM2Day) - sum(byMonth(byDay(year.ghi, sum), mean)) / 1000;
      expect(gap).toBeGreaterThan(-1e-6);
      expect(gap).toBeLessThan(12 * 0.02);
    }
  });

  // Half a year apart the sun is the same at both latitudes, but that it is 7 percent stronger in
  // January; a month's own days of cloud do the rest.
  it('are alike on both hemispheres half a year apart', () => {
    fc.assert(
      fc.property(fc.double({ min: 30, max: 65, noNaN: true }), (latitude) => {
        const build = (at: number) => {
          const wish: Wish = {
            latitude: at,
            longitude: 0,
            elevation: 0,
            clearness: new Array<number>(12).fill(0.5),
            diffuse: new Array<number>(12).fill(0.5),
            wind: new Array<number>(12).fill(3),
            mean: 10,
            swing: 8,
            range: new Array<number>(12).fill(9),
            place: 0.48,
            give: { diffuse: false, spreads: false },
            spread: 3,
            clearnessSpread: 0.15,
            seed: 1,
          };
          const { place, normals } = granted(wish);
          return buildTypicalYear(normals, place);
        };
        const north = byMonth(byDay(build(latitude).dni, sum), mean);
        const south = byMonth(byDay(build(-latitude).dni, sum), mean);
        const share = (m: number) => south[(m + 6) % 12] / north[m];
        for (const m of [0, 5, 6, 11]) {
          expect(share(m)).toBeGreaterThan(0.85);
          expect(share(m)).toBeLessThan(1.18);
        }
      }),
      { numRuns: 4, seed: 3 },
    );
  });
});
