import { getPosition } from 'suncalc';

const RAD = Math.PI / 180;

/** Where the sun stands, degrees: azimuth clockwise from north, altitude as seen (refracted). */
export interface SunPosition {
  azimuth: number;
  altitude: number;
}

/**
 * Apparent position of the sun.
 * @param instant ms since the epoch (UTC)
 * @param latitude degrees, north positive
 * @param longitude degrees, east positive
 * @see suncalc 2 (Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 25)
 */
export function sunPosition(instant: number, latitude: number, longitude: number): SunPosition {
  return getPosition(new Date(instant), latitude, longitude);
}

/**
 * Lift of the sun by refraction, radians, for a true altitude in radians; below the horizon the
 * value at the horizon. Meeus, Astronomical Algorithms (1998), eq. 16.4, as in suncalc.
 */
export function refraction(altitude: number): number {
  const h = Math.max(altitude, 0);
  return 0.0002967 / Math.tan(h + 0.00312536 / (h + 0.08901179));
}

/** Declination and Greenwich hour angle of the sun, radians. */
export interface SunCoordinates {
  declination: number;
  hourAngle: number;
}

/**
 * Declination and Greenwich hour angle recovered from two suncalc positions: seen from the pole the
 * azimuth is the hour angle plus half a turn; seen from the equator under the sun the altitude is
 * a right angle less the declination, where refraction is least and easily taken off.
 */
export function sunCoordinates(instant: number): SunCoordinates {
  const hourAngle = sunPosition(instant, 90, 0).azimuth * RAD - Math.PI;
  const subsolarLongitude = -hourAngle / RAD;
  const seen = sunPosition(instant, 0, subsolarLongitude);
  const apparent = seen.altitude * RAD;
  const altitude = apparent - refraction(apparent - refraction(apparent));
  const north = Math.cos(seen.azimuth * RAD) > 0;
  const declination = (north ? 1 : -1) * (Math.PI / 2 - altitude);
  return { declination, hourAngle };
}
