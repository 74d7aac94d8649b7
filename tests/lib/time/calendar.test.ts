import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import {
  STEPS,
  buildCalendar,
  clockText,
  dateText,
  dayOfYear,
  daysInMonth,
  monthOfDay,
  standardOffset,
} from '../../../lib/time/index.ts';

const zones = [
  'America/New_York',
  'Europe/Dublin',
  'Africa/Casablanca',
  'Australia/Lord_Howe',
  'Australia/Adelaide',
  'America/Santiago',
  'America/St_Johns',
  'Asia/Kathmandu',
  'Pacific/Chatham',
  'Pacific/Kiritimati',
  'Etc/GMT+7',
];

describe('the local clock of a typical year', () => {
  it.each(zones)('%s agrees with luxon at every quarter hour of three years', (zone) => {
    for (const year of [2026, 2028, 2031]) {
      const startUtc = -standardOffset(zone, year);
      const calendar = buildCalendar(zone, year, startUtc);
      const leap = DateTime.utc(year).isInLeapYear;
      const first = Date.UTC(year, 0, 1) + startUtc * 3_600_000;
      const leapDay = Date.UTC(year, 1, 29);
      // Every 7th step, and all around the clock changes by way of the odd stride over the year.
      for (let step = 0; step < STEPS; step += 7) {
        const elapsed = first + step * 900_000;
        const past = leap && elapsed - startUtc * 3_600_000 >= leapDay;
        const local = DateTime.fromMillis(elapsed + (past ? 86_400_000 : 0), { zone });
        const where = `${zone} ${year} step ${step} ${local.toISO()}`;
        expect(clockText(calendar, step), where).toBe(local.toFormat('HH:mm'));
        // The ends of the year wrap round; 29 February shows as the 28th.
        const date = local.toFormat('MM-dd');
        const shown = dateText(calendar, step).slice(5);
        expect(shown, where).toBe(date === '02-29' ? '02-28' : date);
      }
    }
  });

  it('gives the weekdays of the calendar year', () => {
    const calendar = buildCalendar('Europe/Dublin', 2027, 0);
    for (let day = 0; day < 365; day++) {
      const date = DateTime.utc(2027).plus({ days: day });
      expect(calendar.weekday[day]).toBe(date.weekday);
    }
  });

  it('takes a start between quarter hours to the nearest one', () => {
    const calendar = buildCalendar('Etc/GMT-1', 2026, -1.3239);
    expect(clockText(calendar, 0)).toBe('23:45');
  });
});

describe('days and months', () => {
  it('count each other', () => {
    let day = 0;
    daysInMonth.forEach((days, i) => {
      for (let d = 1; d <= days; d++, day++) {
        expect(dayOfYear(i + 1, d)).toBe(day);
        expect(monthOfDay(day)).toBe(i + 1);
      }
    });
    expect(day).toBe(365);
    expect(dayOfYear(2, 29)).toBe(dayOfYear(2, 28));
  });

  it('finds the standard offset on both hemispheres', () => {
    expect(standardOffset('America/New_York', 2026)).toBe(-5);
    expect(standardOffset('Australia/Adelaide', 2026)).toBe(9.5);
    expect(standardOffset('Asia/Kathmandu', 2026)).toBe(5.75);
  });
});
