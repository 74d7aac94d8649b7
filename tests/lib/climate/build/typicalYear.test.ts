import { describe, expect, it } from 'vitest';
import { buildTypicalYear } from '../../../../lib/climate/build/index.ts';
import { HOURS, daysInMonth } from '../../../../lib/time/index.ts';
import five from '../../../reference/climate-normals-five.json' with { type: 'json' };
import facades from '../../../reference/climate-normals-facades.json' with { type: 'json' };
import {
  byDay,
  byMonth,
  deviation,
  expectSoundHours,
  fewest,
  mean,
  months,
  placeOf,
  sum,
} from './support.ts';
import type { Station } from './support.ts';

/** Four files' stations, a grid point in Europe, and the far north and south of the ten. */
const stations = [...five.stations, ...facades.stations.slice(0, 2)] as unknown as Station[];

describe('months of a built year', () => {
  it.each(stations)('$station keeps its normals for five seeds', (station) => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const year = buildTypicalYear(station, placeOf(station), { seed });
      const daily = (hours: Float64Array) => byMonth(byDay(hours, sum), mean).map((x) => x / 1000);
      const off = (ours: number[], theirs: number[]) =>
        Math.max(...months.map((m) => Math.abs(ours[m] - theirs[m])));
      const ofDay = (of: (day: Float64Array) => number) => byMonth(byDay(year.dryBulb, of), mean);
      // Exact by construction, but for rounding: far inside the 0.5 percent and 0.1 K asked for.
      expect(off(daily(year.ghi), station.ghiKWhPerM2Day)).toBeLessThan(1e-5);
      expect(off(ofDay(mean), station.dryBulbMean)).toBeLessThan(1e-6);
      expect(off(byMonth(byDay(year.wind, mean), mean), station.wind!)).toBeLessThan(1e-6);
      // Met by iteration; what is left is a month whose sun is mostly too low for any beam.
      expect(off(daily(year.dhi), station.dhiKWhPerM2Day!)).toBeLessThan(0.01);
      // Found by iteration along with day-to-day change that alone can make up most of the range.
      expect(
        off(
          ofDay((day) => Math.min(...day)),
          station.dryBulbDailyMin,
        ),
      ).toBeLessThan(0.5);
      expect(
        off(
          ofDay((day) => Math.max(...day)),
          station.dryBulbDailyMax,
        ),
      ).toBeLessThan(0.5);
    }
  });

  // 0.2 K where the season's own drift in a month is more than the spread asked for (Anchorage).
  it.each(stations)('$station keeps the spread of daily mean temperature', (station) => {
    const year = buildTypicalYear(station, placeOf(station));
    const spread = byMonth(byDay(year.dryBulb, mean), deviation);
    for (const m of months) {
      expect(Math.abs(spread[m] - station.dailyMeanTempStd![m])).toBeLessThan(0.2);
    }
  });
});

describe('hours of a built year', () => {
  it.each(stations)('$station: closed, bounded and dark at night', (station) => {
    for (const normals of [station, fewest(station)]) {
      const year = buildTypicalYear(normals, placeOf(station), { seed: 7 });
      expect(expectSoundHours(year)).toBeGreaterThan(4300); // more than half of the year
    }
  });

  it('is the same for a seed and another for another', () => {
    const station = stations[0];
    const build = (seed?: number) => buildTypicalYear(station, placeOf(station), { seed });
    for (const name of ['ghi', 'dni', 'dhi', 'dryBulb', 'wind'] as const) {
      const series = (seed?: number) => build(seed)[name].join();
      expect(series(3)).toBe(series(3));
      expect(series(3) === series(4)).toBe(false);
      expect(series()).toBe(series(1));
    }
  });

  it('leaves no step at midnight or at the ends of months', () => {
    const station = stations[0];
    const { dryBulb } = buildTypicalYear(station, placeOf(station));
    const step = (h: number) => dryBulb[(h + 1) % HOURS] - dryBulb[h];
    const all = Array.from({ length: HOURS }, (_, h) => step(h));
    const at = (hours: number[]) => Math.sqrt(mean(hours.map((h) => step(h) ** 2)));
    const midnights = Array.from({ length: 365 }, (_, d) => d * 24 + 23);
    let end = 0;
    const ends = daysInMonth.map((days) => (end += days) * 24 - 1);
    const usual = Math.sqrt(mean(all.map((x) => x * x)));
    // Night hours change less than the mornings; a seam would stand out over the usual hour.
    expect(at(midnights)).toBeLessThan(usual);
    expect(at(ends)).toBeLessThan(1.5 * usual);
  });
});

describe('warmer and sunnier years', () => {
  const station = stations[0];
  const plain = buildTypicalYear(station, placeOf(station));

  it('adds the kelvins to every hour and leaves the sun', () => {
    const warm = buildTypicalYear(station, placeOf(station), { warmer: 2 });
    for (let h = 0; h < HOURS; h += 7) expect(warm.dryBulb[h] - plain.dryBulb[h]).toBeCloseTo(2, 9);
    expect(warm.ghi.join()).toBe(plain.ghi.join());
    expect(warm.messages.map((m) => m.english).join(' ')).toContain('2 K warmer');
  });

  it('raises global by the factor, beam by more, diffuse by less', () => {
    const sunny = buildTypicalYear(station, placeOf(station), { sunnier: 1.05 });
    expect(sum(sunny.ghi) / sum(plain.ghi)).toBeCloseTo(1.05, 4);
    expect(sum(sunny.dni) / sum(plain.dni)).toBeGreaterThan(1.06);
    expect(sum(sunny.dhi) / sum(plain.dhi)).toBeLessThan(1.02);
  });

  it('holds a month to what the sun allows and says so', () => {
    const sunny = buildTypicalYear(station, placeOf(station), { sunnier: 1.5 });
    expect(sunny.messages.map((m) => m.english).join(' ')).toContain(
      'Held to the most the sun allows',
    );
    expect(sum(sunny.ghi) / sum(plain.ghi)).toBeLessThan(1.5);
    expect(sum(sunny.ghi) / sum(plain.ghi)).toBeGreaterThan(1.3);
  });
});
