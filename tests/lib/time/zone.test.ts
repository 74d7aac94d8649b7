import { describe, expect, it } from 'vitest';
import { isTimeZone, standardOffset } from '../../../lib/time/index.ts';

describe('standard time', () => {
  // IANA time zone database. Morocco goes back from UTC+1 for the month of fasting only, which lies
  // neither in mid-January nor in mid-July of these years.
  const cases: [string, number, number][] = [
    ['America/New_York', 2026, -5],
    ['America/St_Johns', 2026, -3.5],
    ['America/Santiago', 2026, -4],
    ['Europe/London', 2026, 0],
    ['Europe/Dublin', 2026, 0],
    ['Africa/Casablanca', 2026, 1],
    ['Asia/Kolkata', 2026, 5.5],
    ['Asia/Kathmandu', 2026, 5.75],
    ['Australia/Lord_Howe', 2026, 10.5],
    ['Pacific/Auckland', 2026, 12],
    ['Pacific/Kiritimati', 2026, 14],
    ['Etc/GMT+7', 2026, -7],
    // Turkey stayed on summer time for good in September 2016.
    ['Europe/Istanbul', 2015, 2],
    ['Europe/Istanbul', 2026, 3],
  ];
  it.each(cases)('%s in %i is UTC%+d', (zone, year, hours) => {
    expect(standardOffset(zone, year)).toBe(hours);
  });
});

describe('names of zones', () => {
  it.each(['Europe/Berlin', 'America/Argentina/Ushuaia', 'Etc/GMT-14', 'UTC'])(
    '%s is one',
    (name) => {
      expect(isTimeZone(name)).toBe(true);
    },
  );
  it.each(['', 'Berlin', 'Europe/Atlantis', 'GMT+25', 'America/New York'])(
    '"%s" is none',
    (name) => {
      expect(isTimeZone(name)).toBe(false);
    },
  );
});
