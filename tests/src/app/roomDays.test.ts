import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { DAYS, HOURS, buildCalendar } from '../../../lib/time/index.ts';
import {
  calendarLayout,
  cellGroups,
  cornerOfDay,
  dayByKey,
  dayUnder,
  monthSums,
  placeOfDay,
} from '../../../src/app/charts/room/calendarLayout.ts';
import { dayMaxima, hoursOver } from '../../../src/app/charts/room/dayHeat.ts';
import { describeDays, readDay } from '../../../src/app/charts/room/describe.ts';
import {
  describeDuration,
  durationLine,
  durationTable,
  hoursAbove,
  shownHours,
} from '../../../src/app/charts/room/duration.ts';
import { loadRoomYear } from '../../../src/app/charts/room/roomYear.ts';
import type { RoomSource } from '../../../src/app/charts/room/roomYear.ts';
import { Words } from '../../../src/words/index.ts';

const english = await Words.load('en', ['rooms', 'charts']);
const german = await Words.load('de', ['rooms', 'charts']);
const YEAR = 2026;
const ZONE = 'America/New_York';
/** Hour 0 is midnight of the standard clock. */
const calendar = buildCalendar(ZONE, YEAR, 5);

/** Day of the year, from 0, of an hour of the typical year, by luxon's own calendar. */
function luxonDay(hour: number): number {
  return DateTime.fromMillis(Date.UTC(YEAR, 0, 1, 5 + hour), { zone: ZONE }).ordinal - 1;
}

/** A year that depends on the hour in a way no day repeats. */
const values = Float64Array.from({ length: HOURS }, (_, h) => 20 + 9 * Math.sin(h * 0.7137) ** 3);

describe('hours of a day over a limit', () => {
  // Counts of whole hours: no tolerance.
  it('are those of the local day as luxon counts it', () => {
    const counts = new Array<number>(DAYS).fill(0);
    const tops = new Array<number>(DAYS).fill(-Infinity);
    values.forEach((value, hour) => {
      const day = luxonDay(hour);
      if (value > 25) counts[day]++;
      tops[day] = Math.max(tops[day], value);
    });
    expect(Array.from(hoursOver(values, calendar, 25))).toEqual(counts);
    expect(Array.from(dayMaxima(values, calendar))).toEqual(tops);
  });

  it('fill the days on which the clock is changed with 23 and 25', () => {
    const all = hoursOver(new Float64Array(HOURS).fill(30), calendar, 25);
    const day = (month: number, date: number) => DateTime.utc(YEAR, month, date).ordinal - 1;
    // Second Sunday of March and first Sunday of November 2026: 15 U.S.C. 260a.
    expect(all[day(3, 8)]).toBe(23);
    expect(all[day(11, 1)]).toBe(25);
    expect(all.reduce((sum, n) => sum + n, 0)).toBe(HOURS);
  });

  it('add up by month as luxon names the months', () => {
    const hot = hoursOver(values, calendar, 25);
    const months = new Array<number>(12).fill(0);
    values.forEach((value, hour) => {
      const at = DateTime.utc(YEAR, 1, 1).plus({ days: luxonDay(hour) });
      if (value > 25) months[at.month - 1]++;
    });
    expect(monthSums(hot)).toEqual(months);
  });
});

const anyDay = fc.integer({ min: 0, max: DAYS - 1 });
const date = (day: number) => DateTime.utc(YEAR, 1, 1).plus({ days: day });

describe('the calendar of days', () => {
  it('puts every day into the row of its month and the column of its date', () => {
    for (let day = 0; day < DAYS; day++) {
      expect(placeOfDay(day)).toEqual({ row: date(day).month - 1, column: date(day).day - 1 });
    }
  });

  it('finds the day again under the middle of its cell, at any width', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 300, max: 1400 }), (day, width) => {
        const layout = calendarLayout(width);
        const { x, y } = cornerOfDay(layout, day);
        expect(dayUnder(layout, x + layout.cellWidth / 2, y + layout.cellHeight / 2)).toBe(day);
      }),
    );
  });

  it('gives a day of the year wherever the pointer is', () => {
    const far = fc.double({ min: -500, max: 2000, noNaN: true });
    fc.assert(
      fc.property(far, far, (x, y) => {
        const day = dayUnder(calendarLayout(600), x, y);
        expect(day).toBeGreaterThanOrEqual(0);
        expect(day).toBeLessThan(DAYS);
      }),
    );
  });

  it('fits a phone and stays within the room it is given', () => {
    // 299 px is what 31 cells of the least size take with names and sums beside them.
    for (const width of [299, 330, 600, 1012]) {
      expect(calendarLayout(width).width).toBeLessThanOrEqual(width + 1e-9);
    }
  });

  it('draws each day once', () => {
    const hours = hoursOver(values, calendar, 25);
    const groups = cellGroups(calendarLayout(600), hours);
    const cells = groups.map((g) => g.path.split('M').length - 1);
    expect(cells.reduce((sum, n) => sum + n, 0)).toBe(DAYS);
    for (const group of groups) {
      const same = hours.filter((n) => n === group.hours).length;
      expect(group.path.split('M').length - 1).toBe(same);
    }
  });
});

describe('keys on the calendar', () => {
  const dayOf = (at: DateTime) => at.ordinal - 1;

  it('move as luxon moves dates, round the year', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const same = (to: DateTime) => dayOf(to.set({ year: YEAR }));
        expect(dayByKey(day, 'ArrowRight')).toBe(same(date(day).plus({ days: 1 })));
        expect(dayByKey(day, 'ArrowLeft')).toBe(same(date(day).minus({ days: 1 })));
        expect(dayByKey(day, 'PageDown')).toBe(same(date(day).plus({ weeks: 1 })));
        expect(dayByKey(day, 'PageUp')).toBe(same(date(day).minus({ weeks: 1 })));
        expect(dayByKey(day, 'ArrowDown')).toBe(same(date(day).plus({ months: 1 })));
        expect(dayByKey(day, 'ArrowUp')).toBe(same(date(day).minus({ months: 1 })));
        expect(dayByKey(day, 'Home')).toBe(dayOf(date(day).startOf('month')));
        expect(dayByKey(day, 'End')).toBe(dayOf(date(day).endOf('month')));
      }),
    );
  });

  it('leave other keys to the page', () => {
    for (const key of ['Tab', 'Enter', 'a', 'Escape']) expect(dayByKey(100, key)).toBeUndefined();
  });
});

describe('the words of the day charts', () => {
  const source = (bare: Float64Array, shaded: Float64Array): RoomSource => ({
    calendar: async () => calendar,
    weather: async () => {
      const none = new Float64Array(HOURS);
      return { ghi: none, dni: none, dhi: none, dryBulb: none, wind: none };
    },
    roomHourly: async (_room, scheme) => (scheme === 'without' ? bare : shaded),
  });
  const cool = new Float64Array(HOURS).fill(20);
  const hot = Float64Array.from(cool, (t, h) => (luxonDay(h) === 200 ? 27 : t));

  it('count the hot hours and name their days', async () => {
    const data = await loadRoomYear(source(hot, cool), 'room', 25, 'imperial');
    const words = describeDays(english, data!, 'Attic').replaceAll('\u00a0', ' ');
    // 25 C is 77 F and 27 C 80.6 F; day 200 from 0 is 20 July.
    expect(words).toContain('Hours over 77 °F in Attic');
    expect(words).toContain(
      'Without shading there are 24 hours on 1 day, with it there is no such',
    );
    expect(words).toContain('the first such day is 20 July, the last 20 July');
    const { when, what } = readDay(english, data!, 200);
    expect(when).toBe('Monday 20 July');
    expect(what.replaceAll('\u00a0', ' ')).toBe(
      'without 24 hours (up to 80.6 °F), with 0 hours (up to 68.0 °F)',
    );
  });

  it('say the same in German', async () => {
    const data = (await loadRoomYear(source(hot, cool), 'room', 25, 'imperial'))!;
    const words = describeDays(german, data, 'Dach').replaceAll('\u00a0', ' ');
    expect(words).toContain('Ohne Sonnenschutz: 24 Stunden an 1 Tag');
    expect(words).toContain('ist der erste solche Tag der 20. Juli, der letzte der 20. Juli');
    const { when, what } = readDay(german, data, 200);
    expect(when).toMatch(/^Montag,? 20\. Juli$/);
    expect(what.replaceAll('\u00a0', ' ')).toBe(
      'ohne Sonnenschutz 24 Stunden (bis 80,6 °F), mit 0 Stunden (bis 68,0 °F)',
    );
  });

  it('say so where it is never too hot', async () => {
    const data = await loadRoomYear(source(cool, cool), 'room', 25, 'metric');
    expect(describeDays(english, data!, 'Attic').replaceAll('\u00a0', ' ')).toBe(
      'Attic is never over 25 °C, neither without shading nor with it.',
    );
  });

  it('rank the hours as counting them does', async () => {
    const data = (await loadRoomYear(source(values, cool), 'room', 25, 'metric'))!;
    for (const limit of [5, 20, 25, 28.9, 29, 40]) {
      const counted = values.filter((value) => value > limit).length;
      expect(hoursAbove(data.without.ranked, limit)).toBe(counted);
    }
    const table = durationTable(english, data);
    expect([table.cell(0, 0), table.cell(0, 1)]).toEqual([1, Math.max(...values)]);
    expect(table.cell(HOURS - 1, 1)).toBe(Math.min(...values));
    const over = values.filter((value) => value > 25).length;
    expect(shownHours(data)).toBeGreaterThan(over);
    expect(describeDuration(english, data, 'Attic').replaceAll('\u00a0', ' ')).toContain(
      `over 25 °C, ${over.toLocaleString('en')} hours without shading and 0 hours with it`,
    );
    // From the warmest hour at the left down to the one at the right end.
    const ends = durationLine(data.without.ranked, 1000, 400, (t) => t).split(/[ML]/);
    expect(ends[1]).toMatch(/^0,/);
    // Paths are written with three decimals.
    expect(Number(ends[1].split(',')[1])).toBeCloseTo(Math.max(...values), 3);
    expect(ends.at(-1)).toMatch(/^400,/);
  });

  it('are not there where the engine has no such room', async () => {
    const none: RoomSource = { ...source(hot, cool), roomHourly: async () => undefined };
    expect(await loadRoomYear(none, 'gone', 25, 'metric')).toBeUndefined();
  });
});
