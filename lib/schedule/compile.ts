import { InputError } from '../problem/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { calendarSteps } from './calendarSteps.ts';
import { MINUTES_PER_QUARTER } from './localYear.ts';
import type { StepSet } from './stepSet.ts';
import type { RuleAction, RuleConditions, Schedule } from './types.ts';

/** Positions are kept as bytes. */
const MOST_ACTIONS = 256;

/** A rule with its calendar looked up. */
export interface CompiledRule {
  when: RuleConditions;
  /** Steps whose date and clock allow the rule. */
  allowed: StepSet;
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
 * Looks up the calendar of every rule and numbers the actions, equal ones alike.
 * @param schedule one in which `validateSchedule` finds no problems
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
    return { when, allowed: calendarSteps(when, calendar), action };
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

/** Whether any rule asks for the room's temperature, so that blind and room go step by step. */
export function usesRoom(compiled: CompiledSchedule): boolean {
  return compiled.usesRoom;
}

/** The same text for actions that set a blind alike. */
function actionKey(action: RuleAction): string {
  if (action.kind === 'raise') return 'raise';
  const angle = action.kind === 'tilt' ? action.angle : '';
  return `${action.kind} ${angle} ${action.share ?? 1}`;
}
