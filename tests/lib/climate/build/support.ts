import { expect } from 'vitest';
import type { BuildPlace } from '../../../../lib/climate/build/index.ts';
import type { MonthlyNormals } from '../../../../lib/climate/index.ts';
import { ineichen, perezCoefficients } from '../../../../lib/sky/index.ts';
import { airMass, buildSunYear } from '../../../../lib/sun/index.ts';
import { DAYS, HOURS, STEPS_PER_HOUR, monthOfDay } from '../../../../lib/time/index.ts';

/** A station of the reference files: its place, its normals and hours over 25 C. */
export interface Station extends MonthlyNormals {
  station: string;
  latitude: number;
  longitude: number;
  elevation: number;
  utcOffset: number;
  hoursAbove25C: number;
}

export const placeOf = (s: Station): BuildPlace => ({
  latitude: s.latitude,
  longitude: s.longitude,
  elevation: s.elevation,
  standardOffset: s.utcOffset,
  name: s.station,
});

/** The station's normals without the direct normal irradiation. */
export function withoutBeam(station: Station): Station {
  return { ...station, dniKWhPerM2Day: undefined };
}

/** The station's global, temperatures and wind alone: what a person can type in. */
export function fewest(station: Station): MonthlyNormals {
  const { ghiKWhPerM2Day, dryBulbMean, dryBulbDailyMin, dryBulbDailyMax, wind } = station;
  return { ghiKWhPerM2Day, dryBulbMean, dryBulbDailyMin, dryBulbDailyMax, wind };
}

export interface Weather {
  latitude: number;
  longitude: number;
  startUtc: number;
  ghi: Float64Array;
  dni: Float64Array;
  dhi: Float64Array;
  dryBulb: Float64Array;
  wind: Float64Array;
}

export const months = Array.from({ length: 12 }, (_, m) => m);

export const monthOfDayIndex = Uint8Array.from({ length: DAYS }, (_, d) => monthOfDay(d) - 1);

export function sum(values: number[] | Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

export const mean = (values: number[] | Float64Array) => sum(values) / values.length;

/** Standard deviation with n - 1. */
export function deviation(values: number[] | Float64Array): number {
  const middle = mean(values);
  return Math.sqrt(sum(Array.from(values, (x) => (x - middle) ** 2)) / (values.length - 1));
}

export function correlation(a: number[], b: number[]): number {
  const [meanA, meanB] = [mean(a), mean(b)];
  const product = sum(a.map((x, i) => (x - meanA) * (b[i] - meanB)));
  return product / ((a.length - 1) * deviation(a) * deviation(b));
}

/** One value a day from the day's hours. */
export function byDay(hours: Float64Array, of: (day: Float64Array) => number): number[] {
  return Array.from({ length: DAYS }, (_, d) => of(hours.subarray(d * 24, d * 24 + 24)));
}

/** Twelve values from the days of each month. */
export function byMonth(days: readonly number[], of: (days: number[]) => number): number[] {
  return months.map((m) => of(days.filter((_, d) => monthOfDayIndex[d] === m)));
}

/** Horizontal irradiance outside the atmosphere, W/m2; HOURS values. */
export function outsideHours(
  weather: Pick<Weather, 'latitude' | 'longitude' | 'startUtc'>,
): Float64Array {
  const sun = buildSunYear(weather, 2026, weather.startUtc);
  return Float64Array.from({ length: HOURS }, (_, h) => {
    const upShare = (sun.hourStart[h + 1] - sun.hourStart[h]) / STEPS_PER_HOUR;
    return sun.extraterrestrial[h] * sun.cosZenith[h] * upShare;
  });
}

/** Daily clearness index. */
export function clearnessDays(weather: Weather): number[] {
  const outside = byDay(outsideHours(weather), sum);
  return byDay(weather.ghi, sum).map((x, d) => x / outside[d]);
}

export const DIRECTIONS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;
export type Direction = (typeof DIRECTIONS)[number];
export type Planes = Record<Direction, number[]>;

/**
 * Monthly irradiation of eight vertical planes, kWh/m2, by the rules of the reference: Perez sky,
 * albedo 0.2, sun at mid-hour, ground reflection alone while it stands under 1 degree.
 */
export function verticalPlanes(weather: Weather): Planes {
  const sun = buildSunYear(weather, 2026, weather.startUtc, { stepsPerHour: 1 });
  const { ghi, dni, dhi } = weather;
  const walls = DIRECTIONS.map((_, i) => [
    Math.sin((i * Math.PI) / 4),
    Math.cos((i * Math.PI) / 4),
  ]);
  const sums = walls.map(() => new Array<number>(12).fill(0));
  const oneDegree = Math.sin(Math.PI / 180);
  const c = { f1: 0, f2: 0 };
  for (let h = 0; h < HOURS; h++) {
    if (ghi[h] <= 0 && dni[h] <= 0) continue;
    const m = monthOfDayIndex[Math.floor(h / 24)];
    for (const wall of sums) wall[m] += (ghi[h] * 0.1) / 1000;
    const k = sun.hourStart[h];
    const up = k < sun.hourStart[h + 1] ? sun.up[k] : 0;
    if (up < oneDegree) continue;
    const zenith = (Math.acos(up) * 180) / Math.PI;
    perezCoefficients(dni[h], dhi[h], sun.extraterrestrial[h], airMass(zenith), zenith, c);
    const low = Math.max(up, Math.cos((85 * Math.PI) / 180));
    for (let i = 0; i < walls.length; i++) {
      const ahead = Math.max(walls[i][0] * sun.east[k] + walls[i][1] * sun.north[k], 0);
      const sky = (1 - c.f1) / 2 + (c.f1 * ahead) / low + c.f2;
      sums[i][m] += (dni[h] * ahead + Math.max(dhi[h] * sky, 0)) / 1000;
    }
  }
  return Object.fromEntries(DIRECTIONS.map((name, i) => [name, sums[i]])) as Planes;
}

/** The worst of each kind over the hours of a year. */
interface HourFaults {
  /** Hours with a value that is no finite number. */
  notFinite: number;
  /** Irradiance while the sun is down, W/m2. */
  atNight: number;
  /** Least of ghi, dni and dhi, W/m2. */
  least: number;
  /** Largest gap between ghi and dni cos z + dhi, W/m2. */
  gap: number;
  /** Most of ghi over the extraterrestrial horizontal, of dni over the extraterrestrial normal. */
  ghiShare: number;
  dniShare: number;
  /** Most dni over that of a clear sky of Linke turbidity 1.6, the driest air the builder knows. */
  clearShare: number;
  litHours: number;
}

function hourFaults(year: Weather & { elevation: number }): HourFaults {
  const sun = buildSunYear(year, 2026, year.startUtc);
  const worst: HourFaults = {
    notFinite: 0,
    atNight: 0,
    least: Infinity,
    gap: 0,
    ghiShare: 0,
    dniShare: 0,
    clearShare: 0,
    litHours: 0,
  };
  for (let h = 0; h < HOURS; h++) {
    const [ghi, dni, dhi] = [year.ghi[h], year.dni[h], year.dhi[h]];
    if (!Number.isFinite(ghi + dni + dhi + year.dryBulb[h] + year.wind[h])) worst.notFinite++;
    worst.least = Math.min(worst.least, ghi, dni, dhi);
    worst.gap = Math.max(worst.gap, Math.abs(ghi - dni * sun.cosZenith[h] - dhi));
    const upShare = (sun.hourStart[h + 1] - sun.hourStart[h]) / STEPS_PER_HOUR;
    if (upShare === 0) {
      worst.atNight = Math.max(worst.atNight, ghi, dni, dhi);
      continue;
    }
    worst.litHours++;
    const normal = sun.extraterrestrial[h];
    const outside = normal * upShare;
    const zenith = (Math.acos(Math.min(sun.cosZenith[h], 1)) * 180) / Math.PI;
    const clear = ineichen(zenith, Math.floor(h / 24) + 1, 1.6, year.elevation, normal).dni;
    worst.ghiShare = Math.max(worst.ghiShare, ghi / (outside * sun.cosZenith[h]));
    worst.dniShare = Math.max(worst.dniShare, dni / outside);
    worst.clearShare = Math.max(worst.clearShare, dni / (clear * upShare));
  }
  return worst;
}

/** What no hour may break; returns the number of hours with sun. */
export function expectSoundHours(year: Weather & { elevation: number }): number {
  const worst = hourFaults(year);
  expect(worst.notFinite).toBe(0);
  expect(worst.atNight).toBe(0);
  expect(worst.least).toBeGreaterThanOrEqual(0);
  expect(worst.gap).toBeLessThan(1e-6); // rounding alone
  expect(worst.ghiShare).toBeLessThanOrEqual(1);
  expect(worst.dniShare).toBeLessThanOrEqual(1);
  expect(worst.clearShare).toBeLessThanOrEqual(1 + 1e-9);
  return worst.litHours;
}
