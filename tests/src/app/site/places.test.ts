import { describe, expect, it } from 'vitest';
import { distance, matching, nearest } from '../../../../src/app/site/places.ts';
import { stations } from '../../../../src/library/climates.ts';

/** Haversine formula (Sinnott 1984), written here only. */
function haversine(a: [number, number], b: [number, number]): number {
  const rad = Math.PI / 180;
  const dLat = (b[0] - a[0]) * rad;
  const dLon = (b[1] - a[1]) * rad;
  const h =
    Math.sin(dLat / 2) ** 2 + Math.cos(a[0] * rad) * Math.cos(b[0] * rad) * Math.sin(dLon / 2) ** 2;
  return 2 * 6371.0088 * Math.asin(Math.sqrt(h));
}

describe('distances between places', () => {
  it('agrees with the haversine formula over every pair of stations', () => {
    for (const a of stations) {
      for (const b of stations) {
        const expected = haversine([a.latitude, a.longitude], [b.latitude, b.longitude]);
        // Both are exact on a sphere: a metre is left for rounding.
        expect(Math.abs(distance(a, b) - expected)).toBeLessThan(0.001);
      }
    }
  });

  it('is a quarter of the circumference from the pole to the equator', () => {
    const pole = { latitude: 90, longitude: 0 };
    expect(distance(pole, { latitude: 0, longitude: 137 })).toBeCloseTo(10_007.56, 1);
  });

  it('finds the nearest across the date line', () => {
    const far = { latitude: 55, longitude: 179 };
    expect(nearest(stations, far)?.station.id).toBe('sand-point-ak');
    expect(nearest([], far)).toBeUndefined();
  });
});

describe('the search for a place', () => {
  const ids = (wanted: string, language: 'en' | 'de' = 'en') =>
    matching({ language }, stations, wanted).map((s) => s.id);

  it('finds by words in any order, without case or accents', () => {
    expect(ids('VERMONT burl')).toEqual(['burlington-vt']);
    expect(ids('pórtland')).toEqual(['portland-me', 'portland-or']);
    expect(ids('italy')).toEqual(['po-valley-it']);
  });

  it('finds a country by its name in the language of the page as well', () => {
    expect(ids('italien', 'de')).toEqual(['po-valley-it']);
    expect(ids('italy', 'de')).toEqual(['po-valley-it']);
    expect(ids('italien')).toEqual([]);
    expect(ids('vereinigte vermont', 'de')).toEqual(['burlington-vt']);
  });

  it('shows all for no words and none for nonsense', () => {
    expect(ids('  ')).toHaveLength(stations.length);
    expect(ids('xyzzy')).toEqual([]);
  });
});
