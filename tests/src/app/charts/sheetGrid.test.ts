import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { HOURS, buildCalendar, dayOfYear } from '../../../../lib/time/index.ts';
import {
  cellValue,
  dayAndClock,
  hourAt,
  hourByKey,
  hoursOfDay,
  hoursOfSpan,
  sheetGrid,
  spanBetween,
  sumOfSpan,
} from '../../../../src/app/charts/sheetGrid.ts';

const places = [
  { zone: 'America/New_York', startUtc: 5 },
  { zone: 'Australia/Sydney', startUtc: -10 },
  { zone: 'America/Phoenix', startUtc: 7 },
  { zone: 'Asia/Kolkata', startUtc: -5.5 },
];
const calendar = buildCalendar('America/New_York', 2026, 5);
const grid = sheetGrid(calendar);
const values = Float64Array.from({ length: HOURS }, (_, i) => (i % 97) + i / 1000);
const SPRING = dayOfYear(3, 8); // 2026: the clock goes on at 02:00
const AUTUMN = dayOfYear(11, 1); // and back at 02:00

describe('cells of the year sheet', () => {
  it.each(places)('hold the hours of the local clock as luxon has it in $zone', (place) => {
    const { hour, second, cell } = sheetGrid(buildCalendar(place.zone, 2026, place.startUtc));
    for (let h = 0; h < HOURS; h++) {
      const instant = Date.UTC(2026, 0, 1) + (place.startUtc + h) * 3_600_000;
      const local = DateTime.fromMillis(instant, { zone: place.zone });
      expect(cell[h]).toBe(((local.ordinal - 1) % 365) * 24 + local.hour);
    }
    const placed = [...hour, ...second].filter((h) => h >= 0);
    expect(new Set(placed).size).toBe(HOURS);
    expect(placed.length).toBe(HOURS);
  });

  it('are empty where the clock skips an hour, and a mean where it passes one twice', () => {
    expect(cellValue(grid, values, SPRING * 24 + 2)).toBeNaN();
    const double = AUTUMN * 24 + 1;
    const [a, b] = [grid.hour[double], grid.second[double]];
    expect(b).toBe(a + 1);
    expect(cellValue(grid, values, double)).toBeCloseTo((values[a] + values[b]) / 2, 12);
    expect(Array.from(grid.hour).filter((h) => h < 0).length).toBe(1);
    expect(Array.from(grid.second).filter((h) => h >= 0).length).toBe(1);
  });

  it('lead to the next hour where a key or click lands on a skipped one', () => {
    expect(dayAndClock(grid, hourAt(grid, SPRING, 2))).toEqual({ day: SPRING, clock: 3 });
  });
});

describe('keys on the year sheet', () => {
  const hours = fc.integer({ min: 0, max: HOURS - 1 });

  it('undo one another', () => {
    fc.assert(
      fc.property(hours, (hour) => {
        expect(hourByKey(grid, hourByKey(grid, hour, 'ArrowUp')!, 'ArrowDown')).toBe(hour);
        // Sideways the clock is kept, so a skipped or doubled clock hour may not be come back to.
        const { clock } = dayAndClock(grid, hour);
        if (clock === 1 || clock === 2) return;
        for (const [on, back] of [
          ['ArrowRight', 'ArrowLeft'],
          ['PageUp', 'PageDown'],
        ]) {
          for (const shift of [false, true]) {
            const there = hourByKey(grid, hour, on, shift)!;
            expect(dayAndClock(grid, there).clock).toBe(clock);
            expect(hourByKey(grid, there, back, shift)).toBe(hour);
          }
        }
      }),
    );
  });

  it('go by a day, a week, thirty days and to the ends of the year', () => {
    const noon = hourAt(grid, dayOfYear(6, 10), 12);
    const to = (key: string, shift = false) =>
      dayAndClock(grid, hourByKey(grid, noon, key, shift)!);
    expect(to('ArrowRight')).toEqual({ day: dayOfYear(6, 11), clock: 12 });
    expect(to('PageDown')).toEqual({ day: dayOfYear(6, 3), clock: 12 });
    expect(to('PageUp', true)).toEqual({ day: dayOfYear(7, 10), clock: 12 });
    expect(to('Home')).toEqual({ day: 0, clock: 12 });
    expect(to('End')).toEqual({ day: 364, clock: 12 });
    expect(hourByKey(grid, noon, 'a')).toBeUndefined();
  });
});

describe('spans of days', () => {
  it('add up to the year however it is cut', () => {
    const whole = values.reduce((sum, v) => sum + v, 0);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 363 }), (cut) => {
        const parts = [spanBetween(0, cut), spanBetween(364, cut + 1)];
        const total = parts.reduce((sum, span) => sum + sumOfSpan(grid, values, span), 0);
        expect(total / whole).toBeCloseTo(1, 12);
        expect(parts.reduce((sum, span) => sum + hoursOfSpan(grid, span), 0)).toBe(HOURS);
      }),
    );
  });

  it('stay inside the year', () => {
    expect(spanBetween(400, -3)).toEqual({ from: 0, to: 364 });
  });
});

describe('the hours of a day', () => {
  it('are 24, and 23 or 25 where the clock changes', () => {
    const lengths = Array.from({ length: 365 }, (_, day) => hoursOfDay(calendar, day).length);
    expect(lengths[SPRING]).toBe(23);
    expect(lengths[AUTUMN]).toBe(25);
    expect(lengths.filter((n) => n !== 24).length).toBe(2);
  });

  it('start at midnight where the first day borrows an hour from the last', () => {
    // In Sydney hour 0 of the standard-time year is 01:00 of the summer clock on 1 January.
    const sydney = buildCalendar('Australia/Sydney', 2026, -10);
    const first = hoursOfDay(sydney, 0);
    expect(first.slice(0, 3)).toEqual([HOURS - 1, 0, 1]);
    expect(first.length).toBe(24);
  });
});
