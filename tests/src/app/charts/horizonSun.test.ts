import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import { describe, expect, it } from 'vitest';
import { drawnDays, sunPath } from '../../../../src/app/charts/horizonSun.ts';

const places = [
  { latitude: 44.47, longitude: -73.15 },
  { latitude: -33.9, longitude: 151.2 },
  { latitude: 69.6, longitude: 18.9 },
  { latitude: 0, longitude: 0 },
];

/** Highest sun of a day by astronomy-engine, degrees, every ten minutes of the same day. */
function crest(place: (typeof places)[0], year: number, day: { month: number; day: number }) {
  const observer = new Observer(place.latitude, place.longitude, 0);
  const midnight = Date.UTC(year, day.month - 1, day.day) - (place.longitude / 15) * 3.6e6;
  let best = -90;
  for (let minute = 0; minute <= 1440; minute += 10) {
    const date = new Date(midnight + minute * 60_000);
    const { ra, dec } = Equator(Body.Sun, date, observer, true, true);
    best = Math.max(best, Horizon(date, observer, ra, dec, 'normal').altitude);
  }
  return best;
}

describe('paths of the sun over the horizon', () => {
  it.each(places)('rise as high as astronomy-engine says at $latitude, $longitude', (place) => {
    for (const day of drawnDays) {
      const points = sunPath(place, 2026, day).flat();
      const expected = crest(place, 2026, day);
      const highest = Math.max(-90, ...points.map((p) => p.altitude));
      // suncalc keeps within 0.02 degrees; near the horizon refraction models differ by 0.2.
      if (expected > 1) expect(Math.abs(highest - expected)).toBeLessThan(0.1);
      else expect(highest).toBeLessThan(1.2);
    }
  });

  it('are cut where they cross north, so that no line runs across the chart', () => {
    for (const place of places) {
      for (const day of drawnDays) {
        for (const piece of sunPath(place, 2026, day)) {
          for (let i = 1; i < piece.length; i++) {
            expect(Math.abs(piece[i].azimuth - piece[i - 1].azimuth)).toBeLessThanOrEqual(180);
          }
        }
      }
    }
  });
});
