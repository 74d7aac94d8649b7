import { ineichen } from '../../sky/index.ts';
import { buildSunYear } from '../../sun/index.ts';
import type { SunYear } from '../../sun/index.ts';
import { DAYS, HOURS } from '../../time/index.ts';
import { monthOfDayIndex } from './months.ts';
import { cleanTurbidity } from './turbidity.ts';

const RAD = Math.PI / 180;

/** Sun of a common year; the sun of any other year is within 0.25 degrees of it. */
const REFERENCE_YEAR = 2026;

/** Lowest sun, as a zenith in degrees, at which the clear-sky formula is trusted. */
const LOWEST_CLEAR = 84;

/** Linke turbidity of very clean, dry air, for the bound on the beam (Ineichen & Perez 2002). */
const CLEANEST = 2;

/** What the sun allows in each hour of the year at a place; HOURS values each. */
export interface SunHours {
  /** Global horizontal irradiance outside the atmosphere, W/m2. */
  outside: Float64Array;
  /** Cosine of the zenith over the part of the hour with the sun up; 0 at night. */
  cosZenith: Float64Array;
  /** East component of the unit vector to the sun. */
  east: Float64Array;
  /** Hour over day: the factor a + b cos w of Collares-Pereira & Rabl (1979). */
  course: Float64Array;
  /** Clearness index of a clear hour. */
  clear: Float64Array;
  /** Most direct normal irradiance, W/m2. */
  dniMost: Float64Array;
  /** Horizontal irradiation outside the atmosphere by day, Wh/m2; DAYS values. */
  outsideDay: Float64Array;
  /** Horizontal irradiation of a clear day, Wh/m2; DAYS values. */
  clearDay: Float64Array;
}

/**
 * Bounds of each hour's sun: extraterrestrial, and the clear sky of Ineichen & Perez (2002) in clean
 * air. Below 6 degrees the clear sky's clearness is held: the formula sinks under what files show.
 *
 * @param startUtc hours from 1 January 00:00 UTC to the start of hour 0
 * @param dewPoint monthly dew point, degrees C; 12 values
 */
export function sunHours(
  place: { latitude: number; longitude: number; elevation: number },
  startUtc: number,
  dewPoint: ArrayLike<number>,
): SunHours {
  const sun = buildSunYear(place, REFERENCE_YEAR, startUtc);
  const hours: SunHours = {
    outside: new Float64Array(HOURS),
    cosZenith: sun.cosZenith,
    east: new Float64Array(HOURS),
    course: new Float64Array(HOURS),
    clear: new Float64Array(HOURS),
    dniMost: new Float64Array(HOURS),
    outsideDay: new Float64Array(DAYS),
    clearDay: new Float64Array(DAYS),
  };
  const turbidity = Float64Array.from(dewPoint, (t) => cleanTurbidity(t, place.elevation));

  for (let hour = 0; hour < HOURS; hour++) {
    const from = sun.hourStart[hour];
    const to = sun.hourStart[hour + 1];
    if (from === to) continue;
    const day = Math.floor(hour / 24);
    const upShare = (to - from) / sun.stepsPerHour;
    const cosZenith = Math.min(sun.cosZenith[hour], 1);
    const normal = sun.extraterrestrial[hour];
    const zenith = Math.acos(cosZenith) / RAD;
    const air = turbidity[monthOfDayIndex[day]];
    const high = Math.min(zenith, LOWEST_CLEAR);
    const sky = ineichen(high, day + 1, air, place.elevation, normal);
    const cleanest = ineichen(zenith, day + 1, Math.min(air, CLEANEST), place.elevation, normal);
    const outside = normal * cosZenith * upShare;
    hours.outside[hour] = outside;
    hours.clear[hour] = sky.ghi / (normal * Math.cos(high * RAD));
    hours.dniMost[hour] = cleanest.dni * upShare;
    hours.outsideDay[day] += outside;
    hours.clearDay[day] += outside * hours.clear[hour];
    setCourse(hours, sun, hour);
  }
  return hours;
}

/**
 * Sets the east component and the factor a + b cos w of Collares-Pereira & Rabl (1979), "The average
 * distribution of solar radiation", Solar Energy 22(2). Hour angle and declination are read back
 * from the sun's direction.
 */
function setCourse(hours: SunHours, sun: SunYear, hour: number): void {
  const from = sun.hourStart[hour];
  const to = sun.hourStart[hour + 1];
  let east = 0;
  let north = 0;
  for (let k = from; k < to; k++) {
    east += sun.east[k] / (to - from);
    north += sun.north[k] / (to - from);
  }
  const up = sun.cosZenith[hour];
  const sinLat = Math.sin(sun.latitude * RAD);
  const cosLat = Math.cos(sun.latitude * RAD);
  const noonward = up * cosLat - north * sinLat;
  const sinDeclination = up * sinLat + north * cosLat;
  const cosDeclination = Math.sqrt(Math.max(1 - sinDeclination ** 2, 1e-6));
  const cosSunset = (-sinLat * sinDeclination) / Math.max(cosLat * cosDeclination, 1e-6);
  const sunset = Math.acos(Math.max(-1, Math.min(cosSunset, 1)));
  const q = Math.sin(sunset - Math.PI / 3);
  const across = Math.hypot(noonward, east);
  const cosHourAngle = across > 1e-6 ? noonward / across : 1;
  hours.east[hour] = east;
  hours.course[hour] = 0.409 + 0.5016 * q + (0.6609 - 0.4767 * q) * cosHourAngle;
}
