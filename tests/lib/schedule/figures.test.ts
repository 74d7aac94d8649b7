import { describe, expect, it } from 'vitest';
import { InputError } from '../../../lib/problem/index.ts';
import {
  compileSchedule,
  groupSensors,
  moveStatistics,
  runSchedule,
} from '../../../lib/schedule/index.ts';
import type { RuleAction } from '../../../lib/schedule/index.ts';
import { HOURS, STEPS, buildCalendar } from '../../../lib/time/index.ts';
import { restlessSensors, rule, schedule, stillSensors } from './samples.ts';

const calendar = buildCalendar('Asia/Kolkata', 2026, -5.5);
const actions: RuleAction[] = [
  { kind: 'raise' },
  { kind: 'lower' },
  { kind: 'tilt', angle: 45 },
  { kind: 'track' },
];
const DAY = 96;

describe('moveStatistics', () => {
  it('of a blind that never moves', () => {
    const figures = moveStatistics(new Uint8Array(STEPS), actions, calendar);
    expect(figures).toMatchObject({ moves: 0, movesPerDay: 0, hoursLowered: 0 });
    expect(figures.busiestDay).toBeUndefined();
    const down = moveStatistics(new Uint8Array(STEPS).fill(3), actions, calendar);
    expect(down).toMatchObject({ moves: 0, hoursLowered: HOURS });
  });

  it('counts moves by local day, and hours in all and by day', () => {
    const state = new Uint8Array(STEPS);
    // 2 January: down 10:00, slats 45 at 11:00, up 12:00. 20 January: down at 22:00 until 06:30 the
    // next day, tracking from midnight.
    state.fill(1, DAY + 40, DAY + 44);
    state.fill(2, DAY + 44, DAY + 48);
    state.fill(1, 19 * DAY + 88, 20 * DAY);
    state.fill(3, 20 * DAY, 20 * DAY + 26);
    const sunUp = Uint8Array.from({ length: STEPS }, (_, i) =>
      Number(i % DAY >= 24 && i % DAY < 72),
    );
    expect(moveStatistics(state, actions, calendar, sunUp)).toEqual({
      moves: 6,
      busiestDay: { date: '2026-01-02', moves: 3 },
      movesPerDay: 6 / 31,
      hoursLowered: 2 + 2 + 6.5,
      daylightHoursLowered: 2 + 0.5,
    });
  });

  it('the turn of the year is a step like any other', () => {
    const state = new Uint8Array(STEPS).fill(1, STEPS - 4);
    expect(moveStatistics(state, actions, calendar)).toMatchObject({
      moves: 2,
      busiestDay: { date: '2026-01-01', moves: 1 },
      movesPerDay: 2 / 62,
      hoursLowered: 1,
    });
  });

  it('agrees with the counts of the run and a plain count of its states', () => {
    const plan = schedule([rule({ irradianceAbove: { at: 200, release: 100 } })], 30);
    const compiled = compileSchedule(plan, calendar);
    const state = new Uint8Array(STEPS);
    const counts = runSchedule(compiled, restlessSensors(3), { windLimit: 9 }, state);
    const figures = moveStatistics(state, compiled.actions, calendar);
    expect(figures.moves).toBe(counts.moves);
    expect(figures.hoursLowered).toBe(state.filter((n) => n !== 0).length / 4);
  });
});

describe('groupSensors', () => {
  const east = { opening: 'east', ...readings(400, 1), windLimit: 12 };
  const west = { opening: 'west', ...readings(150, 0), windLimit: 9 };
  const north = { opening: 'north', ...readings(50, 0) };

  function readings(irradiance: number, sunny: number) {
    const { facadeIrradiance, sunOnFacade } = stillSensors();
    facadeIrradiance[7] = irradiance;
    facadeIrradiance[8] = 500 - irradiance;
    sunOnFacade[7] = sunny;
    sunOnFacade[8] = 1 - sunny;
    return { facadeIrradiance, sunOnFacade };
  }

  it('takes the strongest reading of any member and the lowest wind limit', () => {
    const group = groupSensors([east, west, north]);
    expect([...group.facadeIrradiance.subarray(6, 10)]).toEqual([0, 400, 450, 0]);
    expect([...group.sunOnFacade.subarray(6, 10)]).toEqual([0, 1, 1, 0]);
    expect(group.windLimit).toBe(9);
    expect(east.facadeIrradiance[8]).toBe(100);
    expect(east.sunOnFacade[8]).toBe(0);
  });

  it('takes those of the lead, and still the lowest wind limit of all', () => {
    const group = groupSensors([east, west, north], 'east');
    expect(group.facadeIrradiance).toBe(east.facadeIrradiance);
    expect(group.sunOnFacade).toBe(east.sunOnFacade);
    expect(group.windLimit).toBe(9);
    expect(groupSensors([north], 'north').windLimit).toBeUndefined();
  });

  it('refuses a lead from elsewhere and a group of none', () => {
    expect(() => groupSensors([east, west], 'north')).toThrow(InputError);
    expect(() => groupSensors([])).toThrow(InputError);
  });
});

describe('compileSchedule', () => {
  it('numbers different actions once, raised first', () => {
    const { actions: numbered, rules } = compileSchedule(
      schedule([
        rule({}, { kind: 'track' }, 'a'),
        rule({}, { kind: 'lower', share: 1 }, 'b'),
        rule({}, { kind: 'lower' }, 'c'),
        rule({}, { kind: 'raise' }, 'd'),
        rule({}, { kind: 'tilt', angle: 45 }, 'e'),
        rule({}, { kind: 'tilt', angle: 45, share: 0.5 }, 'f'),
      ]),
      calendar,
    );
    expect(rules.map((r) => r.action)).toEqual([1, 2, 2, 0, 3, 4]);
    expect(numbered[0]).toEqual({ kind: 'raise' });
    expect(numbered).toHaveLength(5);
  });

  it('refuses more different actions than a state can tell apart', () => {
    const rules = Array.from({ length: 256 }, (_, i) =>
      rule({}, { kind: 'tilt', angle: i / 4 }, `rule-${i}`),
    );
    expect(() => compileSchedule(schedule(rules), calendar)).toThrow(InputError);
    expect(compileSchedule(schedule(rules.slice(1)), calendar).actions).toHaveLength(256);
  });
});
