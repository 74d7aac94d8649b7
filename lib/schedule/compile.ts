import { DAYS, STEPS, dayOfYear, monthOfDay } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import type { Rule, RuleAction, RuleConditions, Schedule } from './types.ts';

const QUARTERS = 96;
const MINUTES_PER_QUARTER = 15;

/** A rule with its calendar looked up. */
export interface CompiledRule {
  when: RuleConditions;
  /** 1 at the steps whose date and clock allow the rule; STEPS values. */
  allowed: Uint8Array;
  /** Number of what it does. */
  action: number;
}

/** A schedule made ready for a calendar. */
export interface CompiledSchedule {
  rules: CompiledRule[];
  /** What blinds may be told; number 0 is raised. */
  actions: RuleAction[];
  /** Least steps between two moves. */
  minSteps: number;
  /** Whether any rule asks for the room's temperature. */
  usesRoom: boolean;
}

/** Looks up the calendar of every rule and numbers the actions, equal ones alike. */
export function compileSchedule(schedule: Schedule, calendar: YearCalendar): CompiledSchedule {
  const actions: RuleAction[] = [{ kind: 'raise' }];
  const keys = [actionKey(actions[0])];
  const numberOf = (action: RuleAction) => {
    const key = actionKey(action);
    let i = keys.indexOf(key);
    if (i < 0) {
      i = keys.push(key) - 1;
      actions.push(action);
    }
    return i;
  };
  const rules = schedule.rules.map((rule: Rule) => ({
    when: rule.when,
    allowed: allowedSteps(rule.when, calendar),
    action: numberOf(rule.then),
  }));
  return {
    rules,
    actions,
    minSteps: Math.ceil(schedule.minMinutesBetweenMoves / MINUTES_PER_QUARTER),
    usesRoom: schedule.rules.some(({ when }) => Boolean(when.roomAbove ?? when.roomBelow)),
  };
}

function actionKey(action: RuleAction): string {
  if (action.kind === 'raise') return 'raise';
  const angle = action.kind === 'tilt' ? action.angle : '';
  return `${action.kind} ${angle} ${action.share ?? 1}`;
}

const calendarMasks = new WeakMap<YearCalendar, Map<string, Uint8Array>>();
const MOST_MASKS = 400;

/**
 * 1 at each step whose local date and clock meet a rule's calendar conditions; STEPS values. Kept
 * by calendar and conditions, so that editing one rule looks up one mask.
 */
function allowedSteps(when: RuleConditions, calendar: YearCalendar): Uint8Array {
  const { months, dates, weekdays, clock, grid } = when;
  const key = JSON.stringify([months, dates, weekdays, clock, grid]);
  let masks = calendarMasks.get(calendar);
  if (!masks || masks.size > MOST_MASKS) calendarMasks.set(calendar, (masks = new Map()));
  let mask = masks.get(key);
  if (!mask) masks.set(key, (mask = makeMask(when, calendar)));
  return mask;
}

function makeMask(when: RuleConditions, calendar: YearCalendar): Uint8Array {
  const days = allowedDays(when, calendar);
  const quarters = when.clock ? quartersIn(when.clock.from, when.clock.to) : everyQuarter;
  const painted = when.grid && paintedQuarters(when.grid);
  const mask = new Uint8Array(STEPS);
  for (let step = 0; step < STEPS; step++) {
    const day = calendar.day[step];
    const quarter = calendar.quarter[step];
    const clockHolds =
      quarters[quarter] & (painted ? painted[monthIndex[day] * QUARTERS + quarter] : 1);
    mask[step] = days[day] & clockHolds;
  }
  return mask;
}

const everyQuarter = new Uint8Array(QUARTERS).fill(1);
const monthIndex = Uint8Array.from({ length: DAYS }, (_, day) => monthOfDay(day) - 1);

/** Quarters of the day from `from` to `to` (minutes); past midnight where `to` is not after `from`. */
function quartersIn(from: number, to: number): Uint8Array {
  return Uint8Array.from({ length: QUARTERS }, (_, i) => {
    const at = i * MINUTES_PER_QUARTER;
    if (from === to) return 1;
    return Number(from < to ? at >= from && at < to : at >= from || at < to);
  });
}

function paintedQuarters(grid: NonNullable<RuleConditions['grid']>): Uint8Array {
  const painted = new Uint8Array(12 * QUARTERS);
  for (const { month, from, to } of grid) {
    const quarters = quartersIn(from, to);
    for (let i = 0; i < QUARTERS; i++) painted[(month - 1) * QUARTERS + i] |= quarters[i];
  }
  return painted;
}

function allowedDays(when: RuleConditions, calendar: YearCalendar): Uint8Array {
  const { months, dates, weekdays } = when;
  const from = dates && dayIndex(dates.from);
  const to = dates && dayIndex(dates.to);
  return Uint8Array.from({ length: DAYS }, (_, day) => {
    if (months && !months.includes(monthOfDay(day))) return 0;
    if (weekdays && !weekdays.includes(calendar.weekday[day])) return 0;
    if (from === undefined || to === undefined) return 1;
    return Number(from <= to ? day >= from && day <= to : day >= from || day <= to);
  });
}

function dayIndex(monthDay: string): number {
  const [month, day] = monthDay.split('-').map(Number);
  return dayOfYear(month, day);
}
