import { problem, showValue, verbatim } from '../problem/index.ts';
import type { Problem, ProblemTexts, Text } from '../problem/index.ts';
import { daysInMonth } from '../time/index.ts';
import { MINUTES_PER_DAY, MINUTES_PER_QUARTER } from './localYear.ts';
import { unreachedRules } from './reach.ts';
import type { Unreached } from './reach.ts';
import { rangeText, say } from './say.ts';
import type { RangeUnit } from './say.ts';
import type { Rule, RuleAction, RuleConditions, Schedule, Trigger } from './types.ts';

/** What is wrong with a schedule, and what can be run but looks like a slip. */
export interface ScheduleCheck {
  problems: Problem[];
  warnings: Problem[];
}

/**
 * Checks a schedule: what keeps it from being run, and rules that never decide (looked for only
 * where there are no problems). Paths begin at the schedule: `rules[2].when.clock.from`.
 */
export function validateSchedule(schedule: Schedule): ScheduleCheck {
  const { rules } = schedule;
  const problems = [
    ...number(
      'minMinutesBetweenMoves',
      schedule.minMinutesBetweenMoves,
      0,
      1440,
      'min',
      say('schedule.pause'),
    ),
    ...repeatedIds(rules),
    ...rules.flatMap((rule, i) => {
      const path = `rules[${i}]`;
      return [...conditions(`${path}.when`, rule.when), ...action(`${path}.then`, rule.then)];
    }),
  ];
  if (problems.length > 0) return { problems, warnings: [] };
  return { problems, warnings: unreachedRules(rules).map((found) => unreached(rules, found)) };
}

/** A rule as a message names it. */
function nameOf({ name, id }: Rule): string {
  return showValue(name?.trim() || id);
}

function repeatedIds(rules: readonly Rule[]): Problem[] {
  return rules.flatMap(({ id }, i) => {
    const first = rules.findIndex((rule) => rule.id === id);
    if (first === i) return [];
    const texts = {
      message: say('schedule.sameId', { rule: first + 1 }),
      allowed: say('schedule.ownId'),
      fix: say('schedule.sameIdFix'),
    };
    return problem(`rules[${i}].id`, texts, id);
  });
}

function conditions(path: string, when: RuleConditions): Problem[] {
  const { months, dates, weekdays, clock, grid } = when;
  return [
    ...(months ? numbers(`${path}.months`, months, 12, 'month') : []),
    ...(weekdays ? numbers(`${path}.weekdays`, weekdays, 7, 'weekday') : []),
    ...(dates ? date(`${path}.dates.from`, dates.from) : []),
    ...(dates ? date(`${path}.dates.to`, dates.to) : []),
    ...(clock ? clockTime(`${path}.clock.from`, clock.from) : []),
    ...(clock ? clockTime(`${path}.clock.to`, clock.to) : []),
    ...(grid ?? []).flatMap(({ month, from, to }, i) => [
      ...whole(`${path}.grid[${i}].month`, month, 12, 'month'),
      ...clockTime(`${path}.grid[${i}].from`, from),
      ...clockTime(`${path}.grid[${i}].to`, to),
    ]),
    ...SENSED.flatMap(({ field, above, min, max, unit }) => {
      const trigger = when[field];
      return trigger ? triggerProblems(`${path}.${field}`, trigger, above, min, max, unit) : [];
    }),
  ];
}

/** Ranges as wide as readings on earth go. */
const IRRADIANCE = { min: 0, max: 1500, unit: 'W/m2' } as const;
const OUTDOOR = { min: -60, max: 60, unit: 'C' } as const;
const ROOM = { min: 0, max: 60, unit: 'C' } as const;
const SENSED = [
  { field: 'irradianceAbove', above: true, ...IRRADIANCE },
  { field: 'irradianceBelow', above: false, ...IRRADIANCE },
  { field: 'outdoorAbove', above: true, ...OUTDOOR },
  { field: 'outdoorBelow', above: false, ...OUTDOOR },
  { field: 'roomAbove', above: true, ...ROOM },
  { field: 'roomBelow', above: false, ...ROOM },
] as const;

function triggerProblems(
  path: string,
  { at, release }: Trigger,
  above: boolean,
  min: number,
  max: number,
  unit: RangeUnit,
): Problem[] {
  const fix = say('schedule.trigger', { unit: say(`unit.${unit}`) });
  const ranges = [
    ...number(`${path}.at`, at, min, max, unit, fix),
    ...number(`${path}.release`, release, min, max, unit, fix),
  ];
  if (ranges.length > 0 || (above ? release <= at : release >= at)) return ranges;
  const texts = {
    message: say(above ? 'schedule.releaseAbove' : 'schedule.releaseBelow'),
    allowed: above ? rangeText(min, at, unit) : rangeText(at, max, unit),
    fix: say(above ? 'schedule.giveBelow' : 'schedule.giveAbove', { at }),
  };
  return [problem(`${path}.release`, texts, release)];
}

function action(path: string, then: RuleAction): Problem[] {
  switch (then.kind) {
    case 'raise':
      return [];
    case 'lower':
    case 'track':
      return share(path, then.share);
    case 'tilt':
      return [
        ...number(`${path}.angle`, then.angle, -90, 90, 'degrees', say('schedule.angle')),
        ...share(path, then.share),
      ];
    default:
      return [
        problem(
          `${path}.kind`,
          {
            message: say('schedule.action'),
            allowed: verbatim('raise, lower, tilt, track'),
            fix: say('schedule.actionFix'),
          },
          (then as { kind: unknown }).kind,
        ),
      ];
  }
}

function share(path: string, value: number | undefined): Problem[] {
  if (value === undefined) return [];
  return number(`${path}.share`, value, 0.05, 1, undefined, say('schedule.share'));
}

function number(
  path: string,
  value: unknown,
  min: number,
  max: number,
  unit: RangeUnit | undefined,
  fix: Text,
): Problem[] {
  if (typeof value === 'number' && value >= min && value <= max) return [];
  const isNumber = typeof value === 'number' && !Number.isNaN(value);
  const message = say(isNumber ? 'schedule.outOfRange' : 'schedule.notNumber');
  return [problem(path, { message, allowed: rangeText(min, max, unit), fix }, value)];
}

type Counted = 'month' | 'weekday';

function numbers(path: string, list: readonly number[], most: number, of: Counted): Problem[] {
  if (list.length > 0) return list.flatMap((n, i) => whole(`${path}[${i}]`, n, most, of));
  const texts = {
    message: say('schedule.none'),
    allowed: say('schedule.wholes', { most }),
    fix: say(`schedule.${of}OrAll`),
  };
  return [problem(path, texts, [])];
}

function whole(path: string, value: number, most: number, of: Counted): Problem[] {
  if (Number.isInteger(value) && value >= 1 && value <= most) return [];
  const allowed = say('schedule.whole', { most });
  const texts = { message: say('schedule.notOne'), allowed, fix: say(`schedule.${of}`) };
  return [problem(path, texts, value)];
}

function date(path: string, value: string): Problem[] {
  const [, month, day] = /^(\d\d)-(\d\d)$/.exec(value) ?? [];
  const days = month === '02' ? 29 : (daysInMonth[Number(month) - 1] ?? 0);
  if (Number(day) >= 1 && Number(day) <= days) return [];
  const allowed = say('schedule.dayForm');
  const texts = { message: say('schedule.noDay'), allowed, fix: say('schedule.dayFix') };
  return [problem(path, texts, value)];
}

function clockTime(path: string, value: number): Problem[] {
  const inDay = value >= 0 && value <= MINUTES_PER_DAY;
  if (inDay && value % MINUTES_PER_QUARTER === 0) return [];
  const nearest = Math.round(value / MINUTES_PER_QUARTER) * MINUTES_PER_QUARTER;
  const texts = {
    message: say(inDay ? 'schedule.notQuarter' : 'schedule.noTime'),
    allowed: say('schedule.minutes', { most: MINUTES_PER_DAY, step: MINUTES_PER_QUARTER }),
    fix: inDay ? say('schedule.nearest', { nearest }) : say('schedule.countMinutes'),
  };
  return [problem(path, texts, value)];
}

function unreached(rules: readonly Rule[], found: Unreached): Problem {
  const path = `rules[${found.rule}]`;
  if (found.why === 'calendar') return problem(path, never('neverTogether'));
  if (found.why === 'triggers') return problem(path, never('contradiction'));
  const names = found.by.map((i) => nameOf(rules[i])).join(', ');
  return problem(path, never('covered', { rules: names }));
}

function never(
  why: 'neverTogether' | 'contradiction' | 'covered',
  values?: Record<string, string>,
): ProblemTexts {
  return { message: say(`schedule.${why}`, values), fix: say(`schedule.${why}Fix`) };
}
