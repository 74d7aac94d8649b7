import { describe, expect, it } from 'vitest';
import {
  compileSchedule,
  describeRule,
  presetSchedules,
  runSchedule,
  usesRoom,
  validateSchedule,
} from '../../../lib/schedule/index.ts';
import type { RuleAction, RuleConditions } from '../../../lib/schedule/index.ts';
import { STEPS, buildCalendar, dayOfYear } from '../../../lib/time/index.ts';
import { lower, restlessSensors, rule } from './samples.ts';

describe('describeRule', () => {
  const workdays = [1, 2, 3, 4, 5];
  const cases: [RuleConditions, RuleAction, string][] = [
    [
      { dates: { from: '05-01', to: '09-15' }, weekdays: workdays, clock: { from: 870, to: 1185 } },
      lower,
      '1 May to 15 Sep, Mon-Fri: down from 14:30 to 19:45.',
    ],
    [{}, { kind: 'raise' }, 'All year: raised.'],
    [
      { clock: { from: 1320, to: 420 }, weekdays: [6, 7, 1] },
      { kind: 'lower', share: 0.5 },
      'Sat-Mon: down over the upper 50 % of the glass from 22:00 to 07:00 the next day.',
    ],
    [
      { months: [11, 12, 1, 2], sunOnFacade: true },
      { kind: 'tilt', angle: 45 },
      'Nov to Feb: down with slats at 45° when the sun is on the facade.',
    ],
    [
      {
        sunOnFacade: true,
        irradianceAbove: { at: 150, release: 100 },
        roomAbove: { at: 23, release: 22 },
      },
      { kind: 'track' },
      'All year: down with slats following the sun when the sun is on the facade, it gives 150 W/m² or more (until down to 100) and the room is at 23 °C or more (until down to 22).',
    ],
    [
      {
        grid: [
          { month: 6, from: 480, to: 720 },
          { month: 7, from: 480, to: 600 },
          { month: 7, from: 600, to: 720 },
        ],
      },
      lower,
      'Jun, Jul: down from 08:00 to 12:00.',
    ],
  ];

  it.each(cases)('%j %j', (when, then, sentence) => {
    expect(describeRule(rule(when, then))).toBe(sentence);
  });

  it('speaks in the units asked for', () => {
    // 22 C = 71.6 F, 20.5 C = 68.9 F.
    const warm = rule({ outdoorAbove: { at: 22, release: 20.5 } });
    expect(describeRule(warm, 'imperial')).toMatch(/71\.6 °F.*68\.9/);
  });
});

describe('presetSchedules', () => {
  const north = presetSchedules();
  const south = presetSchedules('south');

  it('are sound, marked and apart from each other', () => {
    for (const { schedule, purpose, note } of [...north, ...south]) {
      expect(validateSchedule(schedule)).toEqual({ problems: [], warnings: [] });
      expect(purpose).toBeTruthy();
      expect(note).toMatch(/common practice/i);
    }
    expect(new Set(north.map(({ schedule }) => schedule.id)).size).toBe(north.length);
    expect(north).toHaveLength(8);
  });

  it('are fresh copies', () => {
    const [first] = presetSchedules();
    first.schedule.rules[0].when.months = [1];
    expect(presetSchedules()[0].schedule.rules[0].when.months).toBeUndefined();
  });

  it('warn of blocked escape where people sleep or are away', () => {
    for (const { schedule, caution } of north) {
      const blocks = /away|privacy/i.test(schedule.name);
      if (blocks) expect(caution).toMatch(/escape/);
    }
  });

  // What lowers a blind in June must not in December north of the equator, and the other way round.
  it('keep to the warm half of the year on each side of the equator', () => {
    const sensors = restlessSensors(12);
    const calendar = buildCalendar('Asia/Kolkata', 2026, -5.5);
    const lowered = (list: typeof north, month: number) =>
      list.map(({ schedule }) => {
        const state = new Uint8Array(STEPS);
        runSchedule(compileSchedule(schedule, calendar), sensors, {}, state);
        const from = 96 * dayOfYear(month, 1);
        return state.subarray(from, from + 28 * 96).some((action) => action !== 0);
      });
    const seasonal = north.map(({ schedule }) => schedule.rules[0].when.dates !== undefined);
    const room = north.map(({ schedule }) => usesRoom(compileSchedule(schedule, calendar)));
    expect(seasonal.filter(Boolean)).toHaveLength(4);
    expect(room.filter(Boolean)).toHaveLength(1);
    expect(lowered(north, 6)).toEqual(room.map((needed) => !needed));
    expect(lowered(south, 12)).toEqual(room.map((needed) => !needed));
    expect(lowered(north, 12)).toEqual(seasonal.map((s, i) => !s && !room[i]));
    expect(lowered(south, 6)).toEqual(seasonal.map((s, i) => !s && !room[i]));
  });
});
