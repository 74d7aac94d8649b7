import { describe, expect, it } from 'vitest';
import { describeRule, describeSchedule, presetSchedules } from '../../../lib/schedule/index.ts';
import type { RuleAction, RuleConditions } from '../../../lib/schedule/index.ts';
import { lower, rule, schedule } from './samples.ts';

const say = (when: RuleConditions, then: RuleAction = lower) => describeRule(rule(when, then));
const grid = (months: number[], ...spans: [number, number][]) =>
  months.flatMap((month) => spans.map(([from, to]) => ({ month, from, to })));

// Sentences are written out by hand: they are what a person sets a remote or a timer by.
describe('days', () => {
  const cases: [RuleConditions, string][] = [
    [{ months: [5, 6, 7, 8, 9] }, 'May to Sep: down.'],
    [{ months: [12, 1, 2] }, 'Dec to Feb: down.'],
    [{ months: [3, 9, 10] }, 'Mar, Sep, Oct: down.'],
    [{ months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] }, 'All year: down.'],
    [{ dates: { from: '11-15', to: '02-29' } }, '15 Nov to 29 Feb: down.'],
    [
      { months: [6, 7, 8], dates: { from: '06-21', to: '08-10' } },
      'Jun to Aug within 21 Jun to 10 Aug: down.',
    ],
    [{ weekdays: [6, 7] }, 'Sat, Sun: down.'],
    [{ weekdays: [7, 1, 2] }, 'Sun-Tue: down.'],
    [{ weekdays: [1, 3, 5] }, 'Mon, Wed, Fri: down.'],
    [{ weekdays: [1, 2, 3, 4, 5, 6, 7] }, 'All year: down.'],
    [{ months: [7], weekdays: [1, 2, 3] }, 'Jul, Mon-Wed: down.'],
  ];
  it.each(cases)('%j', (when, sentence) => expect(say(when)).toBe(sentence));
});

describe('hours', () => {
  const cases: [number, number, string][] = [
    [870, 1185, 'All year: down from 14:30 to 19:45.'],
    [1320, 420, 'All year: down from 22:00 to 07:00 the next day.'],
    [1080, 0, 'All year: down from 18:00 to 24:00.'],
    [1080, 1440, 'All year: down from 18:00 to 24:00.'],
    [1440, 60, 'All year: down from 00:00 to 01:00.'],
    [0, 1440, 'All year: down.'],
    [1440, 0, 'All year: down.'],
    [600, 600, 'All year: down.'],
  ];
  it.each(cases)('%i to %i', (from, to, sentence) => {
    expect(say({ clock: { from, to } })).toBe(sentence);
  });
});

describe('painted hours', () => {
  const summer = grid([5, 6, 7, 8], [840, 1200]);
  const cases: [RuleConditions, string][] = [
    [{ grid: summer }, 'May to Aug: down from 14:00 to 20:00.'],
    [{ grid: summer, weekdays: [6, 7] }, 'May to Aug, Sat, Sun: down from 14:00 to 20:00.'],
    [
      { grid: grid([7], [360, 420], [420, 480], [900, 960]) },
      'Jul: down from 06:00 to 08:00 and from 15:00 to 16:00.',
    ],
    [{ grid: grid([11, 12, 1], [1320, 360]) }, 'Nov to Jan: down from 22:00 to 06:00.'],
    [{ grid: grid([6], [0, 1440]) }, 'Jun: down all day.'],
    [
      { grid: [...summer, ...grid([4, 9], [900, 1140])] },
      'Painted hours: down in Apr, Sep from 15:00 to 19:00; in May to Aug from 14:00 to 20:00.',
    ],
    [
      { grid: grid([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], [720, 780]) },
      'All year: down from 12:00 to 13:00.',
    ],
    [
      { grid: summer, dates: { from: '05-10', to: '08-20' } },
      '10 May to 20 Aug, painted hours: down in May to Aug from 14:00 to 20:00.',
    ],
    [{ grid: [] }, 'At no time: down.'],
  ];
  it.each(cases)('%j', (when, sentence) => expect(say(when)).toBe(sentence));
});

describe('what it does', () => {
  const cases: [RuleAction, string][] = [
    [{ kind: 'raise' }, 'All year: raised.'],
    [{ kind: 'lower', share: 1 }, 'All year: down.'],
    [{ kind: 'lower', share: 0.75 }, 'All year: down over the upper 75 % of the glass.'],
    [{ kind: 'tilt', angle: -12.5 }, 'All year: down with slats at -12.5°.'],
    [
      { kind: 'track', share: 0.5 },
      'All year: down over the upper 50 % of the glass with slats following the sun.',
    ],
  ];
  it.each(cases)('%j', (then, sentence) => expect(say({}, then)).toBe(sentence));
});

describe('when', () => {
  const cases: [RuleConditions, string][] = [
    [{ sunOnFacade: true }, 'the sun is on the facade'],
    [{ sunOnFacade: false }, 'the sun is off the facade'],
    [
      { irradianceAbove: { at: 150, release: 100 } },
      'the facade gets 150 W/m² or more (until down to 100)',
    ],
    [
      { sunOnFacade: true, irradianceAbove: { at: 150, release: 100 } },
      'the sun is on the facade and it gives 150 W/m² or more (until down to 100)',
    ],
    [
      { irradianceBelow: { at: 5, release: 10 } },
      'the facade gets 5 W/m² or less (until up to 10)',
    ],
    [
      { outdoorBelow: { at: -2.5, release: 0 } },
      'the outdoor air is at -2.5 °C or less (until up to 0)',
    ],
    [
      {
        sunOnFacade: true,
        outdoorAbove: { at: 22, release: 20 },
        roomAbove: { at: 23, release: 22 },
      },
      'the sun is on the facade, the outdoor air is at 22 °C or more (until down to 20) and the room is at 23 °C or more (until down to 22)',
    ],
    [{ roomBelow: { at: 20, release: 21 } }, 'the room is at 20 °C or less (until up to 21)'],
  ];
  it.each(cases)('%j', (when, text) => expect(say(when)).toBe(`All year: down when ${text}.`));
});

describe('a whole schedule', () => {
  it('tells its rules in order, what happens otherwise and the pause', () => {
    const plan = schedule(
      [
        rule({ months: [1, 2] }, { kind: 'raise' }, 'a'),
        rule({ clock: { from: 870, to: 1185 } }, lower, 'b'),
      ],
      30,
    );
    expect(describeSchedule(plan)).toEqual([
      'Jan, Feb: raised.',
      'All year: down from 14:30 to 19:45.',
      'The first rule that applies decides; raised otherwise.',
      'At least 30 min between two moves; wind does not wait.',
    ]);
  });

  it('says no more than there is to say', () => {
    expect(describeSchedule(schedule([rule({ sunOnFacade: true })]))).toEqual([
      'All year: down when the sun is on the facade.',
      'Raised otherwise.',
    ]);
    expect(describeSchedule(schedule([], 30))).toEqual(['Raised all year.']);
  });

  it('speaks in the units asked for', () => {
    const plan = schedule([rule({ roomAbove: { at: 25, release: 24 } })]);
    // 25 C = 77 F, 24 C = 75.2 F.
    expect(describeSchedule(plan, 'imperial')[0]).toBe(
      'All year: down when the room is at 77 °F or more (until down to 75.2).',
    );
  });
});

describe('ready-made schedules', () => {
  it('take a prefix before their ids', () => {
    const plain = presetSchedules('north').map((p) => p.schedule.id);
    const own = presetSchedules('north', 'house-2-').map((p) => p.schedule.id);
    expect(own).toEqual(plain.map((id) => `house-2-${id}`));
  });

  it('hold what their names say', () => {
    const told = Object.fromEntries(
      presetSchedules('south').map((p) => [p.schedule.name, describeSchedule(p.schedule)[0]]),
    );
    expect(told).toEqual({
      'Sun on glass, summer':
        '1 Nov to 31 Mar: down when the sun is on the facade and it gives 150 W/m² or more (until down to 100).',
      'Away on weekdays': '1 Nov to 31 Mar, Mon-Fri: down from 08:00 to 18:00.',
      'Privacy nights': 'All year: down from 21:00 to 07:00 the next day.',
      'Track the sun, all year':
        'All year: down with slats following the sun when the sun is on the facade and it gives 150 W/m² or more (until down to 100).',
      'Hot outdoors':
        'All year: down when the sun is on the facade and the outdoor air is at 22 °C or more (until down to 20).',
      'West, afternoon clock': '1 Nov to 31 Mar: down from 14:30 to 19:45.',
      'East, morning clock': '1 Nov to 31 Mar: down from 05:30 to 11:30.',
      'Keep the room under 24 C':
        'All year: down when the sun is on the facade and the room is at 23 °C or more (until down to 22).',
    });
  });
});
