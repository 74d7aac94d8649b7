import { showValue } from '../problem/index.ts';
import type { Problem } from '../problem/index.ts';
import { daysInMonth } from '../time/index.ts';
import { MINUTES_PER_QUARTER } from './calendarMask.ts';
import { findIdleRules } from './idleRules.ts';
import type { Rule, RuleAction, RuleConditions, Schedule, Trigger } from './types.ts';

/** What is wrong with a schedule, and what is allowed but hardly meant. */
export interface ScheduleCheck {
  /** It cannot be used before these are mended. */
  problems: Problem[];
  /** Looked for only where there is no problem. */
  warnings: Problem[];
}

/** Checks a schedule's values; paths are those inside the schedule: `rules[1].when.clock.from`. */
export function validateSchedule(schedule: Schedule): ScheduleCheck {
  const problems = [
    ...numberProblems('minMinutesBetweenMoves', schedule.minMinutesBetweenMoves, MIN_MINUTES),
    ...repeatedIds(schedule.rules),
    ...schedule.rules.flatMap(({ when, then }, i) => [
      ...calendarProblems(`rules[${i}].when`, when),
      ...triggerProblems(`rules[${i}].when`, when),
      ...actionProblems(`rules[${i}].then`, then),
    ]),
  ];
  return { problems, warnings: problems.length > 0 ? [] : findIdleRules(schedule.rules) };
}

interface Range {
  min: number;
  max: number;
  unit: string;
  /** Only multiples of it. */
  step?: number;
  fix: string;
}

const MIN_MINUTES: Range = {
  min: 0,
  max: 1440,
  unit: 'min',
  fix: 'Give the least time between two moves (15 to 30 minutes is common practice).',
};
const MONTH: Range = { min: 1, max: 12, unit: '', step: 1, fix: 'Number months from 1 January.' };
const WEEKDAY: Range = {
  min: 1,
  max: 7,
  unit: '',
  step: 1,
  fix: 'Number the days from 1 Monday to 7 Sunday.',
};
const CLOCK: Range = {
  min: 0,
  max: 1440,
  unit: 'minutes after midnight',
  step: MINUTES_PER_QUARTER,
  fix: 'Take a full quarter of an hour: 14:30 is 870.',
};
const SHARE: Range = {
  min: 0.05,
  max: 1,
  unit: 'of the glass height',
  fix: 'Give the part covered, or raise the blind.',
};
const ANGLE: Range = {
  min: -90,
  max: 90,
  unit: 'degrees',
  fix: 'Take 0 for flat slats, 90 for closed ones.',
};
const IRRADIANCE: Range = {
  min: 0,
  max: 1500,
  unit: 'W/m2',
  fix: 'Give global irradiance on the facade (150 to 300 W/m2 is common practice).',
};
const OUTDOOR: Range = { min: -60, max: 60, unit: 'C', fix: 'Give the outdoor temperature.' };
const ROOM: Range = { min: 0, max: 60, unit: 'C', fix: "Give the room's operative temperature." };

function numberProblems(path: string, value: unknown, range: Range): Problem[] {
  const { min, max, unit, step, fix } = range;
  const fits =
    typeof value === 'number' &&
    value >= min &&
    value <= max &&
    (step === undefined || value % step === 0);
  if (fits) return [];
  const steps = step === undefined ? '' : step === 1 ? ', whole numbers' : `, in steps of ${step}`;
  const allowed = `${min} to ${max}${unit && ` ${unit}`}${steps}`;
  return [{ path, message: 'The value does not fit', value: showValue(value), allowed, fix }];
}

function repeatedIds(rules: readonly Rule[]): Problem[] {
  return rules.flatMap(({ id }, i) => {
    if (rules.findIndex((rule) => rule.id === id) === i) return [];
    return [
      {
        path: `rules[${i}].id`,
        message: 'Another rule of the schedule has this id already',
        value: showValue(id),
        allowed: 'an id no other rule of the schedule has',
        fix: 'Give it another id.',
      },
    ];
  });
}

function calendarProblems(path: string, when: RuleConditions): Problem[] {
  const { months, dates, weekdays, clock, grid } = when;
  return [
    ...listProblems(`${path}.months`, months, MONTH),
    ...listProblems(`${path}.weekdays`, weekdays, WEEKDAY),
    ...(dates ? dateProblems(`${path}.dates.from`, dates.from) : []),
    ...(dates ? dateProblems(`${path}.dates.to`, dates.to) : []),
    ...(clock ? spanProblems(`${path}.clock`, clock) : []),
    ...(grid ?? []).flatMap((span, i) => [
      ...numberProblems(`${path}.grid[${i}].month`, span.month, MONTH),
      ...spanProblems(`${path}.grid[${i}]`, span),
    ]),
  ];
}

function listProblems(path: string, list: number[] | undefined, range: Range): Problem[] {
  return (list ?? []).flatMap((value, i) => numberProblems(`${path}[${i}]`, value, range));
}

function spanProblems(path: string, { from, to }: { from: number; to: number }): Problem[] {
  return [
    ...numberProblems(`${path}.from`, from, CLOCK),
    ...numberProblems(`${path}.to`, to, CLOCK),
  ];
}

/** 29 February is a day; the typical year folds it on the 28th. */
function dateProblems(path: string, text: unknown): Problem[] {
  const [, month, day] = (/^(\d\d)-(\d\d)$/.exec(String(text)) ?? []).map(Number);
  const days = month === 2 ? 29 : (daysInMonth[month - 1] ?? 0);
  if (day >= 1 && day <= days) return [];
  return [
    {
      path,
      message: 'This is no day of the year',
      value: showValue(text),
      allowed: 'MM-DD from 01-01 to 12-31',
      fix: 'Write month and day with two figures each: 06-21.',
    },
  ];
}

function triggerProblems(path: string, when: RuleConditions): Problem[] {
  const check = (name: keyof RuleConditions, trigger: Trigger | undefined, range: Range) =>
    trigger
      ? [
          ...numberProblems(`${path}.${name}.at`, trigger.at, range),
          ...numberProblems(`${path}.${name}.release`, trigger.release, range),
          ...directionProblems(`${path}.${name}.release`, name, trigger, range.unit),
        ]
      : [];
  return [
    ...check('irradianceAbove', when.irradianceAbove, IRRADIANCE),
    ...check('irradianceBelow', when.irradianceBelow, IRRADIANCE),
    ...check('outdoorAbove', when.outdoorAbove, OUTDOOR),
    ...check('outdoorBelow', when.outdoorBelow, OUTDOOR),
    ...check('roomAbove', when.roomAbove, ROOM),
    ...check('roomBelow', when.roomBelow, ROOM),
  ];
}

/** The release lies on the way back: not above `at` for `Above`, not below it for `Below`. */
function directionProblems(
  path: string,
  name: string,
  { at, release }: Trigger,
  unit: string,
): Problem[] {
  const above = name.endsWith('Above');
  if (!(above ? release > at : release < at)) return [];
  return [
    {
      path,
      message: `The release lies on the wrong side of the value it releases from (${at} ${unit})`,
      value: showValue(release),
      allowed: `${at} ${unit} or ${above ? 'less' : 'more'}`,
      fix: 'Exchange the two, or take the same value for both.',
    },
  ];
}

function actionProblems(path: string, action: RuleAction): Problem[] {
  const { kind } = action;
  if (!['raise', 'lower', 'tilt', 'track'].includes(kind)) {
    return [
      {
        path: `${path}.kind`,
        message: 'A blind cannot do this',
        value: showValue(kind),
        allowed: 'raise, lower, tilt, track',
        fix: 'Take one of these.',
      },
    ];
  }
  return [
    ...(kind === 'tilt' ? numberProblems(`${path}.angle`, action.angle, ANGLE) : []),
    ...(kind !== 'raise' && action.share !== undefined
      ? numberProblems(`${path}.share`, action.share, SHARE)
      : []),
  ];
}
