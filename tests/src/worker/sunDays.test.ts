import { Body, MakeTime, Observer, SearchRiseSet } from 'astronomy-engine';
import { IANAZone } from 'luxon';
import { describe, expect, it } from 'vitest';
import { buildCalendar, dayOfYear, monthOfDay } from '../../../lib/time/index.ts';
import { sunDays } from '../../../src/worker/sunDays.ts';

const HOUR = 3_600_000;
const RAD = Math.PI / 180;

const places = [
  { name: 'Burlington', latitude: 44.47, longitude: -73.15, zone: 'America/New_York' },
  { name: 'Sydney', latitude: -33.87, longitude: 151.21, zone: 'Australia/Sydney' },
  { name: 'Delhi', latitude: 28.61, longitude: 77.21, zone: 'Asia/Kolkata' },
];

function calendarOf(zone: string) {
  const january = IANAZone.create(zone).offset(Date.UTC(2026, 0, 15)) / 60;
  const july = IANAZone.create(zone).offset(Date.UTC(2026, 6, 15)) / 60;
  return buildCalendar(zone, 2026, -Math.min(january, july));
}

/** Midnight of a day of 2026 as if the local clock were UTC. */
function midnightOf(day: number): number {
  const month = monthOfDay(day);
  return Date.UTC(2026, month - 1, day - dayOfYear(month, 1) + 1);
}

describe('sunrise and sunset', () => {
  // Both take the upper limb at 34' of refraction; suncalc's solar coordinates are good to about
  // 0.01 degrees, a few seconds of time, and the day's declination is one value: 1.5 minutes.
  it.each(places)('are those of astronomy-engine at $name within 1.5 minutes', (place) => {
    const zone = IANAZone.create(place.zone);
    const days = sunDays(place, calendarOf(place.zone));
    const observer = new Observer(place.latitude, place.longitude, 0);
    let worst = 0;
    for (let day = 0; day < 365; day += 4) {
      const midnight = midnightOf(day);
      for (const [direction, hours] of [
        [1, days.rise[day]],
        [-1, days.set[day]],
      ] as const) {
        // From an hour before the local midnight on, the first rise or set is that of this day.
        const start = midnight - zone.offset(midnight) * 60_000 - HOUR;
        const found = SearchRiseSet(Body.Sun, observer, direction, MakeTime(new Date(start)), 1);
        const instant = found!.date.getTime();
        const local = (instant - midnight) / HOUR + zone.offset(instant) / 60;
        worst = Math.max(worst, Math.abs(hours - local) * 60);
      }
    }
    expect(worst).toBeLessThan(1.5);
  });

  it('jump by an hour where the clock does', () => {
    const { rise, set } = sunDays(places[0], calendarOf('America/New_York'));
    const spring = dayOfYear(3, 8); // second Sunday of March 2026
    const autumn = dayOfYear(11, 1); // first Sunday of November 2026
    // The sun itself moves by under two minutes and a half a day here.
    for (const series of [rise, set]) {
      expect(Math.abs(series[spring] - series[spring - 1] - 1)).toBeLessThan(0.05);
      expect(Math.abs(series[autumn] - series[autumn - 1] + 1)).toBeLessThan(0.05);
    }
  });

  it('are absent in polar day and night only', () => {
    const tromso = { latitude: 69.65, longitude: 18.96 };
    const { rise } = sunDays(tromso, calendarOf('Europe/Oslo'));
    expect(rise[dayOfYear(6, 21)]).toBeNaN();
    expect(rise[dayOfYear(12, 21)]).toBeNaN();
    expect(rise[dayOfYear(3, 20)]).toBeGreaterThan(5);
    expect(rise[dayOfYear(3, 20)]).toBeLessThan(7);
  });
});

describe('irradiation outside the atmosphere', () => {
  // Duffie & Beckman, Solar Engineering of Thermal Processes (4th ed. 2013), eq. 1.10.3 with
  // eq. 1.6.1a for the declination and Gsc 1367 W/m2, from memory. Ours has 1361 W/m2 (0.4 %), true
  // declinations (up to 0.5 degrees, some 2 % in December at 44 N) and quarter-hour sums.
  it('is near the closed formula on every day', () => {
    const { latitude } = places[0];
    const { extraterrestrial } = sunDays(places[0], calendarOf('America/New_York'));
    // The days the clock changes have 23 and 25 hours, both without sun in the odd one.
    for (let day = 0; day < 365; day++) {
      const n = day + 1;
      const declination = 23.45 * RAD * Math.sin((2 * Math.PI * (284 + n)) / 365);
      const sunset = Math.acos(-Math.tan(latitude * RAD) * Math.tan(declination));
      const formula =
        ((24 * 1367) / Math.PI) *
        (1 + 0.033 * Math.cos((2 * Math.PI * n) / 365)) *
        (Math.cos(latitude * RAD) * Math.cos(declination) * Math.sin(sunset) +
          sunset * Math.sin(latitude * RAD) * Math.sin(declination));
      expect(Math.abs(extraterrestrial[day] / formula - 1)).toBeLessThan(0.04);
    }
  });
});
