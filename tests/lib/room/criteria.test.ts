import { describe, expect, it } from 'vitest';
import {
  adaptiveComfort,
  adaptiveHours,
  bedroomNights,
  dailyMeans,
  degreeHours,
  dinDegreeHours,
  hotEpisodes,
  runningMeans,
  shareAbove,
} from '../../../lib/room/index.ts';
import { buildCalendar, DAYS, HOURS } from '../../../lib/time/index.ts';
import { calendar } from './agreement.ts';

/** A year at 20 C with some hours set. */
function yearWith(hours: Record<number, number>): Float64Array {
  const year = new Float64Array(HOURS).fill(20);
  for (const [hour, t] of Object.entries(hours)) year[Number(hour)] = t;
  return year;
}

describe('criteria on years with known counts', () => {
  it('share of the year over a temperature', () => {
    const year = new Float64Array(HOURS).fill(24);
    year.fill(26, 4000, 4876);
    const result = shareAbove(year);
    // 876 of 8,760 hours are 10 %: at the limit, not over it.
    expect(result.hoursOver).toBe(876);
    expect(result.value).toBeCloseTo(0.1, 12);
    expect(result.met).toBe(true);
    year[5000] = 25.01;
    expect(shareAbove(year).met).toBe(false);
    year[5000] = 25;
    expect(shareAbove(year).hoursOver).toBe(876);
    expect(shareAbove(year, { limit: 0.05 }).met).toBe(false);
  });

  it('counts occupied hours only where asked', () => {
    const occupied = new Uint8Array(HOURS);
    occupied.fill(1, 100, 300);
    const result = shareAbove(yearWith({ 99: 30, 100: 30, 299: 30, 300: 30 }), { occupied });
    expect(result.hoursJudged).toBe(200);
    expect(result.hoursOver).toBe(2);
    expect(degreeHours(yearWith({ 99: 30, 100: 30 }), 26, occupied).value).toBeCloseTo(4, 12);
  });

  it('degree-hours over a region of DIN 4108-2', () => {
    const year = new Float64Array(HOURS).fill(20);
    year.fill(29, 4000, 4400);
    // 400 h x 4, 3 and 2 K.
    expect(dinDegreeHours(year, 'A').value).toBeCloseTo(1600, 9);
    expect(dinDegreeHours(year, 'B').value).toBeCloseTo(1200, 9);
    expect(dinDegreeHours(year, 'C').value).toBeCloseTo(800, 9);
    expect(dinDegreeHours(year, 'A').met).toBe(false);
    expect(dinDegreeHours(year, 'B').met).toBe(true);
  });

  it('bedroom nights by the local clock, summer time included', () => {
    // Vermont: UTC - 5, summer time from March to November. Hour 0 starts at local midnight, so the
    // standard clock of hour h is h mod 24 and in July the clock on the wall is an hour ahead:
    // 22:00 to 07:00 are the hours 21 to 5 of the standard day.
    const vermont = buildCalendar('America/New_York', 2023, 5);
    const july = 190 * 24;
    const winter = 20 * 24;
    const count = (hour: number) => bedroomNights(yearWith({ [hour]: 27 }), vermont).hoursOver;
    expect(count(july + 20)).toBe(0);
    expect(count(july + 21)).toBe(1);
    expect(count(july + 5)).toBe(1);
    expect(count(july + 6)).toBe(0);
    expect(count(winter + 21)).toBe(0);
    expect(count(winter + 22)).toBe(1);
    expect(count(winter + 6)).toBe(1);
    expect(count(winter + 7)).toBe(0);
    // 9 hours a night; 33 hours are just over 1 % of them.
    const result = bedroomNights(new Float64Array(HOURS).fill(27), calendar);
    expect(result.hoursJudged).toBe(9 * DAYS);
    const few = new Float64Array(HOURS).fill(20);
    for (let n = 0; n < 32; n++) few[n * 24] = 27;
    expect(bedroomNights(few, calendar).met).toBe(true);
    few[32 * 24] = 27;
    expect(bedroomNights(few, calendar).met).toBe(false);
  });
});

describe('adaptive comfort', () => {
  it('comfort temperature and bands by hand', () => {
    // EN 16798-1:2019, B.2.2: 0.33 x 15 + 18.8 = 23.75 C.
    expect(adaptiveComfort(15)).toBeCloseTo(23.75, 12);
    expect(adaptiveComfort(25)).toBeCloseTo(27.05, 12);
  });

  it('running mean by hand', () => {
    // A year at 10 C with one day of 20: 0.2 x 10 the day after, then 0.8 of that each day.
    const daily = new Float64Array(DAYS).fill(10);
    daily[100] = 20;
    const running = runningMeans(daily);
    expect(running[100]).toBeCloseTo(10, 9);
    expect(running[101]).toBeCloseTo(12, 9);
    expect(running[102]).toBeCloseTo(11.6, 9);
    expect(running[103]).toBeCloseTo(11.28, 9);
    // The year is closed: the last day is felt on the first.
    const end = new Float64Array(DAYS).fill(10);
    end[DAYS - 1] = 20;
    expect(runningMeans(end)[0]).toBeCloseTo(12, 6);
  });

  it('the seven-day formula of the standard gives the same within its own rounding', () => {
    // EN 16798-1:2019, eq. 2: (1 + .8 .6 .5 .4 .3 .2 weights over seven days) / 3.8, which
    // approximates the endless sum; on days that vary by 5 K the two stay within 0.4 K.
    const daily = Float64Array.from(
      { length: DAYS },
      (_, d) => 15 + 5 * Math.sin(d * 0.9) * Math.cos(d * 0.13),
    );
    const running = runningMeans(daily);
    const weights = [1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2];
    for (let day = 10; day < DAYS; day++) {
      const seven = weights.reduce((sum, w, i) => sum + w * daily[day - 1 - i], 0) / 3.8;
      expect(Math.abs(seven - running[day])).toBeLessThan(0.4);
    }
  });

  it('counts hours over and under the band, and only while the band holds', () => {
    const outdoor = new Float64Array(HOURS).fill(15);
    // Comfort 23.75: category II from 19.75 to 26.75, I to 25.75, III to 27.75.
    const year = new Float64Array(HOURS).fill(23);
    year.fill(26, 1000, 1010);
    year.fill(27, 1010, 1015);
    year.fill(28, 1015, 1017);
    year.fill(19, 1017, 1020);
    const hours = (category: 'I' | 'II' | 'III') =>
      adaptiveHours(year, outdoor, calendar, category).hoursOver;
    expect(hours('I')).toBe(17);
    expect(hours('II')).toBe(7);
    expect(hours('III')).toBe(2);
    const second = adaptiveHours(year, outdoor, calendar, 'II');
    expect(second.hoursUnder).toBe(3);
    expect(second.worst).toBeCloseTo(1.25, 9);
    expect(second.hoursJudged).toBe(HOURS);
    expect(second.value).toBeCloseTo(7 / HOURS, 12);
    // Too cold outside for the band: nothing is judged.
    const cold = adaptiveHours(year, new Float64Array(HOURS).fill(9), calendar, 'II');
    expect(cold.hoursJudged).toBe(0);
    expect(cold.value).toBe(0);
  });

  it('daily means follow the local day', () => {
    const outdoor = Float64Array.from({ length: HOURS }, (_, hour) => Math.floor(hour / 24));
    const means = dailyMeans(outdoor, calendar);
    expect(means[0]).toBe(0);
    expect(means[200]).toBe(200);
  });
});

describe('hot spells', () => {
  it('finds the warmest hour, the hottest day and the longest run', () => {
    const year = new Float64Array(HOURS).fill(20);
    year.fill(26, 150 * 24 + 20, 151 * 24 + 4); // 8 hours over midnight
    year.fill(25.5, 180 * 24, 180 * 24 + 7); // 7 hours
    year[200 * 24 + 15] = 33; // one hour
    const found = hotEpisodes(year, calendar, 25);
    expect(found.warmestHour).toBe(200 * 24 + 15);
    expect(found.warmest).toBe(33);
    expect(found.longestRunHours).toBe(8);
    expect(found.longestRunStart).toBe(150 * 24 + 20);
    // Day 180 has 7 x 5.5 K above 20, more than 13 K on day 200 and 4 x 6 K on 150.
    expect(found.hottestDay).toBe(180);
    expect(found.hottestDayMean).toBeCloseTo(20 + (7 * 5.5) / 24, 9);
    expect(found.daysOver).toBe(4);
  });

  it('finds no run in a cool year', () => {
    expect(hotEpisodes(new Float64Array(HOURS).fill(20), calendar, 25).longestRunHours).toBe(0);
  });
});
