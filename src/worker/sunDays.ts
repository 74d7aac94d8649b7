import { IANAZone } from 'luxon';
import { getTimes } from 'suncalc';
import { buildSunYear } from '../../lib/sun/index.ts';
import { DAYS, HOURS, STEPS_PER_HOUR, dayOfYear, monthOfDay } from '../../lib/time/index.ts';
import type { YearCalendar } from '../../lib/time/index.ts';

const MS_PER_HOUR = 3_600_000;

/** The sun of each local day of a typical year; DAYS values each. */
export interface SunDays {
  /**
   * Upper limb of the sun on a level horizon, hours of the local clock after the day's midnight;
   * under 0 or over 24 where the clock is far from the sun. Not a number where it does not happen.
   */
  rise: Float64Array;
  set: Float64Array;
  /** What would reach a level plane without an atmosphere, Wh/m2. */
  extraterrestrial: Float64Array;
}

/**
 * Sunrise, sunset and the irradiation outside the atmosphere, by days of the local clock.
 * @see suncalc 2 (Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 15)
 */
export function sunDays(
  place: { latitude: number; longitude: number },
  calendar: YearCalendar,
): SunDays {
  const zone = IANAZone.create(calendar.zone);
  const rise = new Float64Array(DAYS);
  const set = new Float64Array(DAYS);
  for (let day = 0; day < DAYS; day++) {
    const month = monthOfDay(day);
    const midnight = Date.UTC(calendar.year, month - 1, day - dayOfYear(month, 1) + 1);
    const noon = midnight + (12 - calendar.standardOffset) * MS_PER_HOUR;
    const times = getTimes(new Date(noon), place.latitude, place.longitude);
    rise[day] = localHours(times.sunrise, midnight, zone);
    set[day] = localHours(times.sunset, midnight, zone);
  }
  return { rise, set, extraterrestrial: extraterrestrialDays(place, calendar) };
}

function localHours(at: Date | null, midnight: number, zone: IANAZone): number {
  if (!at) return NaN;
  const instant = at.getTime();
  return (instant - midnight) / MS_PER_HOUR + zone.offset(instant) / 60;
}

function extraterrestrialDays(
  place: { latitude: number; longitude: number },
  calendar: YearCalendar,
): Float64Array {
  const sun = buildSunYear(place, calendar.year, calendar.startUtc);
  const days = new Float64Array(DAYS);
  for (let hour = 0; hour < HOURS; hour++) {
    const shareUp = (sun.hourStart[hour + 1] - sun.hourStart[hour]) / sun.stepsPerHour;
    const level = sun.extraterrestrial[hour] * sun.cosZenith[hour] * shareUp;
    days[calendar.day[hour * STEPS_PER_HOUR]] += level;
  }
  return days;
}
