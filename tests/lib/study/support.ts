import { readFileSync } from 'node:fs';
import type { TypicalYear } from '../../../lib/climate/index.ts';
import { verbatim } from '../../../lib/problem/index.ts';
import { parseProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { ineichen } from '../../../lib/sky/index.ts';
import { buildSunYear } from '../../../lib/sun/index.ts';
import { HOURS } from '../../../lib/time/index.ts';
import { stations } from '../../../src/library/climates.ts';
import { blinds, glazings } from '../../../src/library/index.ts';
import { yearOf } from '../../../src/library/year.ts';

export const library = { glazings, blinds, stations };

export type ExampleName = 'studio' | 'bellingham' | 'albuquerque';

export function example(name: ExampleName): Project {
  const file = new URL(`../../../data/examples/${name}.shadewright.json`, import.meta.url);
  return parseProject(readFileSync(file, 'utf8'), library);
}

/** The typical year an example asks for; made once. */
const years = new Map<string, TypicalYear>();
export function exampleYear(name: ExampleName): TypicalYear {
  let year = years.get(name);
  if (!year) years.set(name, (year = yearOf(example(name), stations)));
  return year;
}

/** A year of clear sky, the same every day but for the sun: morning and afternoon are alike. */
export function clearYear(place: {
  latitude: number;
  longitude: number;
  elevation: number;
}): TypicalYear {
  const startUtc = -Math.round(place.longitude / 15);
  const sun = buildSunYear(place, 2026, startUtc);
  const fields = ['ghi', 'dni', 'dhi', 'dryBulb', 'wind'] as const;
  const arrays = Object.fromEntries(fields.map((f) => [f, new Float64Array(HOURS)]));
  const { ghi, dni, dhi, dryBulb, wind } = arrays as Record<(typeof fields)[number], Float64Array>;
  for (let hour = 0; hour < HOURS; hour++) {
    const cosZenith = sun.cosZenith[hour];
    const upShare = (sun.hourStart[hour + 1] - sun.hourStart[hour]) / sun.stepsPerHour;
    if (cosZenith > 0) {
      const zenith = (Math.acos(cosZenith) * 180) / Math.PI;
      const sky = ineichen(zenith, 1 + hour / 24, 3, place.elevation, 1361);
      dni[hour] = sky.dni * upShare;
      dhi[hour] = sky.dhi * upShare;
      ghi[hour] = dhi[hour] + dni[hour] * cosZenith;
    }
    dryBulb[hour] = 15;
    wind[hour] = 2;
  }
  const source = { kind: 'table' as const, name: 'Clear year', note: verbatim('Made for a test.') };
  return { source, ...place, startUtc, ghi, dni, dhi, dryBulb, wind, messages: [] };
}
