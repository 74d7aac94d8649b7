import { airMass, extraterrestrialNormal } from '../sun/index.ts';

export interface ClearSky {
  ghi: number;
  dni: number;
  dhi: number;
}

/**
 * Clear-sky irradiance by Ineichen & Perez (2002), "A new airmass independent formulation for the
 * Linke turbidity coefficient", Solar Energy 73(3), with the altitude corrections of Perez et al.
 * (2002). All W/m2.
 * @param zenith apparent zenith, degrees @param altitude metres @param linkeTurbidity 1 or more
 */
export function ineichen(
  zenith: number,
  dayOfYear: number,
  linkeTurbidity: number,
  altitude: number,
  extraterrestrial = extraterrestrialNormal(dayOfYear),
  absoluteAirMass = airMass(zenith) * relativePressure(altitude),
): ClearSky {
  const cosZenith = Math.max(Math.cos((zenith * Math.PI) / 180), 0);
  const fh1 = Math.exp(-altitude / 8000);
  const fh2 = Math.exp(-altitude / 1250);
  const cg1 = 5.09e-5 * altitude + 0.868;
  const cg2 = 3.92e-5 * altitude + 0.0387;
  const ghi =
    cg1 *
    extraterrestrial *
    cosZenith *
    Math.exp(-cg2 * absoluteAirMass * (fh1 + fh2 * (linkeTurbidity - 1)));
  const beam =
    extraterrestrial *
    (0.664 + 0.163 / fh1) *
    Math.exp(-0.09 * absoluteAirMass * (linkeTurbidity - 1));
  const bound =
    cosZenith > 0
      ? (ghi * (1 - (0.1 - 0.2 * Math.exp(-linkeTurbidity)) / (0.1 + 0.882 / fh1))) / cosZenith
      : 0;
  const dni = Math.min(beam, Math.max(bound, 0));
  return { ghi, dni, dhi: ghi - dni * cosZenith };
}

/** Pressure over that at sea level in the standard atmosphere (ISO 2533:1975), by altitude in m. */
function relativePressure(altitude: number): number {
  return (1 - (0.0065 * altitude) / 288.15) ** 5.25588;
}
