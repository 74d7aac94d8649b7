import { geoDistance } from 'd3';
import type { ClimateStation } from '../../../lib/climate/index.ts';
import type { Wording } from '../../words/index.ts';

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

/**
 * Stations whose name, country or source holds every word, in any order and any case. A country is
 * found in English and in the language of the page.
 */
export function matching(
  { language }: Pick<Wording, 'language'>,
  stations: readonly ClimateStation[],
  wanted: string,
): readonly ClimateStation[] {
  const parts = plain(wanted).split(/\s+/).filter(Boolean);
  if (parts.length === 0) return stations;
  const countries = [...new Set(['en', language])].map(countryNames);
  return stations.filter(({ name, country, sourceStation }) => {
    const text = plain([name, sourceStation, ...countries.map((of) => of(country))].join(' '));
    return parts.every((part) => text.includes(part));
  });
}

/** Names of countries by their two letters, as far as the browser knows them. */
function countryNames(language: string): (code: string) => string {
  const names = new Intl.DisplayNames([language], { type: 'region' });
  return (code) => {
    try {
      return names.of(code) ?? code;
    } catch {
      return code;
    }
  };
}

/** Lower case, without accents. */
function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}
