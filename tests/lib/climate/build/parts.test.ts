import { describe, expect, it } from 'vitest';
import { brlExponent } from '../../../../lib/climate/build/brl.ts';
import {
  autoregressive,
  gaussianFrom,
  normalQuantile,
  randomStream,
  toNormalScores,
} from '../../../../lib/climate/build/random.ts';
import { smoothThroughMeans } from '../../../../lib/climate/build/smooth.ts';
import { meetSum } from '../../../../lib/climate/build/solve.ts';
import { sunHours } from '../../../../lib/climate/build/sunHours.ts';
import { cleanTurbidity } from '../../../../lib/climate/build/turbidity.ts';
import { erbs } from '../../../../lib/sky/index.ts';
import { HOURS, daysInMonth } from '../../../../lib/time/index.ts';
import five from '../../../reference/climate-normals-five.json' with { type: 'json' };
import { plainTmy3, weatherIsHere, weatherNote } from '../../../support/weather.ts';
import { byMonth, clearnessDays, correlation, deviation, mean, outsideHours } from './support.ts';

describe('random numbers', () => {
  it('are even, normal and free of one another', () => {
    const n = 20_000;
    const even = randomStream(1, 0);
    const draws = Array.from({ length: n }, even);
    expect(Math.min(...draws)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...draws)).toBeLessThan(1);
    // Four standard errors of a mean of even numbers, 0.289 / sqrt(n).
    expect(Math.abs(mean(draws) - 0.5)).toBeLessThan((4 * 0.289) / Math.sqrt(n));
    const normal = Array.from({ length: n }, gaussianFrom(randomStream(1, 0)));
    expect(Math.abs(mean(normal))).toBeLessThan(4 / Math.sqrt(n));
    expect(Math.abs(deviation(normal) - 1)).toBeLessThan(4 / Math.sqrt(2 * n));
    const inside = normal.filter((z) => Math.abs(z) < 1.96).length / n;
    expect(Math.abs(inside - 0.95)).toBeLessThan(0.007);
    for (const [seed, stream] of [
      [2, 0],
      [1, 1],
      [4294967295, 0],
    ]) {
      const other = Array.from({ length: n }, randomStream(seed, stream));
      expect(Math.abs(correlation(draws, other))).toBeLessThan(4 / Math.sqrt(n));
    }
  });

  // Tables of the standard normal distribution; the formula's own bound is 4.5e-4.
  it.each([
    [0.5, 0],
    [0.841345, 1],
    [0.95, 1.644854],
    [0.975, 1.959964],
    [0.999, 3.090232],
    [0.025, -1.959964],
  ])('have the quantile of %f', (p, z) => {
    expect(Math.abs(normalQuantile(p) - z)).toBeLessThan(5e-4);
  });

  it('follow one another by the correlation asked for', () => {
    const series = Array.from(autoregressive(20_000, 0.7, gaussianFrom(randomStream(5, 0))));
    expect(correlation(series.slice(1), series.slice(0, -1))).toBeCloseTo(0.7, 1);
    expect(deviation(series)).toBeCloseTo(1, 1);
  });

  it('turn into scores that keep their order', () => {
    const values = Float64Array.from([9, 3, -2, 7, 100, 5]);
    toNormalScores(values, 1, 6);
    expect(values[0]).toBe(9);
    const [a, b, c, d, e] = values.slice(1);
    expect([b < a, a < e, e < c, c < d]).toEqual([true, true, true, true]);
    expect(a + b + c + d + e).toBeCloseTo(0, 6);
  });
});

describe('solving for a sum', () => {
  it('finds a root that Newton steps alone would miss', () => {
    const at = (x: number, out: { sum: number; slope: number }) => {
      out.sum = Math.atan(x);
      out.slope = 1 / (1 + x * x);
    };
    expect(meetSum(1, -30, -50, 50, at)).toBeCloseTo(Math.tan(1), 6);
  });
});

describe('a smooth curve through means', () => {
  const monthly = [2, 3, 7, 12, 17, 21, 24, 23, 18, 12, 7, 3];
  const curve = smoothThroughMeans(monthly, daysInMonth);

  it('keeps every mean', () => {
    let day = 0;
    daysInMonth.forEach((days, m) => {
      expect(mean(curve.subarray(day, day + days))).toBeCloseTo(monthly[m], 9);
      day += days;
    });
  });

  // Between the steepest months, 5 K apart, a straight line would climb 0.17 K a day; a curve that
  // keeps the means must bend, up to three times as steep. The means' own steps are 5 K.
  it('has no step', () => {
    const steps = Array.from(curve, (t, d) => Math.abs(curve[(d + 1) % 365] - t));
    expect(Math.max(...steps)).toBeLessThan(0.55);
  });
});

describe('turbidity of clean air', () => {
  // Common practice: 2 for very clean cold air, 3 for clean warm air, 4 for moist warm air with haze.
  it('grows from about 2 in cold air to about 3 in warm', () => {
    expect(cleanTurbidity(-15, 0)).toBeGreaterThan(1.6);
    expect(cleanTurbidity(-15, 0)).toBeLessThan(2.4);
    expect(cleanTurbidity(20, 0)).toBeGreaterThan(2.7);
    expect(cleanTurbidity(20, 0)).toBeLessThan(3.4);
  });
});

const FILES = [
  'denver-intl-tmy3.csv',
  'greensboro-tmy3.csv',
  'minneapolis-tmy3.csv',
  'seattle-tacoma-tmy3.csv',
];

describe.skipIf(!weatherIsHere)(`models against hourly files${weatherNote}`, () => {
  // The brightest day of a month lies near the clear sky. 12 percent: some winter months at Seattle
  // had no clear day.
  it.each(FILES)('%s: clear days reach the ceiling and seldom pass it', (file) => {
    const weather = plainTmy3(file);
    const station = five.stations[FILES.indexOf(file)];
    const place = { ...weather, elevation: station.elevation };
    const sun = sunHours(place, weather.startUtc, station.dryBulbDailyMin);
    const best = byMonth(clearnessDays(weather), (days) => Math.max(...days));
    const ceiling = byMonth(
      Array.from(sun.clearDay, (x, d) => x / sun.outsideDay[d]),
      mean,
    );
    best.forEach((value, m) => {
      expect(value / ceiling[m]).toBeGreaterThan(0.88);
      expect(value / ceiling[m]).toBeLessThan(1.08);
    });
  });

  // The model's coefficients are from memory: a wrong one would lose to the plain correlation.
  it.each(FILES)('%s: the split by five predictors is nearer than by one', (file) => {
    const weather = plainTmy3(file);
    const outside = outsideHours(weather);
    const days = clearnessDays(weather);
    const clearness = (h: number) => Math.min(weather.ghi[h] / outside[h], 1);
    let five = 0;
    let one = 0;
    for (let h = 1; h < HOURS - 1; h++) {
      if (Math.min(outside[h - 1], outside[h], outside[h + 1]) < 100) continue;
      const altitude = (Math.asin(Math.min(outside[h] / 1361, 1)) * 180) / Math.PI;
      const exponent = brlExponent({
        clearness: clearness(h),
        solarTime: (h + 0.5) % 24,
        altitude,
        dailyClearness: days[Math.floor(h / 24)],
        persistence: (clearness(h - 1) + clearness(h + 1)) / 2,
      });
      const plain = erbs(weather.ghi[h], 90 - altitude, Math.floor(h / 24) + 1);
      five += (weather.ghi[h] / (1 + Math.exp(exponent)) - weather.dhi[h]) ** 2;
      one += (plain.dhi - weather.dhi[h]) ** 2;
    }
    expect(five).toBeLessThan(0.9 * one);
  });
});
