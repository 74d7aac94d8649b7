import { describe, expect, it } from 'vitest';
import { compileSchedule, runSchedule } from '../../../lib/schedule/index.ts';
import type { RuleConditions } from '../../../lib/schedule/index.ts';
import { STEPS, buildCalendar } from '../../../lib/time/index.ts';
import { localTimes } from './localClock.ts';
import { rule, schedule, stillSensors } from './samples.ts';

const DAY = 96;
const HOUR_MS = 3_600_000;
const still = stillSensors();

interface Place {
  zone: string;
  year: number;
  startUtc: number;
}

/** 1 at the steps at which a rule of these conditions has the blind down. */
function downSteps({ zone, year, startUtc }: Place, when: RuleConditions): Uint8Array {
  const calendar = buildCalendar(zone, year, startUtc);
  const state = new Uint8Array(STEPS);
  runSchedule(compileSchedule(schedule([rule(when)]), calendar), still, {}, state);
  return state;
}

/** The step that begins at an instant; for years without 29 February. */
function stepAt({ year, startUtc }: Place, instant: string): number {
  const first = Date.UTC(year, 0, 1) + startUtc * HOUR_MS;
  return (Date.parse(instant) - first) / (HOUR_MS / 4);
}

const newYork = { zone: 'America/New_York', year: 2026, startUtc: 5 };
const stJohns = { zone: 'America/St_Johns', year: 2026, startUtc: 3.5 };
const lordHowe = { zone: 'Australia/Lord_Howe', year: 2026, startUtc: -10.5 };
const sydney = { zone: 'Australia/Sydney', year: 2026, startUtc: -10 };
const kolkata = { zone: 'Asia/Kolkata', year: 2026, startUtc: -5.5 };

describe('14:30 to 19:45 by the local clock, in UTC of the day before and of the day of a change', () => {
  const when = { clock: { from: 870, to: 1185 } };

  // Offsets by law in 2026: New York -5/-4 h, changes 8 March and 1 November; St John's -3.5/-2.5 h
  // on the same days; Lord Howe +10.5/+11 h, changes 5 April and 4 October; Sydney +10/+11 h on the
  // same days; India +5.5 h all year (IANA time zone database).
  it.each([
    { place: newYork, down: '2026-03-07T19:30Z', up: '2026-03-08T00:45Z' },
    { place: newYork, down: '2026-03-08T18:30Z', up: '2026-03-08T23:45Z' },
    { place: newYork, down: '2026-10-31T18:30Z', up: '2026-10-31T23:45Z' },
    { place: newYork, down: '2026-11-01T19:30Z', up: '2026-11-02T00:45Z' },
    { place: stJohns, down: '2026-03-07T18:00Z', up: '2026-03-07T23:15Z' },
    { place: stJohns, down: '2026-03-08T17:00Z', up: '2026-03-08T22:15Z' },
    { place: stJohns, down: '2026-11-01T18:00Z', up: '2026-11-01T23:15Z' },
    { place: lordHowe, down: '2026-04-04T03:30Z', up: '2026-04-04T08:45Z' },
    { place: lordHowe, down: '2026-04-05T04:00Z', up: '2026-04-05T09:15Z' },
    { place: lordHowe, down: '2026-10-03T04:00Z', up: '2026-10-03T09:15Z' },
    { place: lordHowe, down: '2026-10-04T03:30Z', up: '2026-10-04T08:45Z' },
    { place: sydney, down: '2026-04-04T03:30Z', up: '2026-04-04T08:45Z' },
    { place: sydney, down: '2026-04-05T04:30Z', up: '2026-04-05T09:45Z' },
    { place: sydney, down: '2026-10-04T03:30Z', up: '2026-10-04T08:45Z' },
    { place: kolkata, down: '2026-03-08T09:00Z', up: '2026-03-08T14:15Z' },
    { place: kolkata, down: '2026-11-01T09:00Z', up: '2026-11-01T14:15Z' },
  ])('$place.zone: down at $down, up at $up', ({ place, down, up }) => {
    const state = downSteps(place, when);
    const [from, to] = [stepAt(place, down), stepAt(place, up)];
    expect(to - from).toBe(21);
    expect([...state.subarray(from - 1, to + 1)]).toEqual([0, ...new Array(21).fill(1), 0]);
  });

  it('an hour that is left out never holds, one that comes twice holds twice', () => {
    const twoToThree = downSteps(newYork, { clock: { from: 120, to: 180 } });
    const spring = stepAt(newYork, '2026-03-08T05:00Z'); // local midnight
    expect(sum(twoToThree.subarray(spring, spring + 23 * 4))).toBe(0);
    const oneToTwo = downSteps(newYork, { clock: { from: 60, to: 120 } });
    const autumn = stepAt(newYork, '2026-11-01T04:00Z');
    expect(sum(oneToTwo.subarray(autumn, autumn + 25 * 4))).toBe(8);
  });
});

/** Places and years whose every step is held against luxon, one step in five to save time. */
const checked: Place[] = [
  { zone: 'America/St_Johns', year: 2027, startUtc: 3.5 },
  { zone: 'Australia/Lord_Howe', year: 2028, startUtc: -10.5 },
  { zone: 'Asia/Kolkata', year: 2028, startUtc: 0 },
  { zone: 'Asia/Kathmandu', year: 2026, startUtc: -5.5 },
  { zone: 'America/Santiago', year: 2024, startUtc: 4 },
];
const everyFifth = Array.from({ length: STEPS / 5 }, (_, i) => 5 * i);

describe.each(checked)('$zone $year from $startUtc h UTC, against luxon', (place) => {
  const times = localTimes(place.zone, place.year, place.startUtc, everyFifth);
  const cases: [string, RuleConditions, (t: (typeof times)[number]) => boolean][] = [
    ['weekdays', { weekdays: [1, 3, 6] }, (t) => [1, 3, 6].includes(t.weekday)],
    ['months', { months: [2, 3, 12] }, (t) => [2, 3, 12].includes(t.month)],
    [
      'dates over New Year',
      { dates: { from: '11-15', to: '02-29' } },
      (t) => t.month <= 2 || t.month === 12 || (t.month === 11 && t.day >= 15),
    ],
    [
      'a night that belongs to the weekday it begins on',
      { weekdays: [5], clock: { from: 1350, to: 420 } },
      (t) => (t.weekday === 5 && t.minutes >= 1350) || (t.before.weekday === 5 && t.minutes < 420),
    ],
    [
      'a night that belongs to the last day of a span',
      { dates: { from: '06-30', to: '06-30' }, clock: { from: 1200, to: 300 } },
      (t) =>
        (t.month === 6 && t.day === 30 && t.minutes >= 1200) ||
        (t.month === 7 && t.day === 1 && t.minutes < 300),
    ],
    [
      'a painted grid, whose nights stay in their month',
      {
        grid: [
          { month: 4, from: 1320, to: 360 },
          { month: 10, from: 0, to: 0 },
        ],
      },
      (t) => t.month === 10 || (t.month === 4 && (t.minutes >= 1320 || t.minutes < 360)),
    ],
  ];

  it.each(cases)('%s', (_, when, holds) => {
    const state = downSteps(place, when);
    const expected = times.map((t) => Number(holds(t)));
    expect(sum(expected)).toBeGreaterThan(0);
    expect(sum(expected)).toBeLessThan(expected.length);
    expect(expected.findIndex((down, i) => down !== state[everyFifth[i]])).toBe(-1);
  });
});

describe('spans by hand, in a zone without clock changes', () => {
  const down = (when: RuleConditions) => downSteps(kolkata, when);

  it.each([
    ['midnight to midnight is all day', { from: 0, to: 1440 }, 96],
    ['equal times are all day', { from: 600, to: 600 }, 96],
    ['24:00 to 24:00 is all day', { from: 1440, to: 1440 }, 96],
    ['24:00 to 00:00 is all day', { from: 1440, to: 0 }, 96],
    ['24:00 is midnight', { from: 1440, to: 60 }, 4],
    ['to 00:00 is to the end of the day', { from: 1380, to: 0 }, 4],
    ['past midnight', { from: 1380, to: 60 }, 8],
  ])('%s', (_, clock, quarters) => {
    expect(sum(down({ clock }))).toBe(365 * quarters);
  });

  it.each([
    ['one day', { from: '07-04', to: '07-04' }, 1],
    ['29 February is the 28th', { from: '02-29', to: '02-29' }, 1],
    ['up to 29 February', { from: '02-01', to: '02-29' }, 28],
    ['over New Year', { from: '12-31', to: '01-01' }, 2],
    ['the whole year', { from: '01-01', to: '12-31' }, 365],
    ['the day before onwards', { from: '07-05', to: '07-04' }, 365],
  ])('%s', (_, dates, days) => {
    expect(sum(down({ dates }))).toBe(days * DAY);
  });

  it('a year that starts on another day than the local one wraps round its end', () => {
    // From 00:00 UTC the local year of India starts at 05:30: its first hours stand at the end.
    const state = downSteps({ ...kolkata, startUtc: 0 }, { dates: { from: '01-01', to: '01-01' } });
    expect(sum(state.subarray(0, 96 - 22))).toBe(96 - 22);
    expect(sum(state.subarray(STEPS - 22))).toBe(22);
    expect(sum(state)).toBe(96);
  });
});

function sum(values: ArrayLike<number>): number {
  return Array.from(values).reduce((total, x) => total + x, 0);
}
