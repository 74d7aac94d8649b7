import { showValue } from '../problem/index.ts';
import type { Problem } from '../problem/index.ts';
import { allowedDays, allowedQuarters } from './calendarMask.ts';
import type { Rule, RuleConditions } from './types.ts';

/** Rules that can never decide: those that never hold, and those behind one that always holds first. */
export function findIdleRules(rules: readonly Rule[]): Problem[] {
  const reaches = rules.map(({ when }) => reachOf(when));
  return reaches.flatMap((reach, i): Problem[] => {
    const warning = (message: string, allowed: string, fix: string) => [
      { path: `rules[${i}]`, message, value: showValue(rules[i].id), allowed, fix },
    ];
    if (reach.calendar.some((part) => !part.includes(1))) {
      return warning(
        'The rule never holds: no day or no hour meets all its dates and clock times',
        'at least one quarter of an hour in the year',
        'Widen its months, dates, weekdays or hours, or delete it.',
      );
    }
    const earlier = reaches.slice(0, i).findIndex((other) => covers(other, reach));
    if (earlier < 0) return [];
    return warning(
      `The rule is never reached: rule ${showValue(rules[earlier].id)} before it holds whenever it does`,
      'a rule that holds when none before it does',
      'Put it before that rule, or delete it.',
    );
  });
}

/** When a rule can hold. */
interface Reach {
  /** 1 where it may: days of the year, weekdays, quarters of the day by month. */
  calendar: Uint8Array[];
  /** What it asks of sensors, as text. */
  sensed: string[];
}

const SENSED = [
  'sunOnFacade',
  'irradianceAbove',
  'irradianceBelow',
  'outdoorAbove',
  'outdoorBelow',
  'roomAbove',
  'roomBelow',
] as const satisfies (keyof RuleConditions)[];

function reachOf(when: RuleConditions): Reach {
  const weekdays = Uint8Array.from([1, 2, 3, 4, 5, 6, 7], (day) =>
    Number(when.weekdays?.includes(day) ?? true),
  );
  return {
    calendar: [allowedDays(when), weekdays, allowedQuarters(when)],
    sensed: SENSED.flatMap((name) => {
      const asked = when[name];
      if (asked === undefined) return [];
      const values = typeof asked === 'boolean' ? asked : [asked.at, asked.release];
      return [JSON.stringify([name, values])];
    }),
  };
}

/** Whether a rule holds whenever another one does, as far as can be told before any sensor is read. */
function covers(rule: Reach, other: Reach): boolean {
  return (
    rule.sensed.every((asked) => other.sensed.includes(asked)) &&
    rule.calendar.every((part, p) => part.every((allowed, i) => allowed >= other.calendar[p][i]))
  );
}
