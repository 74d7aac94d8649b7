import type { MonthlyNormals } from '../types.ts';
import { MOST_MONTHLY_CLEARNESS } from './normals.ts';
import { monthlyDiffuseShare, usualClearnessSpread } from './defaults.ts';

/** Sun that may go without a word where there is none to carry it, Wh/m2 a day. */
const TWILIGHT = 20;

/** Monthly sun to be met, Wh/m2 a day; 12 values each. */
export interface SunTargets {
  ghi: number[];
  dhi?: number[];
  dni?: number[];
  /** Standard deviation of the daily clearness index. */
  spread: number[];
  /** Months, 0 to 11, whose global is held to what the sun allows. */
  held: number[];
}

/**
 * The sun a year must have. With a factor on the clearness, diffuse follows by the monthly
 * correlation of Erbs et al. (1982) and direct normal by the horizontal beam.
 * @param outside monthly mean of daily extraterrestrial irradiation, Wh/m2; 12 values
 */
export function sunTargets(
  normals: MonthlyNormals,
  outside: ArrayLike<number>,
  sunnier: number,
): SunTargets {
  const given = normals.ghiKWhPerM2Day.map((x) => x * 1000);
  const ghi = given.map((x, m) => Math.min(x * sunnier, MOST_MONTHLY_CLEARNESS * outside[m]));
  const held = ghi.flatMap((x, m) => (given[m] * sunnier > 1.005 * x + TWILIGHT ? [m] : []));
  const clearness = (x: number, m: number) => (outside[m] > 0 ? x / outside[m] : 0);
  const dhi = normals.dhiKWhPerM2Day?.map((x, m) => {
    if (sunnier === 1) return Math.min(x * 1000, ghi[m]);
    const before = monthlyDiffuseShare(clearness(given[m], m));
    const after = monthlyDiffuseShare(clearness(ghi[m], m));
    return given[m] > 0 ? Math.min(((x * 1000 * after) / before) * (ghi[m] / given[m]), ghi[m]) : 0;
  });
  const dni =
    dhi &&
    normals.dniKWhPerM2Day?.map((x, m) => {
      const beam = given[m] - normals.dhiKWhPerM2Day![m] * 1000;
      return beam > 0 ? (x * 1000 * (ghi[m] - dhi[m])) / beam : 0;
    });
  const spread = ghi.map(
    (x, m) => normals.dailyClearnessStd?.[m] ?? usualClearnessSpread(clearness(x, m)),
  );
  return { ghi, dhi, dni, spread, held };
}
