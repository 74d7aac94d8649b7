import { describe, expect, it } from 'vitest';
import {
  compileSchedule,
  createStepper,
  leadIn,
  runSchedule,
} from '../../../lib/schedule/index.ts';
import type { RuleConditions, RunOptions, Schedule, Sensors } from '../../../lib/schedule/index.ts';
import { HOURS, STEPS, buildCalendar } from '../../../lib/time/index.ts';
import { lower, restlessSensors, rule, schedule, stillSensors } from './samples.ts';

const calendar = buildCalendar('Asia/Kolkata', 2026, -5.5);
const NOON = 181 * 96 + 48; // some step in July
const NOON_HOUR = NOON / 4;

function run(plan: Schedule, sensors: Sensors, options: RunOptions = {}) {
  const state = new Uint8Array(STEPS);
  const counts = runSchedule(compileSchedule(plan, calendar), sensors, options, state);
  return { state, counts };
}

/** `rest` all year but for these values from noon of a July day on. */
function fromNoon(length: number, rest: number, values: number[]): Float64Array {
  const series = new Float64Array(length).fill(rest);
  series.set(values, length === STEPS ? NOON : NOON_HOUR);
  return series;
}

const afterNoon = (state: Uint8Array, count: number) => [...state.subarray(NOON, NOON + count)];

describe('triggers hold from `at` until back at `release`, worked by hand', () => {
  const sequences: [string, RuleConditions, number[], number[]][] = [
    [
      'irradiance above 150, release 100',
      { irradianceAbove: { at: 150, release: 100 } },
      [149, 150, 120, 101, 100, 149, 150, 99, 101],
      [0, 1, 1, 1, 0, 0, 1, 0, 0],
    ],
    [
      'without a gap: at the value itself it holds, and goes on holding',
      { irradianceAbove: { at: 150, release: 150 } },
      [149, 150, 150, 150, 149, 151, 150, 0],
      [0, 1, 1, 1, 0, 1, 1, 0],
    ],
    [
      'below 50, release 80, in a year that is otherwise bright',
      { irradianceBelow: { at: 50, release: 80 }, irradianceAbove: { at: 1, release: 0 } },
      [51, 50, 60, 79, 80, 60, 49, 81],
      [0, 1, 1, 1, 0, 0, 1, 0],
    ],
  ];

  it.each(sequences)('%s', (_, when, readings, expected) => {
    const rest = when.irradianceBelow ? 500 : 0;
    const facadeIrradiance = fromNoon(STEPS, rest, [...readings, rest]);
    const { state } = run(schedule([rule(when)]), stillSensors({ facadeIrradiance }));
    expect(afterNoon(state, readings.length)).toEqual(expected);
  });

  it('outdoor temperature is read once an hour', () => {
    const when = { outdoorAbove: { at: 22, release: 20 } };
    const outdoor = fromNoon(HOURS, 10, [21.9, 22, 20.1, 20, 21]);
    const { state } = run(schedule([rule(when)]), stillSensors({ outdoor }));
    expect(afterNoon(state, 20)).toEqual([
      ...[0, 0, 0, 0],
      ...[1, 1, 1, 1, 1, 1, 1, 1],
      ...[0, 0, 0, 0, 0, 0, 0, 0],
    ]);
  });

  it('latches on outside the hours of its rule', () => {
    // Set at noon, when the rule may not decide; still set at 13:00, when it may.
    const when = { irradianceAbove: { at: 150, release: 100 }, clock: { from: 780, to: 1440 } };
    const facadeIrradiance = fromNoon(STEPS, 0, [150, 120, 120, 120, 120, 120, 90]);
    const { state } = run(schedule([rule(when)]), stillSensors({ facadeIrradiance }));
    expect(afterNoon(state, 7)).toEqual([0, 0, 0, 0, 1, 1, 0]);
  });

  it('latches on while a rule before it decides', () => {
    const first = rule({ clock: { from: 720, to: 735 } }, { kind: 'raise' }, 'first');
    const second = rule({ irradianceAbove: { at: 150, release: 100 } }, lower, 'second');
    const facadeIrradiance = fromNoon(STEPS, 0, [150, 120, 120, 100]);
    const { state } = run(schedule([first, second]), stillSensors({ facadeIrradiance }));
    expect(afterNoon(state, 4)).toEqual([0, 1, 1, 0]);
  });

  it('the year is a loop: what was set in December holds in January', () => {
    const facadeIrradiance = new Float64Array(STEPS).fill(120);
    facadeIrradiance[STEPS - 20 * 96] = 150;
    facadeIrradiance[10 * 96] = 100;
    const when = { irradianceAbove: { at: 150, release: 100 } };
    const { state, counts } = run(schedule([rule(when)]), stillSensors({ facadeIrradiance }));
    expect([state[0], state[10 * 96 - 1], state[10 * 96], state[STEPS - 1]]).toEqual([1, 1, 0, 1]);
    expect(counts.moves).toBe(2);
  });
});

describe('least time between moves', () => {
  const sunny = rule({ irradianceAbove: { at: 100, release: 90 } });
  const flicker = fromNoon(STEPS, 0, [100, 0, 100, 0, 0, 100, 0, 0, 0, 0, 0, 0]);

  it('0 min: follows every wish', () => {
    const { state, counts } = run(
      schedule([sunny], 0),
      stillSensors({ facadeIrradiance: flicker }),
    );
    expect(afterNoon(state, 8)).toEqual([1, 0, 1, 0, 0, 1, 0, 0]);
    expect(counts).toEqual({ moves: 6, stepsRaisedByWind: 0, delays: 0, stepsDelayed: 0 });
  });

  it('45 min: three steps after the move before', () => {
    // Down at 0. Up is wanted at 1, no longer at 2, wanted again at 3 and done: 45 min have passed.
    // Down is wanted at 5, no longer at 6.
    const { state, counts } = run(
      schedule([sunny], 45),
      stillSensors({ facadeIrradiance: flicker }),
    );
    expect(afterNoon(state, 8)).toEqual([1, 1, 1, 0, 0, 0, 0, 0]);
    expect(counts).toEqual({ moves: 2, stepsRaisedByWind: 0, delays: 2, stepsDelayed: 2 });
  });

  it('40 min wait for the next quarter of an hour, as 45 do', () => {
    const sensors = stillSensors({ facadeIrradiance: flicker });
    const [forty, fortyFive] = [40, 45].map((minutes) => run(schedule([sunny], minutes), sensors));
    expect(forty.counts).toEqual(fortyFive.counts);
    expect(forty.state.findIndex((action, i) => action !== fortyFive.state[i])).toBe(-1);
  });

  it('one long wait is one delay', () => {
    const { state, counts } = run(
      schedule([sunny], 120),
      stillSensors({ facadeIrradiance: fromNoon(STEPS, 0, [100]) }),
    );
    expect(afterNoon(state, 9)).toEqual([1, 1, 1, 1, 1, 1, 1, 1, 0]);
    expect(counts).toEqual({ moves: 2, stepsRaisedByWind: 0, delays: 1, stepsDelayed: 7 });
  });

  it('counts from the move that was made, not from the one that was wanted', () => {
    // Up is wanted at 1 and done at 3; down is wanted at 4 and done at 6.
    const { state, counts } = run(
      schedule([sunny], 45),
      stillSensors({ facadeIrradiance: fromNoon(STEPS, 0, [100, 0, 0, 0, 100, 100, 100, 100]) }),
    );
    expect(afterNoon(state, 8)).toEqual([1, 1, 1, 0, 0, 0, 1, 1]);
    expect(counts).toMatchObject({ delays: 3, stepsDelayed: 2 + 2 + 1 });
  });

  it('a wait goes on while the wish changes', () => {
    const span = (from: number, to: number, then: Parameters<typeof rule>[1]) =>
      rule({ dates: { from: '07-01', to: '07-01' }, clock: { from, to } }, then, String(from));
    const plan = schedule(
      [
        span(720, 735, lower),
        span(735, 750, { kind: 'track' }),
        span(750, 900, { kind: 'tilt', angle: 45 }),
      ],
      45,
    );
    const { state, counts } = run(plan, stillSensors());
    expect(afterNoon(state, 5)).toEqual([1, 1, 1, 3, 3]);
    expect(counts).toMatchObject({ moves: 3, delays: 1, stepsDelayed: 2 });
  });

  it('another angle or share is a move, the same action of another rule and tracking are not', () => {
    const at = (from: number, then: Parameters<typeof rule>[1]) =>
      rule({ clock: { from, to: from + 60 } }, then, String(from));
    const july = (rules: Schedule['rules']) =>
      rules.map((r) => ({ ...r, when: { ...r.when, dates: { from: '07-01', to: '07-01' } } }));
    const moves = (rules: Schedule['rules']) =>
      run(schedule(july(rules)), stillSensors()).counts.moves;
    expect(moves([at(600, { kind: 'track' })])).toBe(2);
    expect(moves([at(600, lower), at(660, { kind: 'lower', share: 1 })])).toBe(2);
    expect(moves([at(600, lower), at(660, { kind: 'lower', share: 0.5 })])).toBe(3);
    expect(
      moves([at(600, { kind: 'tilt', angle: 30 }), at(660, { kind: 'tilt', angle: 45 })]),
    ).toBe(3);
    expect(moves([at(600, lower), at(720, lower)])).toBe(4);
  });
});

describe('wind', () => {
  const always = schedule([rule({})]);
  const windy = (speeds: number[], options: RunOptions, plan = always) => {
    const wind = fromNoon(HOURS, 0, speeds);
    return run(plan, stillSensors({ wind }), options);
  };
  const up = (steps: number) => new Array<number>(steps).fill(0);
  const down = (steps: number) => new Array<number>(steps).fill(1);

  it('is not felt without a limit, nor at the limit itself', () => {
    expect(windy([30], {}).counts.moves).toBe(0);
    expect(windy([10], { windLimit: 10 }).counts.moves).toBe(0);
  });

  it('raises at once, and lets down after 30 calm minutes', () => {
    const { state, counts } = windy([10.1, 7], { windLimit: 10 });
    expect(afterNoon(state, 8)).toEqual([...up(6), ...down(2)]);
    expect(counts).toEqual({ moves: 2, stepsRaisedByWind: 6, delays: 0, stepsDelayed: 0 });
  });

  it('holds on from 80 % of the limit up', () => {
    const { state } = windy([11, 8, 9.9, 7.9], { windLimit: 10 });
    expect(afterNoon(state, 16)).toEqual([...up(14), ...down(2)]);
  });

  it('does not raise between 80 % and the limit', () => {
    expect(windy([9, 9.5, 10], { windLimit: 10 }).counts.moves).toBe(0);
  });

  it('begins to wait afresh when the calm is broken', () => {
    const { state } = windy([11, 7, 9, 7], { windLimit: 10, calmMinutes: 90 });
    // 4 strong, 4 calm of 6, 4 neither, then 6 calm.
    expect(afterNoon(state, 20)).toEqual([...up(18), ...down(2)]);
  });

  it('lets down in a calm step only, even where the calm was long enough before', () => {
    const { state } = windy([11, 7, 9, 7, 7], { windLimit: 10, calmMinutes: 60 });
    expect(afterNoon(state, 18)).toEqual([...up(16), ...down(2)]);
    const { state: atOnce } = windy([11, 9, 7], { windLimit: 10, calmMinutes: 0 });
    expect(afterNoon(atOnce, 10)).toEqual([...up(8), ...down(2)]);
  });

  it('waits for nothing itself, but the way down waits for the least time', () => {
    // Down at 11:45, wind at 12:00: up at once; calm from 13:00, free at 13:30, down at 14:00.
    const plan = schedule([rule({ clock: { from: 705, to: 960 } })], 120);
    const { state } = windy([12, 0], { windLimit: 10 }, plan);
    expect(state[NOON - 1]).toBe(1);
    expect(afterNoon(state, 10)).toEqual([...up(8), ...down(2)]);
  });

  it('counts only the time the rules wanted it down', () => {
    const plan = schedule([rule({ clock: { from: 780, to: 1440 } })]);
    const { counts } = windy([12, 12, 0], { windLimit: 10 }, plan);
    expect(counts.stepsRaisedByWind).toBe(4 + 2);
  });

  it('in the last hour of December holds into January', () => {
    const wind = new Float64Array(HOURS);
    wind[HOURS - 1] = 20;
    const { state } = run(always, stillSensors({ wind }), { windLimit: 10 });
    expect([...state.subarray(0, 4), state[STEPS - 5], state[STEPS - 1]]).toEqual([
      0, 0, 1, 1, 1, 0,
    ]);
  });
});

describe('the stepper', () => {
  const warm = rule({ roomAbove: { at: 24, release: 22 }, clock: { from: 480, to: 1200 } });

  it('answers to the room with hysteresis, and remembers outside its hours', () => {
    const stepper = createStepper(compileSchedule(schedule([warm]), calendar), stillSensors());
    leadIn(stepper, 20);
    const temperatures = [23.9, 24, 23, 22.1, 22, 23.9, 30];
    const states = temperatures.map((t, i) => stepper.step(NOON + i, t));
    expect(states).toEqual([0, 1, 1, 1, 0, 0, 1]);
    expect(stepper.step(NOON + 48, 23)).toBe(0); // midnight
    expect(stepper.step(NOON + 90, 23)).toBe(1); // 10:30, not cooled down since
    expect(stepper.counts.moves).toBe(5);
  });

  it('leaves the rules behind a room rule their turn while the room is cool', () => {
    const plan = schedule([
      rule({ weekdays: [1, 2, 3, 4, 5, 6, 7], roomAbove: { at: 24, release: 22 } }, lower, 'warm'),
      rule({ clock: { from: 720, to: 750 } }, { kind: 'track' }, 'noon'),
      rule({ roomAbove: { at: 21, release: 20 } }, { kind: 'tilt', angle: 30 }, 'mild'),
      rule({}, { kind: 'tilt', angle: 60 }, 'else'),
    ]);
    const stepper = createStepper(compileSchedule(plan, calendar), stillSensors());
    const states = [19, 24, 23, 22, 20].map((t, i) => stepper.step(NOON + i, t));
    expect(states).toEqual([2, 1, 1, 3, 4]);
  });

  it('needs both where above and below are asked', () => {
    const band = rule({ roomAbove: { at: 20, release: 20 }, roomBelow: { at: 24, release: 24 } });
    const stepper = createStepper(compileSchedule(schedule([band]), calendar), stillSensors());
    const states = [19, 20, 22, 24, 25, 23].map((t, i) => stepper.step(i, t));
    expect(states).toEqual([0, 1, 1, 1, 0, 1]);
  });

  it('a temperature that is no number changes nothing', () => {
    const stepper = createStepper(compileSchedule(schedule([warm]), calendar), stillSensors());
    expect([25, NaN, 21, NaN].map((t, i) => stepper.step(NOON + i, t))).toEqual([1, 1, 0, 0]);
  });

  it('rules that ask for the room never hold in a run without it', () => {
    expect(run(schedule([warm]), stillSensors()).counts.moves).toBe(0);
  });

  it('goes back to a snapshot with all it remembers', () => {
    const sensors = restlessSensors(9);
    const plan = schedule(
      [warm, rule({ irradianceAbove: { at: 200, release: 150 } }, { kind: 'track' }, 'sun')],
      60,
    );
    const stepper = createStepper(compileSchedule(plan, calendar), sensors, { windLimit: 10 });
    const year = (from: number) =>
      Array.from({ length: 2000 }, (_, i) =>
        stepper.step(from + i, 23 + 2 * Math.sin((from + i) / 15)),
      );
    year(NOON - 2000);
    const before = stepper.snapshot();
    const first = year(NOON);
    const counts = { ...stepper.counts };
    expect(new Set(first).size).toBe(3);
    expect(counts.delays).toBeGreaterThan(0);

    year(NOON + 7000);
    stepper.restore(before);
    expect(stepper.snapshot()).toEqual(before);
    expect(year(NOON)).toEqual(first);
    expect(stepper.counts).toMatchObject(counts);
  });
});
