import { InputError } from '../problem/index.ts';
import { HOURS } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { MINUTES_PER_QUARTER, makeMask } from './calendarMask.ts';
import { hourWords } from './hourWords.ts';
import { createMemo } from './memo.ts';
import type { RuleAction, RuleConditions, Schedule } from './types.ts';

/** Positions are kept as bytes. */
const MOST_ACTIONS = 256;
/** Masks kept for each calendar, 35 kB each: enough for a search over clock hours. */
const MOST_MASKS = 256;

/** A rule with its calendar looked up. */
export interface CompiledRule {
  when: RuleConditions;
  /** 1 at the steps whose date and clock allow the rule; STEPS values. Shared: read only. */
  allowed: Uint8Array;
  /** Hours with such a step, in order. Shared: read only. */
  hours: Uint16Array;
  /** Number of what it does. */
  action: number;
}

/** A schedule made ready for a calendar. */
export interface CompiledSchedule {
  rules: CompiledRule[];
  /** What blinds may be told, each different action once; number 0 is raised. */
  actions: RuleAction[];
  /** Least steps between two moves. */
  minSteps: number;
  /** Whether any rule asks for the room's temperature. */
  usesRoom: boolean;
}

/**
 * Looks up the calendar of every rule and numbers the actions, equal ones alike. Masks are kept by
 * calendar and conditions, so that editing one rule looks up one mask.
 * @throws InputError for more different actions than a byte can number
 */
export function compileSchedule(schedule: Schedule, calendar: YearCalendar): CompiledSchedule {
  const actions: RuleAction[] = [{ kind: 'raise' }];
  const numbers = new Map([[actionKey(actions[0]), 0]]);
  const rules = schedule.rules.map(({ when, then }) => {
    const key = actionKey(then);
    let action = numbers.get(key);
    if (action === undefined) {
      action = actions.push(then) - 1;
      numbers.set(key, action);
    }
    return { when, action, ...calendarOf(when, calendar) };
  });
  if (actions.length > MOST_ACTIONS) {
    throw new InputError({
      path: 'rules',
      message: 'The schedule tells the blind too many different things',
      value: `${actions.length - 1} different actions`,
      allowed: `up to ${MOST_ACTIONS - 1}`,
      fix: 'Give rules that are nearly alike the same angle and share.',
    });
  }
  return {
    rules,
    actions,
    minSteps: Math.ceil(schedule.minMinutesBetweenMoves / MINUTES_PER_QUARTER),
    usesRoom: schedule.rules.some(({ when }) => Boolean(when.roomAbove ?? when.roomBelow)),
  };
}

/** Whether any rule asks for the room's temperature, so that blind and room are stepped together. */
export function usesRoom(compiled: CompiledSchedule): boolean {
  return compiled.usesRoom;
}

/** The same text for actions that set the blind alike. */
function actionKey(action: RuleAction): string {
  if (action.kind === 'raise') return 'raise';
  const angle = action.kind === 'tilt' ? action.angle : '';
  return `${action.kind} ${angle} ${action.share ?? 1}`;
}

type CalendarMask = Pick<CompiledRule, 'allowed' | 'hours'>;

const keepMask = createMemo<YearCalendar, CalendarMask>(MOST_MASKS);

/** The kept mask of a rule's calendar conditions. */
function calendarOf(when: RuleConditions, calendar: YearCalendar): CalendarMask {
  const { months, dates, weekdays, clock, grid } = when;
  const key = JSON.stringify([months, dates, weekdays, clock, grid]);
  return keepMask(calendar, key, () => findMask(when, calendar));
}

function findMask(when: RuleConditions, calendar: YearCalendar): CalendarMask {
  const allowed = makeMask(when, calendar);
  const words = hourWords(allowed);
  const hours = new Uint16Array(HOURS);
  let count = 0;
  for (let hour = 0; hour < HOURS; hour++) if (words[hour] !== 0) hours[count++] = hour;
  return { allowed, hours: hours.slice(0, count) };
}
