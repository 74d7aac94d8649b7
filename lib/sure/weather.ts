import { buildTypicalYear } from '../climate/index.ts';
import type { BuildPlace, MonthlyNormals, TypicalYear } from '../climate/index.ts';
import { HOURS } from '../time/index.ts';
import type { SureCase } from './cases.ts';
import { normalsOfYear } from './fileNormals.ts';

/** Where the years come from: monthly normals, or an hourly file. Plain data. */
export type SureWeather =
  | { kind: 'normals'; normals: MonthlyNormals; place: BuildPlace; seed: number }
  | { kind: 'file'; year: TypicalYear };

/** Seed of the planned year; absent for a file. */
export function plannedSeed(weather: SureWeather): number | undefined {
  return weather.kind === 'normals' ? weather.seed : undefined;
}

/**
 * The year of a case. Of normals it is built with the case's seed; of a file it is the file's own
 * year, or one built from the file's own monthly means where the case has a seed.
 */
export function yearOfCase(weather: SureWeather, { seed, warmer, sunnier }: SureCase): TypicalYear {
  if (weather.kind === 'normals') {
    return buildTypicalYear(weather.normals, weather.place, {
      seed: seed ?? weather.seed,
      warmer,
      sunnier,
    });
  }
  if (seed === undefined) return changedYear(weather.year, warmer, sunnier);
  const { latitude, longitude, elevation, startUtc, source } = weather.year;
  const place = {
    latitude,
    longitude,
    elevation,
    // The built year starts with the file's own first hour.
    standardOffset: 0 - startUtc,
    name: `${source.name}, built from its monthly means`,
  };
  return buildTypicalYear(normalsOfYear(weather.year), place, { seed, warmer, sunnier });
}

/** Least share of the global that must be direct for more sun to be put into the direct part. */
const DIRECT_ENOUGH = 0.2;

/**
 * A year a little warmer or sunnier: the same kelvins on every hour, the same factor on the global
 * of every hour. More or less sun is taken as thinner or thicker cloud, so the diffuse stays and the
 * direct takes the difference; under cloud (under DIRECT_ENOUGH direct) both are scaled.
 */
export function changedYear(year: TypicalYear, warmer: number, sunnier: number): TypicalYear {
  if (warmer === 0 && sunnier === 1) return year;
  const ghi = year.ghi.map((value) => value * sunnier);
  const dni = new Float64Array(HOURS);
  const dhi = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const direct = year.ghi[hour] - year.dhi[hour];
    const clear = direct >= DIRECT_ENOUGH * year.ghi[hour] && direct > 0;
    dni[hour] = year.dni[hour] * (clear ? (ghi[hour] - year.dhi[hour]) / direct : sunnier);
    dhi[hour] = year.dhi[hour] * (clear ? 1 : sunnier);
  }
  return { ...year, ghi, dni, dhi, dryBulb: year.dryBulb.map((t) => t + warmer) };
}
