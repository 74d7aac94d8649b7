import { localQuarters } from './localYear.ts';
import { isEmpty, remove } from './stepSet.ts';
import type { StepSet } from './stepSet.ts';
import type { Rule, RuleConditions, Trigger } from './types.ts';
import { DAYS } from '../time/index.ts';

/** A rule that never decides, by its place in the list. */
export interface Unreached {
  rule: number;
  /** Its calendar conditions never meet, its triggers never do, or rules before it cover it. */
  why: 'calendar' | 'triggers' | 'covered';
  /** Places of the rules that cover it. */
  by: number[];
}

/**
 * Rules that never decide, whatever the year and the weather: their conditions never hold together,
 * or rules before them hold whenever they do. A rule before covers another's hours where the
 * triggers of the other imply its own.
 */
export function unreachedRules(rules: readonly Rule[]): Unreached[] {
  const quarters = rules.map(({ when }) => startsOfYear.map((days) => localQuarters(when, days)));
  return rules.flatMap(({ when }, rule): Unreached[] => {
    if (quarters[rule].every(isEmpty)) return [{ rule, why: 'calendar', by: [] }];
    if (contradicts(when)) return [{ rule, why: 'triggers', by: [] }];
    const by = [...rules.keys()].filter(
      (i) => i < rule && implies(when, rules[i].when) && meets(quarters[i], quarters[rule]),
    );
    const left = quarters[rule].map((set, start) => {
      const rest = set.slice();
      for (const i of by) remove(rest, quarters[i][start]);
      return rest;
    });
    return by.length > 0 && left.every(isEmpty) ? [{ rule, why: 'covered', by }] : [];
  });
}

/** Weekdays of years that begin on each day of the week, so that every date meets every weekday. */
const startsOfYear = Array.from({ length: 7 }, (_, start) =>
  Uint8Array.from({ length: DAYS }, (_, day) => ((day + start) % 7) + 1),
);

function meets(a: readonly StepSet[], b: readonly StepSet[]): boolean {
  return a.some((set, start) => set.some((bits, word) => (bits & b[start][word]) !== 0));
}

const TRIGGERS = [
  ['irradianceAbove', 'irradianceBelow'],
  ['outdoorAbove', 'outdoorBelow'],
  ['roomAbove', 'roomBelow'],
] as const;

/** Whether one reading is asked to be above and below at once where it cannot. */
function contradicts(when: RuleConditions): boolean {
  return TRIGGERS.some(([above, below]) => {
    const a = when[above];
    const b = when[below];
    if (!a || !b) return false;
    const bothAtOnePoint = a.at === a.release && b.at === b.release && a.at === b.at;
    return a.release >= b.release && !bothAtOnePoint;
  });
}

/** Whether sensors and room that meet the conditions of `strict` always meet those of `loose`. */
function implies(strict: RuleConditions, loose: RuleConditions): boolean {
  if (loose.sunOnFacade !== undefined && loose.sunOnFacade !== strict.sunOnFacade) return false;
  return TRIGGERS.every(
    ([above, below]) =>
      within(strict[above], loose[above], 1) && within(strict[below], loose[below], -1),
  );
}

/** A latch that sets later and releases sooner holds only while the other does. */
function within(strict: Trigger | undefined, loose: Trigger | undefined, sign: 1 | -1): boolean {
  if (!loose) return true;
  if (!strict) return false;
  return sign * loose.at <= sign * strict.at && sign * loose.release <= sign * strict.release;
}
