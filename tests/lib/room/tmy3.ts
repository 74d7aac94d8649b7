import { existsSync, readFileSync } from 'node:fs';
import { sunPosition } from '../../../lib/sun/index.ts';
import { HOURS } from '../../../lib/time/index.ts';

const FOLDER = new URL('../../../../shared/weather/', import.meta.url);

export interface StationYear {
  outdoor: Float64Array;
  wind: Float64Array;
  /** Sun through a plain west window, W. */
  sun: Float64Array;
}

export function stationPath(file: string): URL {
  return new URL(file, FOLDER);
}

export function hasStation(file: string): boolean {
  return existsSync(stationPath(file));
}

/**
 * A station's year with the sun through `gain` m2 (area times g-value) of a plain west window: beam
 * by the cosine of incidence at the middle of the hour, half the diffuse sky, a fifth of the ground's
 * half. Good enough to drive both rooms alike; not a check of the sky model.
 */
export function readStation(file: string, gain: number): StationYear {
  const lines = readFileSync(stationPath(file), 'utf8').trim().split(/\r?\n/);
  const [, , , zone, latitude, longitude] = lines[0].split(',').map(Number);
  const header = lines[1].split(',');
  const column = (name: string) => header.findIndex((h) => h.startsWith(name));
  const [ghi, dni, dhi] = ['GHI (', 'DNI (', 'DHI ('].map(column);
  const [dry, speed] = ['Dry-bulb (', 'Wspd ('].map(column);
  const year: StationYear = {
    outdoor: new Float64Array(HOURS),
    wind: new Float64Array(HOURS),
    sun: new Float64Array(HOURS),
  };
  for (let hour = 0; hour < HOURS; hour++) {
    const row = lines[hour + 2].split(',');
    const value = (at: number) => Number(row[at]);
    const middle = Date.UTC(2023, 0, 1) + (hour + 0.5 - zone) * 3_600_000;
    const { azimuth, altitude } = sunPosition(middle, latitude, longitude);
    const rad = Math.PI / 180;
    const cosine = -Math.cos(altitude * rad) * Math.sin(azimuth * rad);
    const beam = altitude > 0 ? Math.max(0, cosine) * value(dni) : 0;
    year.sun[hour] = gain * (beam + 0.5 * value(dhi) + 0.5 * 0.2 * value(ghi));
    year.outdoor[hour] = value(dry);
    year.wind[hour] = value(speed);
  }
  return year;
}
