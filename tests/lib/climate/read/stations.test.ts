import { describe, expect, it } from 'vitest';
import climates from '../../../../data/climates.json';
import type { ClimateData } from '../../../../lib/climate/index.ts';
import { isTimeZone, standardOffset } from '../../../../lib/time/index.ts';
import reference from '../../../reference/normals-of-weather-files.json';

const data: ClimateData = climates;

describe('places that ship', () => {
  it('are 49 with ids and names of their own, the demonstration houses among them', () => {
    expect(data.stations).toHaveLength(49);
    expect(new Set(data.stations.map((s) => s.id)).size).toBe(49);
    expect(new Set(data.stations.map((s) => s.name)).size).toBe(49);
    const ids = data.stations.map((s) => s.id);
    expect(ids).toEqual(
      expect.arrayContaining(['burlington-vt', 'bellingham-wa', 'albuquerque-nm']),
    );
  });

  it.each(data.stations.map((s) => [s.id, s] as const))('%s is complete and plausible', (_, s) => {
    expect(s.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(s.name).toMatch(/^[A-Z][A-Za-z.\- ]+, [A-Z][a-z]+( [A-Z][a-z]+)?$/);
    expect(s.country).toMatch(/^[A-Z]{2}$/);
    expect(data.sources[s.source].reference).toMatch(/\d{4}/);
    expect(s.sourceStation).not.toBe('');
    expect(isTimeZone(s.timeZone)).toBe(true);
    // A zone's standard meridian is within an hour and a half of the place; Alaska's west 1.7 h.
    const solar = s.longitude / 15;
    expect(Math.abs(standardOffset(s.timeZone, 2026) - solar)).toBeLessThan(1.8);
    expect(Math.abs(s.latitude)).toBeLessThan(70);
    expect(s.elevation).toBeGreaterThanOrEqual(-10);
    expect(s.elevation).toBeLessThan(2500);
    expect(s.hoursAbove30C).toBeLessThanOrEqual(s.hoursAbove25C);

    const n = s.normals;
    for (const values of Object.values(n)) expect(values).toHaveLength(12);
    for (let m = 0; m < 12; m++) {
      expect(n.dryBulbDailyMin[m]).toBeLessThan(n.dryBulbMean[m]);
      expect(n.dryBulbMean[m]).toBeLessThan(n.dryBulbDailyMax[m]);
      expect(n.dhiKWhPerM2Day![m]).toBeLessThan(n.ghiKWhPerM2Day[m]);
      // No month anywhere averages 9 kWh/m2 a day; Fairbanks has 0.05 in December.
      expect(n.ghiKWhPerM2Day[m]).toBeGreaterThan(0.03);
      expect(n.ghiKWhPerM2Day[m]).toBeLessThan(9);
      expect(n.wind![m]).toBeGreaterThan(0.3);
      expect(n.wind![m]).toBeLessThan(12);
      expect(n.dailyMeanTempStd![m]).toBeGreaterThan(0);
    }
  });

  it('hold the figures of the sources', () => {
    const pairs = [
      ['denver-co', 'denver-intl-tmy3'],
      ['greensboro-nc', 'greensboro-tmy3'],
      ['minneapolis-mn', 'minneapolis-tmy3'],
      ['seattle-wa', 'seattle-tacoma-tmy3'],
      ['po-valley-it', 'po-valley-45n-8e-pvgis-tmy'],
    ] as const;
    for (const [id, file] of pairs) {
      const station = data.stations.find((s) => s.id === id)!;
      const place = reference.places[file];
      expect(place).toMatchObject({ ...station.normals, hoursAbove25C: station.hoursAbove25C });
      expect(standardOffset(station.timeZone, 2026)).toBe(place.utcOffset);
      expect(station.latitude).toBe(place.latitude);
      expect(station.longitude).toBe(place.longitude);
    }
  });
});
