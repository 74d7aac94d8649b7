import { describe, expect, it } from 'vitest';
import { HOURS, STEPS, buildCalendar, dayOfYear } from '../../../../lib/time/index.ts';
import { clearestDay, hottestDay } from '../../../../src/app/charts/dayFinder.ts';
import { blindRuns, clockMarks } from '../../../../src/app/charts/dayLayout.ts';
import { coveredSpans, describeDay, describeSheet } from '../../../../src/app/charts/describe.ts';
import { sheetKind } from '../../../../src/app/charts/quantities.ts';
import { hourAt, hoursOfDay, sheetGrid } from '../../../../src/app/charts/sheetGrid.ts';
import { shownUnit } from '../../../../src/app/charts/shownUnit.ts';
import { stepsOfHours } from '../../../../src/app/charts/dayLayout.ts';
import {
  actionText,
  dayText,
  hourText,
  longDayText,
  spanText,
} from '../../../../src/app/charts/words.ts';
import { Words } from '../../../../src/words/index.ts';

const words = await Words.load('en', ['charts', 'year']);
const german = await Words.load('de', ['charts', 'year']);
const calendar = buildCalendar('America/New_York', 2026, 5);
const grid = sheetGrid(calendar);
const JUNE_21 = dayOfYear(6, 21);
const plain = (text: string) => text.replace(/\u00a0/g, ' ');

describe('dates in words', () => {
  it('name days, spans and hours', () => {
    expect(dayText(words, JUNE_21)).toBe('21 June');
    expect(longDayText(words, calendar, JUNE_21)).toBe('Sunday 21 June'); // a Sunday in 2026
    expect(spanText(words, { from: JUNE_21 - 20, to: JUNE_21 })).toBe('1 to 21 June, 21 days');
    expect(spanText(words, { from: JUNE_21, to: dayOfYear(7, 2) })).toBe(
      '21 June to 2 July, 12 days',
    );
    expect(spanText(words, { from: 5, to: 5 })).toBe('6 January, 1 day');
    expect(hourText(words, calendar, hourAt(grid, JUNE_21, 13))).toBe('13:00 to 14:00');
    expect(hourText(words, calendar, hourAt(grid, JUNE_21, 23))).toBe('23:00 to 24:00');
  });

  it('end the hour before a clock change by the old clock', () => {
    expect(hourText(words, calendar, hourAt(grid, dayOfYear(3, 8), 1))).toBe('01:00 to 02:00');
  });

  it('are written in German', () => {
    expect(longDayText(german, calendar, JUNE_21)).toBe('Sonntag, 21. Juni');
    expect(spanText(german, { from: JUNE_21 - 20, to: JUNE_21 })).toBe('1. bis 21. Juni, 21 Tage');
    expect(spanText(german, { from: JUNE_21, to: dayOfYear(7, 2) })).toBe(
      '21. Juni bis 2. Juli, 12 Tage',
    );
    expect(hourText(german, calendar, hourAt(grid, JUNE_21, 9))).toBe('09:00 bis 10:00 Uhr');
  });
});

describe('what a year sheet says', () => {
  const heat = shownUnit(words, 'heat', false, 'metric');

  it('gives sum, month and strongest hour of a gain', () => {
    const values = new Float64Array(HOURS);
    for (let day = dayOfYear(6, 1); day <= dayOfYear(6, 30); day++) {
      values[hourAt(grid, day, 16)] = 300;
    }
    values[hourAt(grid, JUNE_21, 17)] = 500;
    values[hourAt(grid, 10, 12)] = 500;
    const text = plain(
      describeSheet(words, sheetKind('without'), 'West door', heat, values, calendar, grid),
    );
    // 30 x 300 + 2 x 500 Wh, of which 9,500 in June.
    expect(text).toContain('The year brings 10 kWh/m² of glass, most of it in June (95 %)');
    expect(text).toContain('the strongest hour is 11 January, 12:00 to 13:00 with 500 W/m²');
    const glas = shownUnit(german, 'heat', false, 'metric');
    expect(
      plain(describeSheet(german, sheetKind('without'), 'Westtür', glas, values, calendar, grid)),
    ).toBe(
      'Solargewinn ohne Sonnenschutz, Westtür: Stunde für Stunde über ein typisches Jahr. ' +
        'Das Jahr bringt 10 kWh/m² Glas, das meiste davon im Juni (95 %); ' +
        'stärkste Stunde: 11. Januar, 12:00 bis 13:00 Uhr mit 500 W/m² Glas.',
    );
  });

  it('counts covered hours and hours over the limit', () => {
    const share = shownUnit(words, 'share', false, 'metric');
    const values = new Float64Array(HOURS);
    values[5000] = 50;
    values[5001] = 100;
    expect(
      plain(describeSheet(words, sheetKind('lowered'), 'West door', share, values, calendar, grid)),
    ).toContain('covered in 2 of 8,760 hours, on average 75 % of it; most in July');
    const kelvin = shownUnit(words, 'excess', false, 'metric');
    expect(
      plain(describeSheet(words, sheetKind('overWith'), 'Studio', kelvin, values, calendar, grid)),
    ).toContain('over the limit in 2 of 8,760 hours, by 100.0 K at most');
  });

  it('does not invent a strongest hour where there is nothing', () => {
    const text = describeSheet(
      words,
      sheetKind('stopped'),
      'the whole house',
      heat,
      new Float64Array(HOURS),
      calendar,
      grid,
    );
    expect(text).toContain('It is nothing in every hour.');
  });
});

describe('what a day strip says', () => {
  const hours = hoursOfDay(calendar, JUNE_21);
  const series = (at: Record<number, number>, other = 0) => {
    const values = new Float64Array(HOURS).fill(other);
    for (const [clock, value] of Object.entries(at)) {
      values[hourAt(grid, JUNE_21, Number(clock))] = value;
    }
    return values;
  };

  it('sums the day, names the strongest hour and when glass is covered', () => {
    const covered = new Float32Array(STEPS);
    const step = hourAt(grid, JUNE_21, 15) * 4;
    covered.fill(1, step + 1, step + 9);
    const text = plain(
      describeDay(
        words,
        {
          subject: 'West door',
          date: 'Sunday 21 June',
          hours,
          without: series({ 15: 400, 16: 600 }),
          with: series({ 15: 100, 16: 150 }),
          outdoor: series({ 4: 12, 15: 31.5 }, 20),
          covered,
          room: { without: series({ 18: 29 }, 22), with: series({ 18: 24.5 }, 22) },
          roomName: 'Studio',
          heat: shownUnit(words, 'heat', false, 'metric'),
          temperature: shownUnit(words, 'temperature', false, 'metric'),
        },
        calendar,
      ),
    );
    expect(text).toContain('1.0 kWh/m² of glass without shading and 0.3 with it (75 % stopped)');
    expect(text).toContain('the strongest hour is 16:00 to 17:00 with 600 W/m² of glass');
    expect(text).toContain('Glass is covered from 15:15 to 17:15.');
    expect(text).toContain('Studio gets up to 29.0 °C without shading and 24.5 °C with it.');
    expect(text).toContain('Outdoors it is 12.0 to 31.5 °C.');
  });

  it('parts covered spans that an open quarter hour lies between', () => {
    const covered = new Float32Array(STEPS);
    const step = hours[10] * 4;
    covered[step] = covered[step + 1] = covered[step + 3] = 0.85;
    expect(coveredSpans(covered, hours)).toEqual([
      [step, step + 1],
      [step + 3, step + 3],
    ]);
  });
});

describe('days one click away', () => {
  it('find the clearest day, not the longest', () => {
    // A sky of constant clearness but for one clearer day: sums alone would choose the last.
    const extraterrestrial = Float64Array.from({ length: 365 }, (_, day) => 8000 + 60 * day);
    const ghi = new Float64Array(HOURS);
    for (let hour = 0; hour < HOURS; hour++) {
      const day = calendar.day[hour * 4];
      const clearness = day === dayOfYear(3, 17) ? 0.71 : 0.7;
      ghi[hour] = (extraterrestrial[day] * clearness) / hoursOfDayCount(day);
    }
    expect(clearestDay(calendar, ghi, extraterrestrial, 3, 20)).toBe(dayOfYear(3, 17));
  });

  it('reach over the turn of the year and stay within a week', () => {
    const ghi = new Float64Array(HOURS).fill(1);
    ghi[hourAt(grid, 3, 12)] = 50;
    ghi[hourAt(grid, 20, 12)] = 900;
    const even = new Float64Array(365).fill(1000);
    expect(clearestDay(calendar, ghi, even, 12, 30)).toBe(3);
  });

  it('find the day of the warmest hour', () => {
    const outdoor = new Float64Array(HOURS).fill(15);
    outdoor[hourAt(grid, dayOfYear(7, 24), 15)] = 34;
    expect(hottestDay(calendar, outdoor)).toBe(dayOfYear(7, 24));
  });

  const counts = Array.from({ length: 365 }, (_, day) => hoursOfDay(calendar, day).length);
  const hoursOfDayCount = (day: number) => counts[day];
});

describe('the blind of a day', () => {
  it('is cut into runs of one position', () => {
    const covered = Float32Array.from([0, 0, 1, 1, 0.5, 0.5, 0]);
    const names = ['up', 'up', 'down', 'slats at 45°', 'slats at 45°', 'slats at 45°', 'up'];
    const runs = blindRuns([0, 1, 2, 3, 4, 5, 6], covered, (step) => names[step]);
    expect(runs.map(({ from, to, name }) => [from, to, name])).toEqual([
      [0, 2, 'up'],
      [2, 3, 'down'],
      [3, 4, 'slats at 45°'],
      [4, 6, 'slats at 45°'],
      [6, 7, 'up'],
    ]);
  });

  it('is named as far as the blind can do it', () => {
    expect(actionText(words, { kind: 'raise' }, true)).toBe('up');
    expect(actionText(words, { kind: 'lower', share: 0.85 }, false)).toBe('85 % down');
    expect(actionText(words, { kind: 'tilt', angle: 45 }, true)).toBe('slats at 45°');
    expect(actionText(words, { kind: 'tilt', angle: 45 }, false)).toBe('down');
    expect(actionText(words, { kind: 'track', share: 0.5 }, true)).toBe(
      '50 % down, slats follow the sun',
    );
    expect(actionText(words, { kind: 'tilt', angle: 45, share: 0.5 }, true)).toBe(
      '50 % down, slats at 45°',
    );
    expect(actionText(german, { kind: 'tilt', angle: 45 }, true)).toBe('Lamellen auf 45°');
  });

  it('has its clock marks where the clock is, also on days of 23 and 25 hours', () => {
    const marks = (month: number, day: number) => {
      const steps = stepsOfHours(hoursOfDay(calendar, dayOfYear(month, day)));
      return clockMarks(calendar, steps, 6).map(({ index, text }) => `${text}@${index}`);
    };
    expect(marks(6, 21)).toEqual(['0:00@0', '6:00@24', '12:00@48', '18:00@72', '24:00@96']);
    expect(marks(3, 8)).toEqual(['0:00@0', '6:00@20', '12:00@44', '18:00@68', '24:00@92']);
    expect(marks(11, 1)).toEqual(['0:00@0', '6:00@28', '12:00@52', '18:00@76', '24:00@100']);
  });
});

describe('shown units', () => {
  // NIST SP 811 (2008), appendix B.8: 1 Btu/(h ft2) is 3.154591 W/m2, 1 Btu/h is 0.2930711 W.
  it('convert heat by the published factors, and sum to thousands', () => {
    const glass = shownUnit(words, 'heat', false, 'imperial');
    expect(glass.show(3.154591)).toBeCloseTo(1, 6);
    expect(glass.symbol).toBe('Btu/h ft² of glass');
    expect(glass.sum!.symbol).toBe('kBtu/ft² of glass');
    const house = shownUnit(words, 'heat', true, 'imperial');
    expect(house.show(293.0711)).toBeCloseTo(1000, 3);
    expect(house.show(293.0711) * house.sum!.size).toBeCloseTo(1, 6);
  });

  it('do not move a temperature difference by 32', () => {
    expect(shownUnit(words, 'excess', true, 'imperial').show(5)).toBeCloseTo(9, 9);
    expect(shownUnit(words, 'temperature', true, 'imperial').show(25)).toBeCloseTo(77, 9);
  });
});
