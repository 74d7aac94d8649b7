import { incidenceCosine, sunPosition } from '../../../../lib/sun/index.ts';
import { horizonAltitude } from '../../../../lib/sky/index.ts';
import type { HorizonPoint } from '../../../../lib/sky/index.ts';
import { STEPS_PER_HOUR } from '../../../../lib/time/index.ts';
import type { YearCalendar } from '../../../../lib/time/index.ts';
import { hoursOfDay } from '../sheetGrid.ts';

const MS_PER_HOUR = 3_600_000;
const MS_PER_DAY = 24 * MS_PER_HOUR;

/** Where the sun stands, degrees: azimuth clockwise from north, altitude as seen. */
export interface SkyPlace {
  azimuth: number;
  altitude: number;
}

export interface Place {
  latitude: number;
  longitude: number;
}

/** Start of an hour of the typical year (fractions allowed), ms since the epoch. */
export function hourInstant(calendar: YearCalendar, hour: number): number {
  const { year, startUtc, standardOffset } = calendar;
  const instant =
    Date.UTC(year, 0, 1) + (Math.round(startUtc * 4) / 4) * MS_PER_HOUR + hour * MS_PER_HOUR;
  const leap = new Date(Date.UTC(year, 1, 29)).getUTCMonth() === 1;
  const past = instant + standardOffset * MS_PER_HOUR >= Date.UTC(year, 1, 29);
  return leap && past ? instant + MS_PER_DAY : instant;
}

/** The sun at an hour of the typical year; 0.5 past it is the middle of the hour. */
export function sunAt(calendar: YearCalendar, place: Place, hour: number): SkyPlace {
  return sunPosition(hourInstant(calendar, hour), place.latitude, place.longitude);
}

/** An hour of a day with the sun at its middle. */
export interface SunHour extends SkyPlace {
  hour: number;
}

/** The sun of one local day. */
export interface SunDay {
  /** Hours in the order they pass. */
  hours: SunHour[];
  /** The path while the sun is up, in pieces without gaps. */
  path: SkyPlace[][];
  /** The sun at full hours of the local clock while it is up. */
  marks: (SkyPlace & { clock: number })[];
}

/** Steps of the path, hours. */
const PATH_STEP = 1 / 6;

export function sunDay(calendar: YearCalendar, place: Place, day: number): SunDay {
  const hours = hoursOfDay(calendar, day);
  const path: SkyPlace[][] = [];
  const marks: SunDay['marks'] = [];
  let up = false;
  for (const hour of hours) {
    for (let part = 0; part < 1 - 1e-9; part += PATH_STEP) {
      const sun = sunAt(calendar, place, hour + part);
      if (sun.altitude < 0) up = false;
      else {
        if (!up) path.push([]);
        path.at(-1)!.push(sun);
        up = true;
      }
    }
    for (let part = 0; part < STEPS_PER_HOUR; part++) {
      const quarter = calendar.quarter[hour * STEPS_PER_HOUR + part];
      const sun = sunAt(calendar, place, hour + part / STEPS_PER_HOUR);
      if (quarter % 4 === 0 && sun.altitude >= 0) marks.push({ ...sun, clock: quarter / 4 });
    }
  }
  return {
    hours: hours.map((hour) => ({ hour, ...sunAt(calendar, place, hour + 0.5) })),
    path,
    marks,
  };
}

/** Whether the sun is up over the horizon of the site. */
export function isSunOut(sun: SkyPlace, horizon: readonly HorizonPoint[]): boolean {
  return sun.altitude > Math.max(0, horizonAltitude(horizon, sun.azimuth));
}

/** Whether the sun stands before a wall or roof. */
export function facesSun(sun: SkyPlace, plane: { azimuth: number; tilt: number }): boolean {
  return incidenceCosine(sun, plane) > 0;
}

/** The hour whose sun is nearest to a point of a picture; hours with the sun down do not count. */
export function nearestHour(
  hours: readonly SunHour[],
  place: (sun: SkyPlace) => { x: number; y: number },
  point: { x: number; y: number },
): number | undefined {
  let best: number | undefined;
  let least = Infinity;
  for (const sun of hours) {
    if (sun.altitude < 0) continue;
    const { x, y } = place(sun);
    const distance = Math.hypot(x - point.x, y - point.y);
    if (distance < least) [least, best] = [distance, sun.hour];
  }
  return best;
}
