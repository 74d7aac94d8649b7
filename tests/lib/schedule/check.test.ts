import { describe, expect, it } from 'vitest';
import { validateSchedule } from '../../../lib/schedule/index.ts';
import type { RuleAction, RuleConditions, Schedule } from '../../../lib/schedule/index.ts';
import { lower, rule, schedule } from './samples.ts';

const paths = (plan: Schedule) => validateSchedule(plan).problems.map((p) => p.path);
const warned = (...rules: Schedule['rules']) =>
  validateSchedule(schedule(rules)).warnings.map((w) => w.path);

describe('validateSchedule', () => {
  it('has nothing to say of values at the ends of their ranges', () => {
    const when: RuleConditions = {
      months: [1, 12],
      dates: { from: '02-29', to: '12-31' },
      weekdays: [1, 7],
      clock: { from: 0, to: 1440 },
      grid: [{ month: 12, from: 1425, to: 15 }],
      sunOnFacade: false,
      irradianceAbove: { at: 0, release: 0 },
      irradianceBelow: { at: 1500, release: 1500 },
      outdoorAbove: { at: -20, release: -20 },
      outdoorBelow: { at: 40, release: 41 },
      roomAbove: { at: 24, release: 23 },
      roomBelow: { at: 25, release: 26 },
    };
    const plan = schedule(
      [
        rule(when, { kind: 'tilt', angle: -90, share: 0.05 }, 'a'),
        rule({ ...when, sunOnFacade: true }, { kind: 'tilt', angle: 90, share: 1 }, 'b'),
      ],
      1440,
    );
    expect(validateSchedule(plan)).toEqual({ problems: [], warnings: [] });
  });

  const wrongWhen: [RuleConditions, string[]][] = [
    [{ months: [0, 6, 13, 1.5] }, ['months[0]', 'months[2]', 'months[3]']],
    [{ weekdays: [0, 1, 8] }, ['weekdays[0]', 'weekdays[2]']],
    [{ dates: { from: '02-30', to: '13-01' } }, ['dates.from', 'dates.to']],
    [{ dates: { from: '4-1', to: '04-31' } }, ['dates.from', 'dates.to']],
    [{ dates: { from: '05-00', to: 'June' } }, ['dates.from', 'dates.to']],
    [{ clock: { from: 871, to: 1455 } }, ['clock.from', 'clock.to']],
    [{ clock: { from: -15, to: NaN } }, ['clock.from', 'clock.to']],
    [{ grid: [{ month: 0, from: 5, to: 10.5 }] }, ['grid[0].month', 'grid[0].from', 'grid[0].to']],
    [{ irradianceAbove: { at: 100, release: 150 } }, ['irradianceAbove.release']],
    [{ irradianceBelow: { at: 150, release: 100 } }, ['irradianceBelow.release']],
    [{ outdoorAbove: { at: 20, release: 22 } }, ['outdoorAbove.release']],
    [{ outdoorBelow: { at: 22, release: 20 } }, ['outdoorBelow.release']],
    [{ roomAbove: { at: 24, release: 24.5 } }, ['roomAbove.release']],
    [{ roomBelow: { at: 20, release: 19 } }, ['roomBelow.release']],
    [
      { irradianceAbove: { at: NaN, release: -1 } },
      ['irradianceAbove.at', 'irradianceAbove.release'],
    ],
  ];
  it.each(wrongWhen)('%j', (when, fields) => {
    expect(paths(schedule([rule(when)]))).toEqual(fields.map((f) => `rules[0].when.${f}`));
  });

  const wrongThen: [RuleAction, string][] = [
    [{ kind: 'lower', share: 0 }, 'share'],
    [{ kind: 'track', share: 1.01 }, 'share'],
    [{ kind: 'tilt', angle: 91 }, 'angle'],
    [{ kind: 'tilt', angle: NaN }, 'angle'],
    [{ kind: 'wink' } as unknown as RuleAction, 'kind'],
  ];
  it.each(wrongThen)('%j', (then, field) => {
    expect(paths(schedule([rule({}, then)]))).toEqual([`rules[0].then.${field}`]);
  });

  it.each([-1, 1441, NaN, Infinity])('%s minutes between moves', (minutes) => {
    expect(paths(schedule([], minutes))).toEqual(['minMinutesBetweenMoves']);
  });

  it('finds an id that is used twice', () => {
    const twice = [rule({ months: [1] }), rule({ months: [2] })];
    expect(paths(schedule(twice))).toEqual(['rules[1].id']);
  });

  it('says what stands there, what is allowed and what to do', () => {
    const { problems } = validateSchedule(schedule([rule({ clock: { from: 871, to: 900 } })]));
    expect(problems[0]).toMatchObject({ value: '871' });
    expect(problems[0].allowed).toContain('1440');
    expect(problems[0].fix).toBeTruthy();
  });
});

describe('rules that never decide', () => {
  const a = (when: RuleConditions) => rule(when, lower, 'a');
  const b = (when: RuleConditions) => rule(when, { kind: 'track' }, 'b');
  const sun = { irradianceAbove: { at: 150, release: 100 } };

  it.each([
    [{}, { months: [7] }],
    [{ weekdays: [1, 2, 3, 4, 5, 6, 7], clock: { from: 0, to: 1440 } }, sun],
    [{ months: [6, 7, 8] }, { months: [7], clock: { from: 600, to: 660 } }],
    [{ dates: { from: '11-01', to: '03-31' } }, { months: [1, 2], ...sun }],
    [{ clock: { from: 1320, to: 420 } }, { clock: { from: 0, to: 300 } }],
    [
      { ...sun, sunOnFacade: true },
      { ...sun, sunOnFacade: true, weekdays: [6] },
    ],
    [{ roomAbove: { at: 23, release: 22 } }, { roomAbove: { at: 24, release: 23 } }],
    [{ outdoorBelow: { at: 5, release: 7 } }, { outdoorBelow: { at: 4, release: 7 }, months: [1] }],
    [{ grid: [{ month: 5, from: 600, to: 720 }] }, { months: [5], clock: { from: 615, to: 660 } }],
  ])('%j hides %j', (first, second) => {
    expect(warned(a(first), b(second))).toEqual(['rules[1]']);
    expect(warned(b(second), a(first))).toEqual([]);
  });

  it.each([
    [{ months: [6, 7] }, { months: [7, 8] }],
    [sun, { months: [7] }],
    [{ ...sun, sunOnFacade: true }, sun],
    [{ sunOnFacade: true }, { sunOnFacade: false }],
    [{ weekdays: [1, 2, 3, 4, 5] }, { dates: { from: '07-01', to: '07-03' } }],
    [{ roomAbove: { at: 24, release: 23 } }, { roomAbove: { at: 23, release: 22 } }],
    [{ roomAbove: { at: 24, release: 22 } }, { roomAbove: { at: 23, release: 22 } }],
    [{ roomAbove: { at: 23, release: 23 } }, { roomAbove: { at: 23, release: 22 } }],
    [{ outdoorBelow: { at: 4, release: 7 } }, { outdoorBelow: { at: 5, release: 7 } }],
  ])('%j leaves something to %j', (first, second) => {
    expect(warned(a(first), b(second))).toEqual([]);
  });

  it('finds one whose calendar is empty', () => {
    expect(warned(a({ grid: [] }), b({}))).toEqual(['rules[0]']);
    expect(warned(a({ months: [2], dates: { from: '06-01', to: '06-30' } }))).toEqual(['rules[0]']);
    expect(warned(a({ months: [2], grid: [{ month: 3, from: 0, to: 60 }] }))).toEqual(['rules[0]']);
  });

  it('finds one that asks for a reading above and below at once', () => {
    const hot = { at: 25, release: 24 };
    expect(warned(a({ outdoorAbove: hot, outdoorBelow: { at: 20, release: 21 } }))).toHaveLength(1);
    expect(warned(a({ outdoorAbove: hot, outdoorBelow: { at: 28, release: 30 } }))).toEqual([]);
    // Both hold at 0 W/m2 itself.
    const none = { at: 0, release: 0 };
    expect(warned(a({ irradianceAbove: none, irradianceBelow: none }))).toEqual([]);
  });
});
