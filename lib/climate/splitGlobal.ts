import { erbs } from '../sky/index.ts';
import { buildSunYear } from '../sun/index.ts';
import { HOURS } from '../time/index.ts';
import type { SplitGlobal } from './read/index.ts';

/** Any year will do: the split needs the sun's altitude to a fraction of a degree. */
const CALENDAR_YEAR = 2026;

/**
 * Splits a year of global irradiance hour by hour with the correlation of Erbs, Klein & Duffie
 * (1982), at the mean altitude of the part of the hour with the sun up.
 */
export const splitByErbs: SplitGlobal = ({ latitude, longitude, startUtc, ghi }) => {
  const sun = buildSunYear({ latitude, longitude }, CALENDAR_YEAR, startUtc);
  const dni = new Float64Array(HOURS);
  const dhi = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const cosZenith = sun.cosZenith[hour];
    const zenith = cosZenith > 0 ? (Math.acos(cosZenith) * 180) / Math.PI : 90;
    const split = erbs(ghi[hour], zenith, 1 + hour / 24, {
      extraterrestrial: sun.extraterrestrial[hour],
    });
    dni[hour] = split.dni;
    dhi[hour] = split.dhi;
  }
  return { dni, dhi };
};
