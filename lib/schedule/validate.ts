import { showValue } from '../problem/index.ts';
import type { Problem } from '../problem/index.ts';
import { daysInMonth } from '../time/index.ts';
import { MINUTES_PER_DAY, MINUTES_PER_QUARTER } from './localYear.ts';
import { unreachedRules } from './reach.ts';
import type { Unreached } from './reach.ts';
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
    ...number('minMinutesBetweenMoves', schedule.minMinutesBetweenMoves, 0, 1440, 'min', PAUSE),
    ...repeatedIds(rules),
    ...rules.flatMap((rule, i) => {
      const path = `rules[${i}]`;
      return [...conditions(`${path}.when`, rule.when), ...action(`${path}.then`, rule.then)];
    }),
  ];
  if (problems.length > 0) return { problems, warnings: [] };
  return { problems, warnings: unreachedRules(rules).map((found) => unreached(rules, found)) };
}

const PAUSE = 'Give the least time between two moves; 15 to 30 minutes is common practice.';
const MONTH = 'Number the months from 1 January to 12 December.';
const WEEKDAY = 'Number the days from 1 Monday to 7 Sunday.';

/** A rule as a message names it. */
function nameOf({ name, id }: Rule): string {
  return showValue(name?.trim() || id);
}

function repeatedIds(rules: readonly Rule[]): Problem[] {
  return rules.flatMap(({ id }, i) => {
    const first = rules.findIndex((rule) => rule.id === id);
    if (first === i) return [];
    return {
      path: `rules[${i}].id`,
      message: `is the id of rule ${first + 1} too`,
      value: showValue(id),
      allowed: 'an id of its own',
      fix: 'Give the rule another id.',
    };
  });
}

function conditions(path: string, when: RuleConditions): Problem[] {
  const { months, dates, weekdays, clock, grid } = when;
  return [
    ...(months ? numbers(`${path}.months`, months, 12, MONTH) : []),
    ...(weekdays ? numbers(`${path}.weekdays`, weekdays, 7, WEEKDAY) : []),
    ...(dates ? date(`${path}.dates.from`, dates.from) : []),
    ...(dates ? date(`${path}.dates.to`, dates.to) : []),
    ...(clock ? clockTime(`${path}.clock.from`, clock.from) : []),
    ...(clock ? clockTime(`${path}.clock.to`, clock.to) : []),
    ...(grid ?? []).flatMap(({ month, from, to }, i) => [
      ...whole(`${path}.grid[${i}].month`, month, 12, MONTH),
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
const IRRADIANCE = { min: 0, max: 1500, unit: 'W/m2' };
const OUTDOOR = { min: -60, max: 60, unit: 'C' };
const ROOM = { min: 0, max: 60, unit: 'C' };
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
  unit: string,
): Problem[] {
  const fix = `Give both values in ${unit}: where the rule starts to hold and where it stops.`;
  const ranges = [
    ...number(`${path}.at`, at, min, max, unit, fix),
    ...number(`${path}.release`, release, min, max, unit, fix),
  ];
  if (ranges.length > 0 || (above ? release <= at : release >= at)) return ranges;
  const side = above ? 'above' : 'below';
  return [
    {
      path: `${path}.release`,
      message: `lies ${side} the value at which the rule starts to hold`,
      value: showValue(release),
      allowed: above ? `${min} to ${at} ${unit}` : `${at} to ${max} ${unit}`,
      fix: `The gap between the two keeps a blind from moving to and fro: exchange them, or give a release ${above ? 'below' : 'above'} ${at}.`,
    },
  ];
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
        ...number(`${path}.angle`, then.angle, -90, 90, 'degrees', 'Take 0 for flat slats.'),
        ...share(path, then.share),
      ];
    default:
      return [
        {
          path: `${path}.kind`,
          message: 'is nothing a blind can do',
          value: showValue((then as { kind: unknown }).kind),
          allowed: 'raise, lower, tilt, track',
          fix: 'Say what the rule does with the blind.',
        },
      ];
  }
}

function share(path: string, value: number | undefined): Problem[] {
  if (value === undefined) return [];
  const fix = 'Give the part of the glass height it covers, 1 for all; raise it for none.';
  return number(`${path}.share`, value, 0.05, 1, '', fix);
}

function number(
  path: string,
  value: unknown,
  min: number,
  max: number,
  unit: string,
  fix: string,
): Problem[] {
  if (typeof value === 'number' && value >= min && value <= max) return [];
  const isNumber = typeof value === 'number' && !Number.isNaN(value);
  return [
    {
      path,
      message: isNumber ? 'is out of range' : 'is no number',
      value: typeof value === 'number' ? String(value) : showValue(value),
      allowed: `${min} to ${max}${unit && ` ${unit}`}`,
      fix,
    },
  ];
}

function numbers(path: string, list: readonly number[], most: number, fix: string): Problem[] {
  if (list.length > 0) return list.flatMap((n, i) => whole(`${path}[${i}]`, n, most, fix));
  return [
    {
      path,
      message: 'names none, so the rule would never hold',
      value: '[]',
      allowed: `whole numbers from 1 to ${most}`,
      fix: `${fix} Leave it out for all.`,
    },
  ];
}

function whole(path: string, value: number, most: number, fix: string): Problem[] {
  if (Number.isInteger(value) && value >= 1 && value <= most) return [];
  const allowed = `a whole number from 1 to ${most}`;
  return [{ path, message: 'is not one of them', value: showValue(value), allowed, fix }];
}

function date(path: string, value: string): Problem[] {
  const [, month, day] = /^(\d\d)-(\d\d)$/.exec(value) ?? [];
  const days = month === '02' ? 29 : (daysInMonth[Number(month) - 1] ?? 0);
  if (Number(day) >= 1 && Number(day) <= days) return [];
  return [
    {
      path,
      message: 'is no day of the year',
      value: showValue(value),
      allowed: 'month and day as MM-DD',
      fix: 'Write 05-01 for 1 May.',
    },
  ];
}

function clockTime(path: string, value: number): Problem[] {
  const inDay = value >= 0 && value <= MINUTES_PER_DAY;
  if (inDay && value % MINUTES_PER_QUARTER === 0) return [];
  const nearest = Math.round(value / MINUTES_PER_QUARTER) * MINUTES_PER_QUARTER;
  return [
    {
      path,
      message: inDay ? 'is not a quarter of an hour' : 'is no time of the day',
      value: showValue(value),
      allowed: `0 to ${MINUTES_PER_DAY} minutes after midnight, in steps of ${MINUTES_PER_QUARTER}`,
      fix: inDay ? `Take ${nearest}.` : 'Count minutes after midnight: 14:30 is 870.',
    },
  ];
}

function unreached(rules: readonly Rule[], found: Unreached): Problem {
  const path = `rules[${found.rule}]`;
  if (found.why === 'calendar') {
    const message = 'never decides: its months, dates, weekdays and hours never come together';
    return { path, message, fix: 'Compare its calendar conditions, or delete the rule.' };
  }
  if (found.why === 'triggers') {
    const message = 'never decides: it asks for a reading above and below at once';
    return { path, message, fix: 'Let the two triggers overlap, or leave one out.' };
  }
  const by = found.by.map((i) => nameOf(rules[i])).join(', ');
  const message = `never decides: whenever it holds, one before it does (${by})`;
  return { path, message, fix: 'Move it further up, or delete it.' };
}
