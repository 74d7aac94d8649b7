import { DateTime, FixedOffsetZone } from 'luxon';
import { describe, expect, it } from 'vitest';
import { HOURS, STEPS, buildCalendar, clockText, dateText } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';

/**
 * Zones with their standard time in hours east of UTC (IANA time zone database): both hemispheres,
 * half and quarter hours, a shift of half an hour, a winter time that the database gives a minus
 * (Dublin, Casablanca for the month of fasting), and zones that never change.
 */
const ZONES: [string, number][] = [
  ['America/New_York', -5],
  ['America/St_Johns', -3.5],
  ['America/Santiago', -4],
  ['Etc/GMT+7', -7],
  ['Europe/Dublin', 0],
  ['Africa/Casablanca', 1],
  ['Asia/Kolkata', 5.5],
  ['Asia/Kathmandu', 5.75],
  ['Australia/Adelaide', 9.5],
  ['Australia/Lord_Howe', 10.5],
  ['Pacific/Chatham', 12.75],
  ['Pacific/Kiritimati', 14],
];
const COMMON = 2026;
const LEAP = 2028;
const QUARTER = 15 * 60_000;

const calendars = ZONES.flatMap(([zone, standard]) =>
  [COMMON, LEAP].map((year) => {
    const calendar = buildCalendar(zone, year, -standard);
    return { zone, year, standard, calendar };
  }),
);

/**
 * The instant of every step by another way than the program's: quarters of an hour one after the
 * other from the start on, those left out that luxon puts on 29 February in standard time.
 */
function instantsOf(year: number, startUtc: number, standard: number): number[] {
  const zone = FixedOffsetZone.instance(standard * 60);
  const leapDay = DateTime.fromObject({ year, month: 2, day: 29 }, { zone });
  const [from, to] = leapDay.isValid
    ? [leapDay.toMillis(), leapDay.plus({ days: 1 }).toMillis()]
    : [0, 0];
  const instants: number[] = [];
  for (let t = Date.UTC(year, 0) + startUtc * 4 * QUARTER; instants.length < STEPS; t += QUARTER) {
    if (t < from || t >= to) instants.push(t);
  }
  return instants;
}

/** Date and clock of a step as the calendar has them, and as luxon does. */
function ownTime(calendar: YearCalendar, step: number): string {
  return `${dateText(calendar, step)} ${clockText(calendar, step)}`;
}

function luxonTime(instant: number, zone: string, year: number): string {
  const local = DateTime.fromMillis(instant, { zone });
  const day = local.month === 2 && local.day === 29 ? 28 : local.day;
  return local.set({ day }).toFormat(`${year}-MM-dd HH:mm`);
}

// Dates and clock times are whole numbers: no tolerance.
describe.each(calendars)('the calendar of $zone in $year', ({ zone, year, standard, calendar }) => {
  const instants = instantsOf(year, -standard, standard);

  it('reads the clock that luxon reads', () => {
    // Every 29th step meets every quarter of the day; the days about each change come in full.
    const steps = new Set<number>();
    for (let step = 0; step < STEPS; step += 29) steps.add(step);
    for (let step = 1; step < STEPS; step++) {
      const follows = (calendar.quarter[step - 1] + 1) % 96 === calendar.quarter[step];
      if (follows) continue;
      for (let i = step - 96; i < step + 96; i++) if (i >= 0 && i < STEPS) steps.add(i);
    }
    const list = [...steps];
    expect(list.map((step) => ownTime(calendar, step))).toEqual(
      list.map((step) => luxonTime(instants[step], zone, year)),
    );
  });

  it('gives each day the quarter hours that luxon gives it', () => {
    const count = new Uint16Array(365);
    for (const day of calendar.day) count[day]++;
    const days = Array.from({ length: 365 }, (_, i) => DateTime.utc(COMMON).plus({ days: i }));
    const expected = days.map(({ month, day }) => {
      const noon = DateTime.fromObject({ year, month, day, hour: 12 }, { zone });
      const nextDay = noon.plus({ days: 1 }).startOf('day');
      return nextDay.diff(noon.startOf('day')).toMillis() / QUARTER;
    });
    // 29 February is cut by standard time: where summer time is on, its first hour stays, counted to
    // the 28th, and the first hour of 1 March goes.
    const february = DateTime.fromObject({ year, month: 2, day: 28 }, { zone }).offset / 60;
    if (year === LEAP && february > standard) {
      expected[58] += (february - standard) * 4;
      expected[59] -= (february - standard) * 4;
    }
    expect([...count]).toEqual(expected);
  });

  it('numbers months by the local date of each hour', () => {
    const hours = Array.from({ length: HOURS / 5 }, (_, i) => i * 5);
    expect(hours.map((hour) => calendar.month[hour])).toEqual(
      hours.map((hour) => DateTime.fromMillis(instants[hour * 4], { zone }).month),
    );
  });

  it('names the weekday of every date as luxon does', () => {
    const days = Array.from({ length: 365 }, (_, i) => DateTime.utc(COMMON).plus({ days: i }));
    expect([...calendar.weekday]).toEqual(
      days.map(({ month, day }) => DateTime.utc(year, month, day).weekday),
    );
  });

  it('knows standard time', () => {
    expect(calendar.standardOffset).toBe(standard);
    expect({ ...calendar }).toMatchObject({ zone, year, startUtc: -standard });
  });
});

describe('changes of the clock', () => {
  /** Clock times of a date, in order. */
  function clockOn(calendar: YearCalendar, date: string): string[] {
    return Array.from(calendar.day.keys())
      .filter((step) => dateText(calendar, step) === date)
      .map((step) => clockText(calendar, step));
  }
  /** How often each of the clock times comes on a date. */
  function times(zone: string, startUtc: number, date: string, wanted: string[]): number[] {
    const clock = clockOn(buildCalendar(zone, 2026, startUtc), date);
    return wanted.map((time) => clock.filter((t) => t === time).length);
  }
  const EARLY = ['00:45', '01:00', '01:30', '01:45', '02:00', '02:15', '02:30', '02:45', '03:00'];

  // Dates of 2026 by the rules in force: United States, second Sunday of March to first of November
  // (Energy Policy Act of 2005, sec. 110); New South Wales, first Sunday of October to first of April
  // (Standard Time Act 1987), with half an hour on Lord Howe Island.
  it('New York leaves out 02:00 to 03:00 on 8 March and repeats 01:00 to 02:00 on 1 November', () => {
    expect(times('America/New_York', 5, '2026-03-08', EARLY)).toEqual([1, 1, 1, 1, 0, 0, 0, 0, 1]);
    expect(times('America/New_York', 5, '2026-11-01', EARLY)).toEqual([1, 2, 2, 2, 1, 1, 1, 1, 1]);
  });

  it('Sydney repeats 02:00 to 03:00 on 5 April and leaves it out on 4 October', () => {
    expect(times('Australia/Sydney', -10, '2026-04-05', EARLY)).toEqual([
      1, 1, 1, 1, 2, 2, 2, 2, 1,
    ]);
    expect(times('Australia/Sydney', -10, '2026-10-04', EARLY)).toEqual([
      1, 1, 1, 1, 0, 0, 0, 0, 1,
    ]);
  });

  it('Lord Howe Island shifts by half an hour', () => {
    expect(times('Australia/Lord_Howe', -10.5, '2026-04-05', EARLY)).toEqual([
      1, 1, 2, 2, 1, 1, 1, 1, 1,
    ]);
    expect(times('Australia/Lord_Howe', -10.5, '2026-10-04', EARLY)).toEqual([
      1, 1, 1, 1, 0, 0, 1, 1, 1,
    ]);
  });

  it('Kolkata never shifts', () => {
    const { quarter } = buildCalendar('Asia/Kolkata', 2026, -5.5);
    expect(quarter.every((q, step) => q === step % 96)).toBe(true);
  });
});

describe('years that do not start at midnight', () => {
  it('begins on the last evening of December or in the first morning, and wraps round', () => {
    // UTC hours 2 and 8 of 1 January are 21:00 of 31 December and 03:00 in New York.
    expect(ownTime(buildCalendar('America/New_York', 2026, 2), 0)).toBe('2026-12-31 21:00');
    const late = buildCalendar('America/New_York', 2026, 8);
    expect(ownTime(late, 0)).toBe('2026-01-01 03:00');
    expect(ownTime(late, STEPS - 1)).toBe('2026-01-01 02:45');
  });

  it('takes the start to the nearest quarter of an hour', () => {
    expect(buildCalendar('America/New_York', 2026, 5.1).quarter).toEqual(
      buildCalendar('America/New_York', 2026, 5).quarter,
    );
    expect(ownTime(buildCalendar('America/New_York', 2026, 5.2), 0)).toBe('2026-01-01 00:15');
    expect(ownTime(buildCalendar('Etc/GMT-1', 2026, -1.3239), 0)).toBe('2026-12-31 23:45');
  });
});
