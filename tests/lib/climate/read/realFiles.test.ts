import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findTimeShift, previewTable, readTypicalYear } from '../../../../lib/climate/index.ts';
import type { TypicalYear } from '../../../../lib/climate/index.ts';
import { daysInMonth } from '../../../../lib/time/index.ts';
import reference from '../../../reference/normals-of-weather-files.json';

type Normals = (typeof reference.places)['denver-intl-tmy3'];
const places = Object.entries(reference.places) as unknown as [string, Normals][];
const folder = new URL('../../../../../shared/weather/', import.meta.url);
const path = (name: string) => new URL(`${name}.csv`, folder);
const absent = !places.every(([name]) => existsSync(path(name)));
const title = absent ? ' (skipped: ../shared/weather is absent)' : '';
const text = (name: string) => readFileSync(path(name), 'utf8');

const read = new Map<string, TypicalYear>();
/** Each file is read once. */
function yearOf(name: string): TypicalYear {
  const year = read.get(name) ?? readTypicalYear(text(name));
  read.set(name, year);
  return year;
}

/** Monthly figures of hourly values: `pick` of each day, meaned over the month. */
function monthly(values: Float64Array, pick: (day: Float64Array) => number): number[] {
  let day = 0;
  return daysInMonth.map((days) => {
    let sum = 0;
    for (let d = 0; d < days; d++, day++) sum += pick(values.subarray(day * 24, day * 24 + 24));
    return sum / days;
  });
}

const total = (day: Float64Array) => day.reduce((a, b) => a + b, 0);

function most(a: number[], b: number[]): number {
  return Math.max(...a.map((v, i) => Math.abs(v - b[i])));
}

describe.skipIf(absent)(`published weather files${title}`, () => {
  it.each(places)('%s agrees with its monthly figures', (name, normals) => {
    const year = yearOf(name);
    // The figures are rounded to 0.001 kWh/m2 and, by way of 0.001, to 0.01 C or m/s: half a unit
    // each time. Those of the grid point are of days
    // in UTC: the hour that each month gains and loses here is dark, and moves the mean of a month
    // by a few K in 700 hours, the mean of the daily extremes by more.
    const utc = name.includes('pvgis');
    const kWh = (values: Float64Array) => monthly(values, (day) => total(day) / 1000);
    expect(most(kWh(year.ghi), normals.ghiKWhPerM2Day)).toBeLessThan(0.00051);
    expect(most(kWh(year.dni), normals.dniKWhPerM2Day)).toBeLessThan(0.00051);
    expect(most(kWh(year.dhi), normals.dhiKWhPerM2Day)).toBeLessThan(0.00051);
    const mean = (day: Float64Array) => total(day) / 24;
    const slack = utc ? 0.02 : 0.0056;
    expect(most(monthly(year.dryBulb, mean), normals.dryBulbMean)).toBeLessThan(slack);
    expect(most(monthly(year.wind, mean), normals.wind)).toBeLessThan(slack);
    const least = monthly(year.dryBulb, (day) => Math.min(...day));
    expect(most(least, normals.dryBulbDailyMin)).toBeLessThan(utc ? 0.2 : 0.0056);
    const warm = year.dryBulb.filter((t) => t > 25).length;
    expect(Math.abs(warm - normals.hoursAbove25C)).toBeLessThan(1);
  });

  it.each(places)('%s has its place, its zone and nothing to tell', (name, normals) => {
    const year = yearOf(name);
    const { latitude, longitude, elevation, utcOffset } = normals;
    expect(year).toMatchObject({ latitude, longitude, elevation });
    // Time offset 0.1761 h of the grid point's file; a turn of one hour to its own midnight.
    expect(year.startUtc).toBeCloseTo(name.includes('pvgis') ? -1.3239 : -utcOffset, 9);
    expect(year.messages).toHaveLength(name.includes('pvgis') ? 1 : 0);
  });

  it.each(places)(
    '%s: the sun is where its stamps say, and shifts of an hour are found',
    (name) => {
      const year = yearOf(name);
      // Time and place of these files are published; 3 minutes leave room for haze and hills that
      // favour a morning or an afternoon, and are a tenth of the least fault looked for (half an hour).
      for (const hours of [0, 1, -1]) {
        const shift = findTimeShift({ ...year, startUtc: year.startUtc + hours });
        expect(Math.abs(shift.minutes - 60 * hours)).toBeLessThan(3);
        expect(shift.confidence).toBeGreaterThan(0.8);
      }
    },
  );

  it('a station file read as a plain table gives the same year', () => {
    const whole = text('denver-intl-tmy3');
    const asTable = whole.slice(whole.indexOf('\n') + 1).replace('GHI (W', 'Global (W');
    const site = { latitude: 39.833, longitude: -104.65, elevation: 1650 };
    const { year, layout } = previewTable(asTable, undefined, site);
    expect(layout).toMatchObject({ stamp: 'end', time: { kind: 'date-time', order: 'mdy' } });
    const expected = yearOf('denver-intl-tmy3');
    for (const quantity of ['ghi', 'dni', 'dhi', 'dryBulb', 'wind'] as const) {
      expect(year?.[quantity]).toEqual(expected[quantity]);
    }
    expect(year?.startUtc).toBe(7);
  });
});
