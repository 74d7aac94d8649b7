import { geoDistance } from 'd3';
import type { ClimateStation } from '../../../lib/climate/index.ts';

/** Mean radius of the Earth, km (IUGG: 6371.0088). */
const EARTH_RADIUS = 6371.0088;

export interface Point {
  latitude: number;
  longitude: number;
}

/** Distance along the ground, km. */
export function distance(a: Point, b: Point): number {
  return EARTH_RADIUS * geoDistance([a.longitude, a.latitude], [b.longitude, b.latitude]);
}

/** The station nearest to a point, with its distance in km. */
export function nearest(
  stations: readonly ClimateStation[],
  point: Point,
): { station: ClimateStation; away: number } | undefined {
  let best: { station: ClimateStation; away: number } | undefined;
  for (const station of stations) {
    const away = distance(station, point);
    if (!best || away < best.away) best = { station, away };
  }
  return best;
}

/** Stations whose name, country or source holds every word, in any order and any case. */
export function matching(
  stations: readonly ClimateStation[],
  words: string,
): readonly ClimateStation[] {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  if (wanted.length === 0) return stations;
  return stations.filter((station) => {
    const text = plain(`${station.name} ${countryName(station.country)} ${station.sourceStation}`);
    return wanted.every((word) => text.includes(word));
  });
}

/** Name of a country by its two letters, as far as the browser knows it. */
export function countryName(code: string): string {
  try {
    return new Intl.DisplayNames(['en'], { type: 'region' }).of(code) ?? code;
  } catch {
    return code;
  }
}

/** Lower case, without accents. */
function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}
