import type { TFunction } from 'i18next';
import type { Rule, RuleAction, RuleConditions, Trigger } from '../../../lib/schedule/index.ts';
import type { QuantityName } from '../../../lib/units/index.ts';
import { gridOf } from '../charts/schedule/cells.ts';
import type { Cells } from '../charts/schedule/cells.ts';
import { setOrDelete } from '../openings/edits.ts';

/** Edits of one rule of a draft. */

export type TriggerKey = {
  [K in keyof RuleConditions]-?: NonNullable<RuleConditions[K]> extends Trigger ? K : never;
}[keyof RuleConditions];

/** A reading that a rule can go by. */
export interface TriggerKind {
  key: TriggerKey;
  /** `above` holds upwards of the value, `below` downwards. */
  side: 'above' | 'below';
  quantity: QuantityName;
  step: number;
  /** What it starts as when ticked (common practice). */
  usual: Trigger;
}

const irradiance = { quantity: 'irradiance', step: 10 } as const;
const temperature = { quantity: 'temperature', step: 0.5 } as const;

/** What a sensor at a place reads. */
interface SensedPlace {
  place: 'facade' | 'outdoors' | 'room';
  kinds: readonly TriggerKind[];
}

export const TRIGGERS: readonly SensedPlace[] = [
  {
    place: 'facade',
    kinds: [
      {
        ...irradiance,
        key: 'irradianceAbove',
        side: 'above',
        usual: { at: 150, release: 100 },
      },
      {
        ...irradiance,
        key: 'irradianceBelow',
        side: 'below',
        usual: { at: 100, release: 150 },
      },
    ],
  },
  {
    place: 'outdoors',
    kinds: [
      {
        ...temperature,
        key: 'outdoorAbove',
        side: 'above',
        usual: { at: 22, release: 20 },
      },
      {
        ...temperature,
        key: 'outdoorBelow',
        side: 'below',
        usual: { at: 10, release: 12 },
      },
    ],
  },
  {
    place: 'room',
    kinds: [
      {
        ...temperature,
        key: 'roomAbove',
        side: 'above',
        usual: { at: 23, release: 22 },
      },
      {
        ...temperature,
        key: 'roomBelow',
        side: 'below',
        usual: { at: 20, release: 21 },
      },
    ],
  },
];

/** Changes where a trigger starts; the release keeps its distance. */
export function withStart({ at, release }: Trigger, start: number, least: number, most: number) {
  const gap = release - at;
  return { at: start, release: Math.max(least, Math.min(most, start + gap)) };
}

/** Changes where a trigger lets go; never beyond where it starts. */
export function withRelease({ at }: Trigger, release: number, side: 'above' | 'below'): Trigger {
  return { at, release: side === 'above' ? Math.min(at, release) : Math.max(at, release) };
}

const upTo = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

/** Takes a number of a list in or out, in order; the last one stays. No list is all of them. */
function toggled(list: readonly number[] | undefined, value: number, count: number): number[] {
  const set = new Set(list ?? upTo(count));
  if (!set.delete(value)) set.add(value);
  if (set.size === 0) set.add(value);
  return [...set].sort((a, b) => a - b);
}

export function toggleMonth(when: RuleConditions, month: number): void {
  when.months = toggled(when.months, month, 12);
}

/** Every day of the week is the same as no days named. */
export function toggleWeekday(when: RuleConditions, day: number): void {
  const days = toggled(when.weekdays, day, 7);
  setOrDelete(when, 'weekdays', days.length === 7 ? undefined : days);
}

type DayKind = 'all' | 'months' | 'dates';

/** By what a rule tells its days of the year. */
export function dayKindOf({ months, dates }: RuleConditions): DayKind {
  if (dates) return 'dates';
  return months ? 'months' : 'all';
}

const WARM_HALF = {
  north: { months: [5, 6, 7, 8, 9], dates: { from: '05-01', to: '09-30' } },
  south: { months: [1, 2, 3, 11, 12], dates: { from: '11-01', to: '03-31' } },
};

/** Changes by what a rule tells its days; begins with the warm half of the year. */
export function setDayKind(when: RuleConditions, kind: DayKind, latitude: number): void {
  const { months, dates } = WARM_HALF[latitude < 0 ? 'south' : 'north'];
  setOrDelete(when, 'months', kind === 'months' ? (when.months ?? [...months]) : undefined);
  setOrDelete(when, 'dates', kind === 'dates' ? (when.dates ?? { ...dates }) : undefined);
}

/** Changes what a rule does; a share that it covers stays. */
export function setAction(rule: Rule, kind: RuleAction['kind']): void {
  const share = rule.then.kind === 'raise' ? undefined : rule.then.share;
  const kept = share === undefined ? {} : { share };
  if (kind === 'raise') rule.then = { kind };
  else if (kind === 'tilt') rule.then = { kind, angle: USUAL_TILT, ...kept };
  else rule.then = { kind, ...kept };
}

/** Slats half closed, degrees (common practice). */
const USUAL_TILT = 45;

/** Changes how much of the glass a lowered blind covers. */
export function setShare(rule: Rule, share: number): void {
  if (rule.then.kind === 'raise') return;
  setOrDelete(rule.then, 'share', share === 1 ? undefined : share);
}

/** The rule that painting makes where none is chosen. */
export function paintedRule(t: TFunction<'schedules'>, cells: Cells): Rule {
  return {
    id: 'painted-hours',
    name: t('names.paintedRule'),
    when: { grid: gridOf(cells) },
    then: { kind: 'lower' },
  };
}
