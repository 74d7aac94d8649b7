import { extraterrestrialNormal } from '../sun/index.ts';

export interface SplitOptions {
  /** Normal irradiance outside the atmosphere, W/m2; Spencer (1971) by day where absent. */
  extraterrestrial?: number;
  /** Least cosine of the zenith used in the clearness index, so that it stays finite at sunrise. */
  minCosZenith?: number;
  /** Beyond this zenith, degrees, all light is taken as diffuse. */
  maxZenith?: number;
}

export interface Split {
  /** Clearness index, global over extraterrestrial horizontal. */
  clearness: number;
  /** Diffuse horizontal, W/m2. */
  dhi: number;
  /** Direct normal, W/m2. */
  dni: number;
}

/**
 * Splits global horizontal irradiance by the hourly correlation of Erbs, Klein & Duffie (1982),
 * "Estimation of the diffuse radiation fraction for hourly, daily and monthly-average global
 * radiation", Solar Energy 28(4), eq. 1.
 * @param ghi W/m2 @param zenith degrees @param dayOfYear 1 to 366
 */
export function erbs(
  ghi: number,
  zenith: number,
  dayOfYear: number,
  options?: SplitOptions,
): Split {
  return split(ghi, zenith, dayOfYear, erbsFraction, options);
}

/**
 * Splits global horizontal irradiance by the logistic function of Boland, Ridley & Brown (2008),
 * "Models of diffuse solar radiation", Renewable Energy 33(4), with a 8.645 and b 0.613 for hourly
 * values.
 * @param ghi W/m2 @param zenith degrees @param dayOfYear 1 to 366
 */
export function boland(
  ghi: number,
  zenith: number,
  dayOfYear: number,
  options?: SplitOptions,
): Split {
  return split(ghi, zenith, dayOfYear, (kt) => 1 / (1 + Math.exp(8.645 * (kt - 0.613))), options);
}

function erbsFraction(kt: number): number {
  if (kt <= 0.22) return 1 - 0.09 * kt;
  if (kt > 0.8) return 0.165;
  return 0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)));
}

function split(
  ghi: number,
  zenith: number,
  dayOfYear: number,
  fraction: (kt: number) => number,
  options: SplitOptions = {},
): Split {
  const extraterrestrial = options.extraterrestrial ?? extraterrestrialNormal(dayOfYear);
  const cosZenith = Math.cos((zenith * Math.PI) / 180);
  const least = options.minCosZenith ?? 0.065;
  const clearness = Math.max(0, ghi) / (extraterrestrial * Math.max(cosZenith, least));
  const diffuse = ghi * fraction(Math.min(clearness, 2));
  const direct = (ghi - diffuse) / cosZenith;
  const none = zenith > (options.maxZenith ?? 87) || ghi < 0 || direct < 0;
  return none
    ? { clearness, dhi: Math.max(ghi, 0), dni: 0 }
    : { clearness, dhi: diffuse, dni: direct };
}
