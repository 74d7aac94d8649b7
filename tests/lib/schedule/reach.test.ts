import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compileSchedule,
  createStepper,
  leadIn,
  validateSchedule,
} from '../../../lib/schedule/index.ts';
import type { Rule, RuleConditions, Trigger } from '../../../lib/schedule/index.ts';
import { HOURS, STEPS, buildCalendar } from '../../../lib/time/index.ts';
import { randomSource, restlessSensors, rule, schedule, walk } from './samples.ts';

/** Rules that each do something else, so that the year's states tell which of them decided. */
function told(...whens: RuleConditions[]): Rule[] {
  return whens.map((when, i) => rule(when, { kind: 'tilt', angle: i }, `rule-${i}`));
}

function warnings(...whens: RuleConditions[]) {
  const check = validateSchedule(schedule(told(...whens)));
  expect(check.problems).toEqual([]);
  return check.warnings;
}

const above = (at: number, release: number): Trigger => ({ at, release });

describe('rules that never decide, case by case', () => {
  const workdays = { weekdays: [1, 2, 3, 4, 5] };
  const hidden: [string, RuleConditions[]][] = [
    ['two halves of the week before it', [workdays, { weekdays: [6, 7] }, { months: [7] }]],
    [
      'three spans of the day before it, one past midnight',
      [
        { clock: { from: 360, to: 840 } },
        { clock: { from: 840, to: 1320 } },
        { clock: { from: 1320, to: 360 } },
        { dates: { from: '12-24', to: '01-06' } },
      ],
    ],
    [
      'a trigger before it that sets sooner and releases later',
      [{ outdoorAbove: above(22, 18) }, { outdoorAbove: above(24, 20), sunOnFacade: true }],
    ],
    [
      'the same below',
      [
        { roomBelow: { at: 20, release: 24 } },
        { roomBelow: { at: 19, release: 23 }, irradianceBelow: { at: 5, release: 9 } },
      ],
    ],
    [
      'months and dates that never meet, nights and all',
      [{ months: [6], clock: { from: 1320, to: 360 }, dates: { from: '07-01', to: '08-01' } }],
    ],
    [
      'a reading above and below at once',
      [{ outdoorAbove: above(24, 22), outdoorBelow: { at: 20, release: 22 } }],
    ],
  ];
  it.each(hidden)('%s', (_, whens) => {
    expect(warnings(...whens).map(({ path }) => path)).toEqual([`rules[${whens.length - 1}]`]);
  });

  const seen: [string, RuleConditions[]][] = [
    ['a gap in the week', [{ weekdays: [1, 2, 3, 4] }, { weekdays: [6, 7] }, { months: [7] }]],
    [
      'a quarter of an hour left over',
      [
        { clock: { from: 360, to: 1320 } },
        { clock: { from: 1335, to: 360 } },
        { dates: { from: '12-24', to: '01-06' } },
      ],
    ],
    [
      'a trigger before it that releases sooner',
      [{ outdoorAbove: above(22, 21) }, { outdoorAbove: above(24, 20) }],
    ],
    [
      'a trigger before it that sets later',
      [{ outdoorAbove: above(25, 18) }, { outdoorAbove: above(24, 20) }],
    ],
    [
      'the night of a day before it, which ends on its own day',
      [
        { weekdays: [5], clock: { from: 1320, to: 360 } },
        { weekdays: [6], clock: { from: 0, to: 360 } },
        { weekdays: [6], clock: { from: 0, to: 420 } },
      ],
    ],
    [
      'two triggers that meet between their bounds',
      [{ outdoorAbove: above(24, 20), outdoorBelow: { at: 18, release: 22 } }],
    ],
    [
      'two triggers that meet at one point',
      [{ outdoorAbove: above(20, 20), outdoorBelow: { at: 20, release: 20 } }],
    ],
  ];
  it.each(seen)('not: %s', (_, whens) => {
    const paths = warnings(...whens).map(({ path }) => path);
    expect(paths).not.toContain(`rules[${whens.length - 1}]`);
  });

  it('names the rules that hide it', () => {
    const [{ message }] = warnings(
      { weekdays: [6, 7] },
      { months: [3] },
      { months: [3], weekdays: [1] },
    );
    expect(message).toContain('"rule-1"');
    expect(message).not.toContain('"rule-0"');
  });

  it.each([[{ months: [] }], [{ weekdays: [] }]])('an empty list is a problem: %j', (when) => {
    const { problems } = validateSchedule(schedule(told(when)));
    expect(problems.map(({ value }) => value)).toEqual(['[]']);
  });
});

describe('rules that never decide, at random', () => {
  const triggerOf = (low: number, high: number) =>
    fc
      .tuple(fc.integer({ min: low, max: high }), fc.integer({ min: low, max: high }))
      .map(([a, b]) => above(Math.max(a, b), Math.min(a, b)));
  const quarter = fc.constantFrom(0, 360, 720, 1080, 1440);
  // Few values for each condition, so that rules often cover each other.
  const conditions: fc.Arbitrary<RuleConditions> = fc.record(
    {
      months: fc.constantFrom([1, 2, 3, 4, 5, 6], [7, 8, 9, 10, 11, 12], [7, 8], [12, 1]),
      weekdays: fc.constantFrom([1, 2, 3, 4, 5], [6, 7], [5]),
      clock: fc.record({ from: quarter, to: quarter }),
      sunOnFacade: fc.boolean(),
      outdoorAbove: triggerOf(5, 8),
      roomAbove: triggerOf(22, 24),
      roomBelow: triggerOf(22, 24).map(({ at, release }) => ({ at: release, release: at })),
    },
    { requiredKeys: [] },
  );
  const calendars = [2026, 2028].map((year) => buildCalendar('America/New_York', year, 5));
  const years = [21, 22].map(restlessSensors);
  const rooms = [23, 24].map((seed) => walk(HOURS, 18, 28, randomSource(seed)));

  it('no rule that is said never to decide ever does', () => {
    let said = 0;
    fc.assert(
      fc.property(
        fc.array(conditions, { minLength: 2, maxLength: 6 }),
        fc.nat({ max: 1 }),
        (whens, n) => {
          const plan = schedule(told(...whens));
          const never = validateSchedule(plan).warnings.map(({ path }) => /\d+/.exec(path)![0]);
          if (never.length === 0) return;
          said += never.length;
          const compiled = compileSchedule(plan, calendars[n]);
          const stepper = createStepper(compiled, years[n], {});
          const state = new Uint8Array(STEPS);
          leadIn(stepper, rooms[n][0]);
          for (let hour = 0; hour < HOURS; hour++) stepper.stepHour(hour, rooms[n][hour], state);
          const done = new Set<string>();
          for (const number of state) {
            const action = compiled.actions[number];
            if (action.kind === 'tilt') done.add(String(action.angle));
          }
          for (const i of never) expect([...done]).not.toContain(i);
        },
      ),
      { numRuns: 200 },
    );
    // Enough of the random schedules have such a rule for the property to say something.
    expect(said).toBeGreaterThan(20);
  });
});
