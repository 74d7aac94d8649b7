import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultProject } from '../../../lib/project/index.ts';
import {
  bedroomNights,
  degreeHours,
  dinDegreeHours,
  hotEpisodes,
  shareAbove,
} from '../../../lib/room/index.ts';
import type { RoomOutcome } from '../../../lib/study/index.ts';
import { HOURS, buildCalendar } from '../../../lib/time/index.ts';
import { lossUnit, roomFigure, storeUnit, volumeUnit } from '../../../src/app/rooms/units.ts';
import {
  criterionTitle,
  heatingWords,
  roomVerdict,
  shareText,
} from '../../../src/app/rooms/verdict.ts';
import { Words } from '../../../src/words/index.ts';

const english = await Words.load('en', ['rooms']);
const german = await Words.load('de', ['rooms']);
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const calendar = buildCalendar('UTC', 2026, 0);
const { settings } = defaultProject();

/** A year with so many hours at 30 C and the rest at 20 C. */
const year = (hot: number) =>
  Float64Array.from({ length: HOURS }, (_, hour) => (hour < hot ? 30 : 20));

type Judge = (operative: Float64Array) => RoomOutcome['chosen'];

function outcome(hot: number, judge: Judge, heatingKWh = 0): RoomOutcome {
  const operative = year(hot);
  return {
    hotHours: hot,
    hotHoursOccupied: 0,
    chosen: judge(operative),
    criteria: [],
    episodes: hotEpisodes(operative, calendar, 25),
    heatingKWh,
    coolingKWh: 0,
  };
}

const room = (bare: number, shaded: number, judge: Judge) => ({
  name: 'Studio',
  without: outcome(bare, judge),
  with: outcome(shaded, judge),
});
const usual: Judge = (operative) => shareAbove(operative);

describe('the verdict of a room', () => {
  // 10 % of 8,760 hours are 876.
  it.each([
    [
      1543,
      748,
      'The limit of 10 % of the year is broken without and kept with (17.6 % without, 8.5 % with).',
    ],
    [
      800,
      100,
      'The limit of 10 % of the year is kept both without and with (9.1 % without, 1.1 % with).',
    ],
    [
      1543,
      877,
      'The limit of 10 % of the year is broken both without and with (17.6 % without, 10.0 % with).',
    ],
    [
      876,
      877,
      'The limit of 10 % of the year is kept without and broken with (10.0 % without, 10.0 % with).',
    ],
  ])('of %i and %i hours says whether the limit is kept', (bare, shaded, expected) => {
    const { limit } = roomVerdict(english, room(bare, shaded, usual), settings, 'metric');
    expect(plain(limit)).toBe(expected);
  });

  it('begins with the hours', () => {
    const { hours } = roomVerdict(english, room(1543, 748, usual), settings, 'metric');
    expect(plain(hours)).toBe('Studio: 1,543 hours over 25 °C without shading, 748 with.');
  });

  it('speaks of one hour as one', () => {
    const { hours } = roomVerdict(english, room(1, 0, usual), settings, 'metric');
    expect(plain(hours)).toBe('Studio: 1 hour over 25 °C without shading, 0 with.');
  });

  it('says so where it is never too hot', () => {
    const { hours } = roomVerdict(english, room(0, 0, usual), settings, 'metric');
    expect(plain(hours)).toBe('Studio is never over 25 °C, neither without shading nor with it.');
  });

  it('is in the units of the page', () => {
    // 25 C is 77 F, 26 C 78.8 F; 1,200 Kh are 2,160 F h: NIST SP 811 (2008), B.8 and 8.5.
    const words = roomVerdict(english, room(10, 5, usual), settings, 'imperial');
    expect(plain(words.hours)).toContain('over 77 °F');
    const din = roomVerdict(
      english,
      room(500, 10, (t) => dinDegreeHours(t, 'B')),
      { ...settings, criterion: 'din4108' },
      'imperial',
    );
    expect(plain(din.limit)).toBe(
      // 500 h and 10 h, each 4 K over: 2,000 Kh and 40 Kh.
      'The limit of 2,160 °F h over 78.8 °F is broken without and kept with (3,600 °F h without, 72 °F h with).',
    );
  });

  it('of nights names the night hours and their temperature', () => {
    const { limit } = roomVerdict(
      english,
      room(2000, 0, (t) => bedroomNights(t, calendar)),
      settings,
      'metric',
    );
    expect(plain(limit)).toMatch(
      /^The limit of 1 % of the night hours over 26 °C is broken without/,
    );
  });

  it('calls a limit kept or broken exactly where the engine does', () => {
    const hours = fc.integer({ min: 0, max: HOURS });
    fc.assert(
      fc.property(hours, hours, (bare, shaded) => {
        const of = room(bare, shaded, usual);
        const { limit } = roomVerdict(english, of, settings, 'metric');
        const says = /is (.*) \(/.exec(limit)![1];
        const word = (met?: boolean) => (met ? 'kept' : 'broken');
        const same = of.without.chosen.met === of.with.chosen.met;
        expect(says).toContain(
          same
            ? `${word(of.with.chosen.met)} both`
            : `${word(of.without.chosen.met)} without and ${word(of.with.chosen.met)} with`,
        );
      }),
    );
  });
});

describe('the verdict of a room in German', () => {
  it('says the same with a decimal comma and the units of the page', () => {
    const { hours, limit } = roomVerdict(german, room(1543, 748, usual), settings, 'metric');
    expect(plain(hours)).toBe(
      'Studio: 1.543 Stunden über 25 °C ohne Sonnenschutz, 748 mit Sonnenschutz.',
    );
    expect(plain(limit)).toBe(
      'Der Grenzwert von 10 % des Jahres ist ohne Sonnenschutz überschritten, mit Sonnenschutz eingehalten (17,6 % ohne, 8,5 % mit).',
    );
    const din = roomVerdict(
      german,
      room(500, 10, (t) => dinDegreeHours(t, 'B')),
      { ...settings, criterion: 'din4108' },
      'imperial',
    );
    expect(plain(din.limit)).toMatch(/^Der Grenzwert von 2\.160 °F h über 78,8 °F ist ohne/);
  });

  it('says what the shading costs in heat', () => {
    const heated = { without: outcome(0, usual, 1000), with: outcome(0, usual, 1065) };
    expect(plain(heatingWords(german, heated, 'metric'))).toBe(
      'Der Raum braucht ohne Sonnenschutz 1.000 kWh Wärme im Jahr, mit Sonnenschutz 1.065 kWh. Der Sonnenschutz kostet 65 kWh Wärme im Jahr (6,5 %).',
    );
    expect(roomFigure(german, 0.125, { symbol: '1/h', size: 1, digits: 3 })).toBe('0,125\u00a01/h');
  });
});

describe('titles of criteria', () => {
  it('show their temperature in the units of the page', () => {
    const warm = degreeHours(year(10), 25.5);
    expect(plain(criterionTitle(english, warm, 'metric'))).toBe('Degree-hours over 25.5 °C');
    expect(plain(criterionTitle(english, warm, 'imperial'))).toBe('Degree-hours over 77.9 °F');
    const nights = bedroomNights(year(0), calendar);
    expect(plain(criterionTitle(english, nights, 'imperial'))).toBe(
      'Share of the hours from 22:00 to 07:00 over 78.8 °F',
    );
  });

  it('are told in German', () => {
    const warm = degreeHours(year(10), 25.5);
    expect(plain(criterionTitle(german, warm, 'metric'))).toBe(
      'Übertemperaturgradstunden über 25,5 °C',
    );
    expect(plain(criterionTitle(german, warm, 'imperial'))).toBe(
      'Übertemperaturgradstunden über 77,9 °F',
    );
  });

  it('have shares with a decimal only where there is one', () => {
    expect(plain(shareText(english, 0.1))).toBe('10 %');
    expect(plain(shareText(english, 0.025))).toBe('2.5 %');
  });
});

describe('the words on heating', () => {
  const heated = (bare: number, shaded: number) => ({
    without: outcome(0, usual, bare),
    with: outcome(0, usual, shaded),
  });

  it('say what the shading costs or saves', () => {
    expect(plain(heatingWords(english, heated(1000, 1065), 'metric'))).toBe(
      'The room needs 1,000 kWh of heat a year without shading and 1,065 kWh with. The shading costs 65 kWh of heat a year (6.5 %).',
    );
    expect(plain(heatingWords(english, heated(1000, 990), 'metric'))).toContain('saves 10 kWh');
    expect(plain(heatingWords(english, heated(1000, 1000), 'metric'))).toContain('costs no heat');
    expect(heatingWords(english, heated(0, 0), 'metric')).toBe('The room needs no heating.');
  });

  it('are in the units of the page', () => {
    // 1 kWh is 3.412142 kBtu: NIST SP 811 (2008), B.8, 1 Btu = 1055.056 J.
    expect(plain(heatingWords(english, heated(1000, 1065), 'imperial'))).toContain('3,412 kBtu');
  });
});

describe('units of a room', () => {
  // Factors as NIST SP 811 (2008), B.8, prints them: seven figures.
  it('are the size that NIST gives them', () => {
    expect(volumeUnit('imperial').size / 2.831685e-2).toBeCloseTo(1, 6);
    // Btu/h is 2.930711 E-01 W, a degree Fahrenheit 5/9 K.
    expect(lossUnit('imperial').size / (2.930711e-1 * 1.8)).toBeCloseTo(1, 6);
    // Btu/F is 1.899101 E+03 J/K.
    expect(storeUnit('imperial').size / 1.899101e3).toBeCloseTo(1, 6);
  });

  it('show a figure with no more decimals than it needs', () => {
    expect(plain(roomFigure(english, 113, volumeUnit('metric')))).toBe('113 m³');
    expect(plain(roomFigure(english, 4_180_000, storeUnit('metric')))).toBe('4,180 kJ/K');
    expect(plain(roomFigure(english, 100, volumeUnit('imperial')))).toBe('3,531 ft³');
  });
});
