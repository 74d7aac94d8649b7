import { buildSunYear } from '../../sun/index.ts';
import type { SunYear } from '../../sun/index.ts';
import type { TypicalYear } from '../types.ts';

/** A year half-way between two leap years, whose sun is nearest to the mean of the four. */
const MEAN_YEAR = 2026;

/** Where the hours of a year lie. */
export type YearPlace = Pick<TypicalYear, 'latitude' | 'longitude' | 'startUtc'>;

/**
 * The sun over the hours of a weather file.
 * @param lateMinutes by how much the file's sun runs late; the sun is asked for at its own time
 */
export function sunOf(place: YearPlace, lateMinutes = 0): SunYear {
  return buildSunYear(place, MEAN_YEAR, place.startUtc - lateMinutes / 60);
}
