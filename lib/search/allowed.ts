import { InputError, problem } from '../problem/index.ts';
import { validateSchedule } from '../schedule/index.ts';
import type { RuleConditions } from '../schedule/index.ts';
import type { AllowedValues } from './types.ts';
import { sayProblem as say } from '../words/index.ts';

/** @throws InputError for an empty list, a date that is none, or a time off the quarter hour */
export function checkAllowed(allowed: AllowedValues): void {
  const empty = (Object.keys(allowed) as (keyof AllowedValues)[]).find(
    (key) => allowed[key]?.length === 0,
  );
  if (empty) {
    const texts = { message: say('search.noValue'), fix: say('search.noValueFix') };
    throw new InputError(problem(`allowed.${empty}`, texts, []));
  }
  check('from', allowed.from, (date) => ({ dates: { from: date, to: date } }));
  check('to', allowed.to, (date) => ({ dates: { from: date, to: date } }));
  check('down', allowed.down, (minutes) => ({ clock: { from: minutes, to: minutes } }));
  check('up', allowed.up, (minutes) => ({ clock: { from: minutes, to: minutes } }));
}

function check<T>(
  key: keyof AllowedValues,
  values: readonly T[] | undefined,
  when: (value: T) => RuleConditions,
): void {
  const problems = (values ?? []).flatMap((value, i) => {
    const rules = [{ id: key, when: when(value), then: { kind: 'lower' as const } }];
    const found = validateSchedule({ id: key, name: key, rules, minMinutesBetweenMoves: 0 });
    return found.problems.slice(0, 1).map((p) => ({ ...p, path: `allowed.${key}[${i}]` }));
  });
  if (problems.length > 0) throw new InputError(problems);
}
