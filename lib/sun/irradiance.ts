/** Total solar irradiance at one astronomical unit, W/m2 (Kopp & Lean 2011). */
export const SOLAR_CONSTANT = 1361;

/**
 * Normal irradiance outside the atmosphere, W/m2, by the Fourier series of Spencer (1971), "Fourier
 * series representation of the position of the sun", Search 2(5).
 * @param dayOfYear 1 to 366, fractions allowed
 */
export function extraterrestrialNormal(dayOfYear: number, solarConstant = SOLAR_CONSTANT): number {
  const b = (2 * Math.PI * (dayOfYear - 1)) / 365;
  const eccentricity =
    1.00011 +
    0.034221 * Math.cos(b) +
    0.00128 * Math.sin(b) +
    0.000719 * Math.cos(2 * b) +
    0.000077 * Math.sin(2 * b);
  return solarConstant * eccentricity;
}

/**
 * Relative optical air mass by Kasten & Young (1989), "Revised optical air mass tables and
 * approximation formula", Applied Optics 28(22).
 * @param zenith apparent zenith angle, degrees; beyond 90 the value at 90 is given
 */
export function airMass(zenith: number): number {
  const z = Math.min(zenith, 90);
  return 1 / (Math.cos((z * Math.PI) / 180) + 0.50572 * (96.07995 - z) ** -1.6364);
}
