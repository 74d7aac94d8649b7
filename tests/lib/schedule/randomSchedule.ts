import fc from 'fast-check';
import type {
  Rule,
  RuleAction,
  RuleConditions,
  Schedule,
  Trigger,
} from '../../../lib/schedule/index.ts';

const clockMinutes = fc.integer({ min: 0, max: 96 }).map((quarter) => quarter * 15);
const month = fc.integer({ min: 1, max: 12 });
const monthDay = fc.tuple(month, fc.integer({ min: 1, max: 31 })).map(([m, d]) => {
  const days = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][m - 1];
  return `${String(m).padStart(2, '0')}-${String(Math.min(d, days)).padStart(2, '0')}`;
});

/** Bounds on multiples of `step`, now and then the same twice. */
function trigger(low: number, high: number, step: number, above: boolean): fc.Arbitrary<Trigger> {
  const value = fc.integer({ min: low / step, max: high / step }).map((n) => n * step);
  return fc.tuple(value, value).map(([a, b]) => {
    const [less, more] = [Math.min(a, b), Math.max(a, b)];
    return above ? { at: more, release: less } : { at: less, release: more };
  });
}

const roomTriggers = { roomAbove: trigger(18, 28, 1, true), roomBelow: trigger(18, 28, 1, false) };

const outdoorTriggers = {
  irradianceAbove: trigger(0, 400, 10, true),
  irradianceBelow: trigger(0, 400, 10, false),
  outdoorAbove: trigger(-5, 35, 1, true),
  outdoorBelow: trigger(-5, 35, 1, false),
};

const calendarConditions = {
  months: fc.uniqueArray(month, { minLength: 3 }),
  dates: fc.record({ from: monthDay, to: monthDay }),
  weekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 2 }),
  clock: fc.record({ from: clockMinutes, to: clockMinutes }),
  grid: fc.array(fc.record({ month, from: clockMinutes, to: clockMinutes }), { maxLength: 20 }),
  sunOnFacade: fc.boolean(),
};

function sometimes(value: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  const absent = { weight: 2, arbitrary: fc.constant(undefined) };
  return fc.oneof(absent, { weight: 1, arbitrary: value });
}

/** Each condition in one rule of three, so that several often meet and some rules have none. */
function conditions(usesRoom: boolean): fc.Arbitrary<RuleConditions> {
  const all = { ...calendarConditions, ...outdoorTriggers, ...(usesRoom ? roomTriggers : {}) };
  const rare = Object.entries(all).map(([name, value]) => [name, sometimes(value)]);
  return fc.record(Object.fromEntries(rare)) as fc.Arbitrary<RuleConditions>;
}

const share = fc.constantFrom(undefined, 1, 0.5);
const action: fc.Arbitrary<RuleAction> = fc.oneof(
  fc.constant<RuleAction>({ kind: 'raise' }),
  share.map((s): RuleAction => ({ kind: 'lower', share: s })),
  fc
    .tuple(fc.constantFrom(0, 45), share)
    .map(([angle, s]): RuleAction => ({ kind: 'tilt', angle, share: s })),
  share.map((s): RuleAction => ({ kind: 'track', share: s })),
);

export function randomSchedule(usesRoom: boolean): fc.Arbitrary<Schedule> {
  const rule = fc.record({ when: conditions(usesRoom), then: action });
  return fc
    .record({
      rules: fc.array(rule, { maxLength: 6 }),
      minMinutesBetweenMoves: fc.constantFrom(0, 15, 20, 30, 60, 240, 1440),
    })
    .map(({ rules, minMinutesBetweenMoves }) => ({
      id: 'random',
      name: 'Random',
      rules: rules.map((r, i): Rule => ({ id: `rule-${i}`, ...r })),
      minMinutesBetweenMoves,
    }));
}
