import { sunPosition } from '../../../lib/sun/index.ts';

export interface SkyPoint {
  azimuth: number;
  altitude: number;
}

const MINUTES = 10;

/** The days drawn; `at` is their month and day. Solstices and the March equinox stand for the year. */
export const drawnDays = [
  { month: 6, day: 21, at: '06-21' },
  { month: 3, day: 20, at: '03-20' },
  { month: 12, day: 21, at: '12-21' },
] as const;

/**
 * Path of the sun over a level horizon on a day of the sun's own time, degrees; cut into pieces
 * where it sets or crosses north.
 */
export function sunPath(
  place: { latitude: number; longitude: number },
  year: number,
  date: { month: number; day: number },
): SkyPoint[][] {
  const midnight = Date.UTC(year, date.month - 1, date.day) - (place.longitude / 15) * 3.6e6;
  const pieces: SkyPoint[][] = [];
  let before: SkyPoint | undefined;
  for (let minute = 0; minute <= 1440; minute += MINUTES) {
    const sun = sunPosition(midnight + minute * 60_000, place.latitude, place.longitude);
    const point = { azimuth: ((sun.azimuth % 360) + 360) % 360, altitude: sun.altitude };
    if (point.altitude < 0) before = undefined;
    else {
      if (!before || Math.abs(point.azimuth - before.azimuth) > 180) pieces.push([]);
      pieces.at(-1)!.push(point);
      before = point;
    }
  }
  return pieces;
}
