import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import {
  DAYS,
  HOURS,
  STEPS,
  STEPS_PER_HOUR,
  dayOfYear,
  daysInMonth,
  monthOfDay,
} from '../../../lib/time/index.ts';

/** Every day of a common year, counted by luxon. */
const days = Array.from({ length: 365 }, (_, i) => DateTime.utc(2023, 1, 1).plus({ days: i }));

// Whole numbers throughout: no tolerance.
describe('days of a typical year', () => {
  it('has the hours and quarter hours of a common year', () => {
    const start = DateTime.utc(2023, 1, 1);
    const end = DateTime.utc(2024, 1, 1);
    expect(DAYS).toBe(end.diff(start, 'days').days);
    expect(HOURS).toBe(end.diff(start, 'hours').hours);
    expect(STEPS).toBe(end.diff(start, 'minutes').minutes / 15);
    expect(STEPS_PER_HOUR).toBe(4);
  });

  it('numbers every date as luxon does in a common year', () => {
    expect(days.map(({ month, day }) => dayOfYear(month, day))).toEqual(
      days.map(({ ordinal }) => ordinal - 1),
    );
  });

  it('finds the month of every day', () => {
    expect(days.map((_, i) => monthOfDay(i))).toEqual(days.map(({ month }) => month));
  });

  it('knows how long the months are', () => {
    expect(daysInMonth).toEqual(
      Array.from({ length: 12 }, (_, i) => DateTime.utc(2023, i + 1).daysInMonth),
    );
  });

  it('takes 29 February, and a day past the end of any month, as the last of the month', () => {
    expect(dayOfYear(2, 29)).toBe(dayOfYear(2, 28));
    for (let month = 1; month <= 12; month++) {
      const last = DateTime.utc(2023, month).endOf('month').ordinal - 1;
      expect(dayOfYear(month, 31)).toBe(last);
    }
  });
});
