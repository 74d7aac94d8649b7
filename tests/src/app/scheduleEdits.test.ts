import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import bellingham from '../../../data/examples/bellingham.shadewright.json' with { type: 'json' };
import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import { checkProject, parseProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { presetSchedules, validateSchedule } from '../../../lib/schedule/index.ts';
import type { Rule, RuleConditions } from '../../../lib/schedule/index.ts';
import { stations } from '../../../src/library/climates.ts';
import { blinds, glazings } from '../../../src/library/index.ts';
import { placeAt } from '../../../src/app/schedules/dragOrder.svelte.ts';
import {
  deleteGroup,
  freeChannel,
  makeGroup,
  putIn,
  takeOut,
} from '../../../src/app/schedules/groupEdits.ts';
import {
  TRIGGERS,
  setAction,
  setDayKind,
  setShare,
  toggleMonth,
  toggleWeekday,
  withRelease,
  withStart,
} from '../../../src/app/schedules/ruleEdits.ts';
import {
  addRule,
  deleteRule,
  deleteSchedule,
  duplicateRule,
  duplicateSchedule,
  moveRule,
  newSchedule,
  startFrom,
} from '../../../src/app/schedules/scheduleEdits.ts';
import {
  blindKey,
  follow,
  followedBy,
  followersOf,
  groupKey,
  membersOf,
  scheduleOf,
  targetOfOpening,
  targetsOf,
} from '../../../src/app/schedules/targets.ts';
import { windLimitOf } from '../../../src/app/schedules/wind.ts';
import { Words } from '../../../src/words/index.ts';

const t = (await Words.load('en', ['schedules'])).of('schedules');

const library = { glazings, blinds, stations };
const project = (data: unknown = studio): Project => parseProject(structuredClone(data), library);

/** One edit with choices made by numbers, so that any sequence means something. */
type Edit = (draft: Project, a: number, b: number) => void;
const pick = <T>(list: readonly T[], n: number): T => list[n % list.length];

const edits: Record<string, Edit> = {
  group: (p, a, b) => makeGroup(t, p, [pick(p.openings, a).id, pick(p.openings, b).id]),
  putIn: (p, a, b) => p.groups.length > 0 && putIn(p, pick(p.groups, a).id, pick(p.openings, b).id),
  takeOut: (p, a) => takeOut(p, pick(p.openings, a).id),
  lead: (p, a, b) => {
    const target = targetsOf(p).filter((t) => t.kind === 'group')[a % (p.groups.length || 1)];
    if (!target) return;
    const members = membersOf(p, target);
    const group = p.groups.find((g) => g.id === target.id)!;
    group.lead = members.length > 0 ? pick(members, b).id : 'any';
  },
  deleteGroup: (p, a) => p.groups.length > 0 && deleteGroup(p, pick(p.groups, a).id),
  new: (p, a) => targetsOf(p).length > 0 && newSchedule(t, p, pick(targetsOf(p), a).key),
  duplicate: (p, a, b) =>
    p.schedules.length > 0 &&
    duplicateSchedule(p, pick(p.schedules, a).id, pick(targetsOf(p), b).key),
  preset: (p, a, b) => startFrom(p, pick(presetSchedules(), a).schedule, pick(targetsOf(p), b).key),
  delete: (p, a) => p.schedules.length > 0 && deleteSchedule(t, p, pick(p.schedules, a).id),
  follow: (p, a, b) =>
    p.schedules.length > 0 && follow(p, pick(targetsOf(p), a).key, pick(p.schedules, b).id),
  raise: (p, a) => follow(p, pick(targetsOf(p), a).key, undefined),
};

describe('edits of schedules and groups', () => {
  it('keep a project sound in any order', () => {
    const steps = fc.array(
      fc.tuple(fc.constantFrom(...Object.keys(edits)), fc.nat(99), fc.nat(99)),
      {
        maxLength: 14,
      },
    );
    fc.assert(
      fc.property(steps, (list) => {
        const draft = project();
        for (const [name, a, b] of list) edits[name](draft, a, b);
        expect(checkProject(draft, library).problems).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it('list groups by channel, then blinds that move alone', () => {
    const p = project();
    expect(targetsOf(p).map((t) => t.key)).toEqual([
      'group:west-remote',
      'blind:south-long',
      'blind:east-bench',
      'blind:roof-light',
    ]);
    expect(targetOfOpening(p, 'west-door')).toBe('group:west-remote');
    expect(targetOfOpening(p, 'north-strip')).toBeUndefined();
  });

  it('make a group that follows what its first blind followed, on a free channel', () => {
    const p = project();
    expect(freeChannel(p)).toBe(2);
    const id = makeGroup(t, p, ['east-bench', 'roof-light', 'north-strip'])!;
    const target = targetsOf(p).find((t) => t.key === groupKey(id))!;
    expect(membersOf(p, target).map((o) => o.id)).toEqual(['east-bench', 'roof-light']);
    expect(scheduleOf(p, target)?.id).toBe('east-morning');
    expect(p.groups.at(-1)?.channel).toBe(2);
    expect(makeGroup(t, p, ['north-strip'])).toBeUndefined();
  });

  it('let a blind that leaves a group follow its schedule alone, and lead no more', () => {
    const p = project(bellingham);
    expect(p.groups[0].lead).toBe('west-panes');
    takeOut(p, 'west-panes');
    expect(p.groups[0].lead).toBe('any');
    expect(p.openings.find((o) => o.id === 'west-panes')?.blind).toMatchObject({
      schedule: 'west-evening',
    });
    deleteGroup(p, 'west-screens');
    expect(p.groups).toEqual([]);
    expect(followersOf(p, 'west-evening').map((t) => t.key)).toEqual([
      blindKey('west-panes'),
      blindKey('west-door'),
    ]);
  });

  it('leave blinds raised whose schedule is deleted', () => {
    const p = project();
    deleteSchedule(t, p, 'west-afternoon');
    deleteSchedule(t, p, 'east-morning');
    const [group] = targetsOf(p);
    expect(scheduleOf(p, group)?.rules).toEqual([]);
    const alone = targetsOf(p).find((t) => t.key === 'blind:east-bench')!;
    expect(followedBy(p, alone)).toBeUndefined();
  });

  it('duplicate a schedule for one follower only', () => {
    const p = project();
    follow(p, 'blind:roof-light', 'south-sun');
    const copy = duplicateSchedule(p, 'south-sun', 'blind:roof-light')!;
    expect(followersOf(p, 'south-sun').map((t) => t.key)).toEqual(['blind:south-long']);
    expect(p.schedules.find((s) => s.id === copy)?.rules).toEqual(
      p.schedules.find((s) => s.id === 'south-sun')?.rules,
    );
  });
});

describe('edits of rules', () => {
  const ids = (rules: readonly Rule[]) => rules.map((r) => r.id);

  it('move, copy and delete them', () => {
    const schedule = project().schedules.find((s) => s.id === 'south-sun')!;
    moveRule(schedule, 'strong-sun', -5);
    expect(ids(schedule.rules)).toEqual(['strong-sun', 'not-in-winter']);
    expect(duplicateRule(schedule, 'strong-sun')).toBe('strong-sun-2');
    moveRule(schedule, 'strong-sun', 99);
    expect(ids(schedule.rules)).toEqual(['strong-sun-2', 'not-in-winter', 'strong-sun']);
    deleteRule(schedule, 'not-in-winter');
    expect(ids(schedule.rules)).toEqual(['strong-sun-2', 'strong-sun']);
    expect(addRule(schedule, schedule.rules[0], 0)).toBe('strong-sun-3');
  });

  it('carry a release along, and never beyond its start', () => {
    expect(withStart({ at: 150, release: 100 }, 300, 0, 1500)).toEqual({ at: 300, release: 250 });
    expect(withStart({ at: 150, release: 100 }, 20, 0, 1500)).toEqual({ at: 20, release: 0 });
    expect(withRelease({ at: 150, release: 100 }, 400, 'above')).toEqual({ at: 150, release: 150 });
    expect(withRelease({ at: 10, release: 12 }, 8, 'below')).toEqual({ at: 10, release: 10 });
  });

  it('give triggers, actions and days that can be run', () => {
    const rule: Rule = { id: 'r', when: {}, then: { kind: 'raise' } };
    const valid = () =>
      validateSchedule({ id: 's', name: 's', rules: [rule], minMinutesBetweenMoves: 0 });
    for (const { key, usual } of TRIGGERS.flatMap((group) => group.kinds)) {
      rule.when = { [key]: usual };
      expect(valid()).toEqual({ problems: [], warnings: [] });
    }
    rule.when = {};
    for (const kind of ['lower', 'tilt', 'track', 'raise', 'tilt'] as const) {
      setAction(rule, kind);
      setShare(rule, 0.6);
      expect(valid().problems).toEqual([]);
    }
    expect(rule.then).toEqual({ kind: 'tilt', angle: 45, share: 0.6 });
    setShare(rule, 1);
    expect(rule.then).toEqual({ kind: 'tilt', angle: 45 });
    for (const latitude of [44, -33]) {
      for (const kind of ['months', 'dates', 'all'] as const) {
        setDayKind(rule.when, kind, latitude);
        expect(valid()).toEqual({ problems: [], warnings: [] });
      }
    }
    expect(rule.when).toEqual({});
  });

  it('take months and weekdays in and out, but not the last', () => {
    const when: RuleConditions = { months: [6] };
    toggleMonth(when, 6);
    expect(when.months).toEqual([6]);
    toggleMonth(when, 5);
    expect(when.months).toEqual([5, 6]);
    toggleWeekday(when, 7);
    expect(when.weekdays).toEqual([1, 2, 3, 4, 5, 6]);
    toggleWeekday(when, 7);
    expect(when.weekdays).toBeUndefined();
  });
});

describe('dragging a rule', () => {
  const edges = [0, 40, 140].map((top, i) => ({ top, bottom: [40, 140, 160][i] }));

  it('changes places once the middle of a neighbour is crossed', () => {
    expect(placeAt(edges, 0, 60)).toBe(0);
    expect(placeAt(edges, 0, 91)).toBe(1);
    expect(placeAt(edges, 0, 500)).toBe(2);
    expect(placeAt(edges, 2, 95)).toBe(2);
    expect(placeAt(edges, 2, 85)).toBe(1);
    expect(placeAt(edges, 2, -50)).toBe(0);
  });
});

describe('the wind limit of a target', () => {
  it('is the lowest of its members, the own entry before that of the blind', () => {
    const p = project();
    const west = membersOf(p, targetsOf(p)[0]);
    const found = windLimitOf(p, west)!;
    const limits = west.map(
      (o) => o.blind!.windLimit ?? blinds.find((b) => b.id === o.blind!.blind)!.windLimit!,
    );
    expect(found.limit).toBe(Math.min(...limits));
    expect(found.opening).toBe('West door');
    expect(found.from).toBe('opening');
    expect(
      windLimitOf(
        p,
        p.openings.filter((o) => o.id === 'roof-light'),
      ),
    ).toBeUndefined();
  });
});
