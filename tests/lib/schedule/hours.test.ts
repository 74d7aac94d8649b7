import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compileSchedule,
  createStepper,
  leadIn,
  runSchedule,
} from '../../../lib/schedule/index.ts';
import { HOURS, STEPS, buildCalendar } from '../../../lib/time/index.ts';
import { randomSchedule } from './randomSchedule.ts';
import { randomSource, restlessSensors, rule, schedule, stillSensors, walk } from './samples.ts';

const calendar = buildCalendar('Australia/Lord_Howe', 2026, -10.5);
const sensors = restlessSensors(31);
const room = walk(HOURS, 18, 28, randomSource(32));

/** First step at which two years differ, -1 where they are alike. */
function firstUnlike(a: Uint8Array, b: Uint8Array): number {
  return a.findIndex((action, step) => action !== b[step]);
}

describe('a year by hours, by steps and in one run', () => {
  it('an hour at a time is the same as its four steps', () => {
    fc.assert(
      fc.property(randomSchedule(true), (plan) => {
        const compiled = compileSchedule(plan, calendar);
        const byHour = createStepper(compiled, sensors, { windLimit: 10 });
        const byStep = createStepper(compiled, sensors, { windLimit: 10 });
        // What stood in the state before must not matter.
        const state = new Uint8Array(STEPS).fill(7);
        const steps = new Uint8Array(STEPS);
        leadIn(byHour, room[0]);
        leadIn(byStep, room[0]);
        for (let hour = 0; hour < HOURS; hour++) byHour.stepHour(hour, room[hour], state);
        for (let i = 0; i < STEPS; i++) steps[i] = byStep.step(i, room[i >> 2]);
        expect(firstUnlike(state, steps)).toBe(-1);
        expect(byHour.snapshot()).toEqual(byStep.snapshot());
      }),
      { numRuns: 25 },
    );
  });

  it('a run writes the whole state, whatever stood in it', () => {
    const plan = schedule([rule({ irradianceAbove: { at: 200, release: 150 } })], 30);
    const compiled = compileSchedule(plan, calendar);
    const [clean, used] = [new Uint8Array(STEPS), new Uint8Array(STEPS).fill(9)];
    const counts = runSchedule(compiled, sensors, {}, clean);
    expect(runSchedule(compiled, sensors, {}, used)).toEqual(counts);
    expect(firstUnlike(used, clean)).toBe(-1);
    expect(new Set(clean)).toEqual(new Set([0, 1]));
  });
});

describe('what is kept between runs', () => {
  const plan = schedule([
    rule({ outdoorAbove: { at: 20, release: 18 }, clock: { from: 600, to: 1200 } }),
  ]);

  function lowered(outdoor: Float64Array, zone: string): number {
    const state = new Uint8Array(STEPS);
    const local = buildCalendar(zone, 2026, 0);
    runSchedule(compileSchedule(plan, local), stillSensors({ outdoor }), {}, state);
    return state.reduce((sum, action) => sum + action, 0);
  }

  it('belongs to its own readings and its own calendar', () => {
    const warm = new Float64Array(HOURS).fill(25);
    const cold = new Float64Array(HOURS).fill(5);
    // Ten hours a day, and in the zone that shifts its clock as many.
    expect(lowered(warm, 'Etc/GMT')).toBe(365 * 40);
    expect(lowered(cold, 'Etc/GMT')).toBe(0);
    expect(lowered(warm, 'Australia/Sydney')).toBe(365 * 40);
    // From April to October clocks of Sydney stand an hour behind those of the rest of its year, so
    // the first warm hours lie elsewhere: 10:00 there is 00:00 UTC, not 10:00 UTC.
    const firstHours = Float64Array.from({ length: HOURS }, (_, h) => (h % 24 < 2 ? 25 : 5));
    expect(lowered(firstHours, 'Etc/GMT')).toBe(0);
    expect(lowered(firstHours, 'Australia/Sydney')).toBe(365 * 8);
  });

  it('more thresholds than are kept, and the first of them again, change nothing', () => {
    const outdoor = walk(HOURS, 0, 40, randomSource(33));
    const count = (at: number) => {
      const state = new Uint8Array(STEPS);
      const hot = schedule([rule({ outdoorAbove: { at, release: at } })]);
      runSchedule(compileSchedule(hot, calendar), stillSensors({ outdoor }), {}, state);
      return state.reduce((sum, action) => sum + action, 0);
    };
    const hoursFrom = (at: number) => outdoor.filter((t) => t >= at).length;
    const thresholds = Array.from({ length: 270 }, (_, i) => i / 8);
    for (const at of [...thresholds, ...thresholds.slice(0, 20)]) {
      expect(count(at)).toBe(4 * hoursFrom(at));
    }
  });
});

describe('readings that are no number', () => {
  it('change no trigger, in the middle of a year and at its ends', () => {
    const rising = { outdoorAbove: { at: 20, release: 15 } };
    const falling = { outdoorBelow: { at: 15, release: 20 } };
    const outdoor = walk(HOURS, 10, 25, randomSource(34));
    const filled = outdoor.slice();
    // Gaps of three days, one of them over New Year; a latch sees the last reading before them go on.
    const gap = (from: number, length: number) => {
      for (let h = from; h < from + length; h++) {
        outdoor[h % HOURS] = NaN;
        filled[h % HOURS] = filled[(from - 1) % HOURS];
      }
    };
    gap(3000, 72);
    gap(HOURS - 36, 72);
    for (const when of [rising, falling]) {
      const states = [outdoor, filled].map((readings) => {
        const state = new Uint8Array(STEPS);
        const compiled = compileSchedule(schedule([rule(when)]), calendar);
        runSchedule(compiled, stillSensors({ outdoor: readings }), {}, state);
        return state;
      });
      expect(firstUnlike(states[0], states[1])).toBe(-1);
      expect(new Set(states[0]).size).toBe(2);
    }
  });
});
