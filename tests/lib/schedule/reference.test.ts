import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compileSchedule,
  createStepper,
  leadIn,
  runSchedule,
  usesRoom,
} from '../../../lib/schedule/index.ts';
import type { Schedule } from '../../../lib/schedule/index.ts';
import { STEPS, buildCalendar } from '../../../lib/time/index.ts';
import { localYear } from './localClock.ts';
import { randomSchedule } from './randomSchedule.ts';
import { actionText, referenceYear } from './reference.ts';
import { randomSource, restlessSensors, walk } from './samples.ts';

const places = (
  [
    ['America/New_York', 2026, 5],
    ['Australia/Lord_Howe', 2028, -10.5],
  ] as const
).map(([zone, year, startUtc]) => ({
  calendar: buildCalendar(zone, year, startUtc),
  clock: localYear(zone, year, startUtc),
}));
const years = [1, 2, 3, 4].map(restlessSensors);
const rooms = [5, 6].map((seed) => walk(STEPS, 18, 28, randomSource(seed)));

// Numbers instead of the years themselves, which would flood a failure's report.
const numberOf = (list: readonly unknown[]) => fc.nat({ max: list.length - 1 });
const options = fc.record({
  windLimit: fc.constantFrom(undefined, 20, 12, 10, 6.5),
  calmMinutes: fc.constantFrom(undefined, 0, 30, 75, 120),
});

/** First step at which two years differ, with what they say there; undefined where they are alike. */
function firstDifference(expected: string[], names: string[], state: Uint8Array) {
  const step = expected.findIndex((text, i) => text !== names[state[i]]);
  return step < 0 ? undefined : { step, expected: expected[step], actual: names[state[step]] };
}

// No tolerance: positions and counts are whole numbers. The time allowed is for a machine that is busy
// elsewhere: the interpreter takes its years word by word.
describe('against an interpreter that takes the contract word by word', () => {
  it('200 random schedules without the room: run and stepper give its year', () => {
    const state = new Uint8Array(STEPS);
    const stepped = new Uint8Array(STEPS);
    fc.assert(
      fc.property(
        randomSchedule(false),
        numberOf(places),
        numberOf(years),
        options,
        (s, p, y, o) => {
          const expected = referenceYear(s, places[p].clock, years[y], o);
          const compiled = compileSchedule(s, places[p].calendar);
          const names = compiled.actions.map(actionText);
          const counts = runSchedule(compiled, years[y], o, state);
          expect(firstDifference(expected.positions, names, state)).toBeUndefined();
          expect(counts).toEqual(expected.counts);

          const stepper = createStepper(compiled, years[y], o);
          leadIn(stepper, 21);
          for (let i = 0; i < STEPS; i++) stepped[i] = stepper.step(i, 21);
          expect(firstDifference(expected.positions, names, stepped)).toBeUndefined();
          expect(stepper.counts).toMatchObject(counts);
        },
      ),
      { numRuns: 200 },
    );
  }, 240_000);

  it('60 random schedules that ask for the room: the stepper gives its year', () => {
    const state = new Uint8Array(STEPS);
    const withRoom = randomSchedule(true).filter(asksForRoom);
    fc.assert(
      fc.property(
        withRoom,
        numberOf(places),
        numberOf(years),
        options,
        numberOf(rooms),
        (s, p, y, o, r) => {
          const room = rooms[r];
          const expected = referenceYear(s, places[p].clock, years[y], o, room);
          const compiled = compileSchedule(s, places[p].calendar);
          expect(usesRoom(compiled)).toBe(true);
          const stepper = createStepper(compiled, years[y], o);
          leadIn(stepper, room[0]);
          for (let i = 0; i < STEPS; i++) state[i] = stepper.step(i, room[i]);
          const names = compiled.actions.map(actionText);
          expect(firstDifference(expected.positions, names, state)).toBeUndefined();
          expect(stepper.counts).toMatchObject(expected.counts);
        },
      ),
      { numRuns: 60 },
    );
  }, 240_000);
});

function asksForRoom({ rules }: Schedule): boolean {
  return rules.some(({ when }) => when.roomAbove !== undefined || when.roomBelow !== undefined);
}
