import { describe, expect, it } from 'vitest';
import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import {
  hourInstant,
  isSunOut,
  nearestHour,
  sunAt,
  sunDay,
} from '../../../src/app/charts/ring/sunDay.ts';
import {
  HOURS,
  STEPS_PER_HOUR,
  buildCalendar,
  dateText,
  dayOfYear,
} from '../../../lib/time/index.ts';

const burlington = { latitude: 44.47, longitude: -73.15 };
const zone = 'America/New_York';
const calendar = buildCalendar(zone, 2026, 5);

describe('hours of the typical year as instants', () => {
  const clock = (timeZone: string) =>
    new Intl.DateTimeFormat('en-CA', {
      timeZone,
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      hourCycle: 'h23',
    });

  it.each([2024, 2026])('agree with the local clock of Intl, %d', (year) => {
    const own = buildCalendar(zone, year, 5);
    const format = clock(zone);
    for (let hour = 0; hour < HOURS - 24; hour += 37) {
      const step = hour * STEPS_PER_HOUR;
      const parts = format.formatToParts(new Date(hourInstant(own, hour)));
      const part = (type: string) => parts.find((p) => p.type === type)?.value;
      const date = `${part('year')}-${part('month')}-${part('day')}`;
      expect(date).toBe(dateText(own, step));
      expect(Number(part('hour'))).toBe(Math.floor(own.quarter[step] / 4));
    }
  });
});

describe('the sun of a day', () => {
  const midsummer = sunDay(calendar, burlington, dayOfYear(6, 21));

  it('stands where an independent ephemeris puts it', () => {
    const observer = new Observer(burlington.latitude, burlington.longitude, 0);
    for (let hour = 100; hour < HOURS; hour += 611) {
      const date = new Date(hourInstant(calendar, hour + 0.5));
      const { ra, dec } = Equator(Body.Sun, date, observer, true, true);
      const known = Horizon(date, observer, ra, dec, 'normal');
      const sun = sunAt(calendar, burlington, hour + 0.5);
      if (known.altitude < 2) continue;
      // 0.05 degrees: what the two differ by in refraction and in the series of the sun.
      expect(Math.abs(sun.altitude - known.altitude)).toBeLessThan(0.05);
      expect(Math.abs(sun.azimuth - known.azimuth)).toBeLessThan(0.05);
    }
  });

  it('culminates in the south at 90 - latitude + declination', () => {
    const top = midsummer.path
      .flat()
      .reduce((best, sun) => (sun.altitude > best.altitude ? sun : best));
    // Declination 23.44 degrees at the solstice; steps of ten minutes miss the top by under 0.1.
    expect(Math.abs(top.altitude - (90 - 44.47 + 23.44))).toBeLessThan(0.1);
    expect(Math.abs(top.azimuth - 180)).toBeLessThan(5);
  });

  it('marks the full hours from sunrise (5:08) to sunset (20:40 local time)', () => {
    // Published almanac times for Burlington on 21 June, daylight saving time, from memory.
    expect(midsummer.marks.map((m) => m.clock)).toEqual(
      Array.from({ length: 15 }, (_, i) => i + 6),
    );
    expect(midsummer.path).toHaveLength(1);
  });

  it('has 23 and 25 hours where the clock changes', () => {
    expect(sunDay(calendar, burlington, dayOfYear(3, 8)).hours).toHaveLength(23);
    expect(sunDay(calendar, burlington, dayOfYear(11, 1)).hours).toHaveLength(25);
  });

  it('has no path in the polar night and a ring in the midnight sun', () => {
    const north = { latitude: 78, longitude: -73 };
    expect(sunDay(calendar, north, dayOfYear(12, 21)).path).toEqual([]);
    expect(sunDay(calendar, north, dayOfYear(6, 21)).path.flat()).toHaveLength(24 * 6);
  });

  it('is out only over hills', () => {
    const hills = [{ azimuth: 0, altitude: 20 }];
    expect(isSunOut({ azimuth: 100, altitude: 19 }, hills)).toBe(false);
    expect(isSunOut({ azimuth: 100, altitude: 21 }, hills)).toBe(true);
    expect(isSunOut({ azimuth: 100, altitude: -1 }, [])).toBe(false);
  });

  it('gives the hour nearest to a point, none of the night', () => {
    const place = (sun: { azimuth: number; altitude: number }) => ({
      x: sun.azimuth,
      y: sun.altitude,
    });
    for (const sun of midsummer.hours) {
      const found = nearestHour(midsummer.hours, place, place(sun));
      if (sun.altitude >= 0) expect(found).toBe(sun.hour);
      else expect(found).not.toBe(sun.hour);
    }
  });
});
