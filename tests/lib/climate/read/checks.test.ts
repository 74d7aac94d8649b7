import { describe, expect, it } from 'vitest';
import { checkYear, findTimeShift } from '../../../../lib/climate/index.ts';
import type { TypicalYear } from '../../../../lib/climate/index.ts';
import { verbatim } from '../../../../lib/problem/index.ts';
import { readStamp, readClock } from '../../../../lib/climate/read/stamps.ts';
import { findGaps } from '../../../../lib/climate/read/gaps.ts';
import { inventYear } from './synthetic.ts';

function typical(invented: ReturnType<typeof inventYear>): TypicalYear {
  return {
    source: { kind: 'table', name: 'invented', note: verbatim('invented') },
    latitude: invented.latitude,
    longitude: invented.longitude,
    elevation: 0,
    startUtc: invented.startUtc,
    ghi: Float64Array.from(invented.ghi),
    dni: Float64Array.from(invented.dni),
    dhi: Float64Array.from(invented.dhi),
    dryBulb: Float64Array.from(invented.dryBulb),
    wind: Float64Array.from(invented.wind),
    messages: [],
  };
}

const year = typical(inventYear(5, 11));
const level = (of: TypicalYear, id: string) => checkYear(of).find((c) => c.id === id)?.level;

describe('the sun in a file', () => {
  // The years are made with suncalc at every sixth of an hour, so their shift is known exactly.
  // Hourly means and day-long clouds leave the method well inside 2 minutes.
  it.each([-7, -1, -0.5, -0.25, 0, 0.25, 0.5, 1, 5.5, 11])('is found %f h late', (hours) => {
    const shift = findTimeShift({ ...year, startUtc: year.startUtc + hours });
    expect(Math.abs(shift.minutes - hours * 60)).toBeLessThan(2);
    expect(shift.confidence).toBeGreaterThan(0.5);
  });

  it('is not told from a year without clear days', () => {
    // Every hour's light is drawn anew: no day follows a clear course.
    let state = 1;
    const noise = () => (state = (state * 16807) % 2147483647) / 2147483647;
    const ghi = year.ghi.map((v) => v * noise());
    expect(findTimeShift({ ...year, ghi }).confidence).toBeLessThan(0.5);
  });

  it('is told as a warning from ten minutes on, with the figure', () => {
    const late = checkYear({ ...year, startUtc: year.startUtc + 1 });
    const time = late.find((c) => c.id === 'time');
    expect(time?.level).toBe('warning');
    expect(time?.sentence.english).toMatch(/runs (59|60|61) min late/);
    // The other checks go by the file's own sun, so that one fault is told once.
    expect(late.filter((c) => c.level !== 'ok')).toHaveLength(1);
    expect(level({ ...year, startUtc: year.startUtc + 0.1 }, 'time')).toBe('ok');
  });
});

describe('checks against the sun', () => {
  it('pass a sound year', () => {
    expect(checkYear(year).map((c) => c.level)).toEqual(['ok', 'ok', 'ok', 'ok']);
  });

  it('refuse light at night', () => {
    expect(level({ ...year, ghi: year.ghi.map((v) => Math.max(v, 40)) }, 'night')).toBe('error');
    // A thousandth of the year's light is a street lamp, not a fault.
    expect(level({ ...year, ghi: year.ghi.map((v) => Math.max(v, 0.3)) }, 'night')).toBe('ok');
  });

  it('warn of irradiances that add up badly, refuse those that do not', () => {
    const scaled = (f: number) => ({ ...year, dni: year.dni.map((v) => v * f) });
    expect(level(scaled(1.05), 'balance')).toBe('ok');
    expect(level(scaled(1.3), 'balance')).toBe('warning');
    expect(level(scaled(2.2), 'balance')).toBe('error');
    expect(checkYear(scaled(2.2), false).some((c) => c.id === 'balance')).toBe(false);
  });

  it('refuse more sun than reaches the atmosphere', () => {
    const scaled = (f: number) => ({ ...year, ghi: year.ghi.map((v) => v * f) });
    expect(level(scaled(2.5), 'clearness')).toBe('error');
    expect(level({ ...year, latitude: -44 }, 'clearness')).toBe('error');
  });
});

describe('stamps', () => {
  // Hours since 1 January of a year of 366 days, counted by hand: 31 + 29 days before 1 March.
  const march = 60 * 24;
  it.each([
    ['2005-03-01 13:00', 'ymd', march + 13],
    ['2005-03-01T13:30:00Z', 'ymd', march + 13.5],
    ['20050301:1300', 'ymd', march + 13],
    ['20050301:0010', 'ymd', march + 1 / 6],
    ['200503011300', 'ymd', march + 13],
    ['2005030113', 'ymd', march + 13],
    ['3/1/2005 1:00 PM', 'mdy', march + 13],
    ['3/1/2005 12:00 am', 'mdy', march],
    ['01.03.2005 24:00', 'dmy', march + 24],
    ['1.3. 13:00', 'dm', march + 13],
    ['03/01 13:00:00', 'md', march + 13],
    ['02/29 00:00', 'md', march - 24],
    ['2005-02-30 13:00', 'ymd', undefined],
    ['2005-13-01 13:00', 'ymd', undefined],
    ['2005-03-01 24:30', 'ymd', undefined],
    ['2005-03-01 13:60', 'ymd', undefined],
    ['2005-03-01', 'ymd', undefined],
    ['13/1/2005 13 pm', 'dmy', undefined],
    ['', 'ymd', undefined],
  ] as const)('%s by %s', (text, order, hours) => {
    const read = readStamp(text, order);
    if (hours === undefined) expect(read).toBeUndefined();
    else expect(read).toBeCloseTo(hours, 9);
  });

  it('of a day alone', () => {
    expect(['7:30', '0730', '730', '7', '24:00:00', '25:00', 'noon'].map(readClock)).toEqual([
      7.5,
      7.5,
      7.5,
      7,
      24,
      undefined,
      undefined,
    ]);
  });
});

describe('gaps', () => {
  it('are runs on the circle of the year', () => {
    const values = Float64Array.from([NaN, 1, NaN, NaN, 2, 3, NaN]);
    expect(findGaps(values)).toEqual([
      { first: 2, length: 2 },
      { first: 6, length: 2 },
    ]);
    expect(findGaps(Float64Array.from([1, 2]))).toEqual([]);
    expect(findGaps(new Float64Array(4).fill(NaN))).toEqual([{ first: 0, length: 4 }]);
  });
});
