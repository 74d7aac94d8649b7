import { STEPS } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { QUARTERS, localQuarters } from './localYear.ts';
import { memo } from './memo.ts';
import { addMoved, noSteps } from './stepSet.ts';
import type { StepSet } from './stepSet.ts';
import type { RuleConditions } from './types.ts';

/** Steps whose local date and clock meet a rule's calendar conditions; shared, so read only. */
export function calendarSteps(when: RuleConditions, calendar: YearCalendar): StepSet {
  const { months, dates, weekdays, clock, grid } = when;
  return memo(calendar, JSON.stringify([months, dates, weekdays, clock, grid]), () => {
    const local = localQuarters(when, calendar.weekday);
    const steps = noSteps();
    for (const { step, quarter, count } of stretchesOf(calendar)) {
      addMoved(steps, step, local, quarter, count);
    }
    return steps;
  });
}

/** Steps through which the local clock runs on evenly. */
interface Stretch {
  step: number;
  /** Quarter of the local year at the first step. */
  quarter: number;
  count: number;
}

const stretches = new WeakMap<YearCalendar, Stretch[]>();

/** A year as stretches between changes of the clock, the leap day and the turn of the year. */
function stretchesOf(calendar: YearCalendar): Stretch[] {
  let list = stretches.get(calendar);
  if (!list) stretches.set(calendar, (list = findStretches(calendar)));
  return list;
}

function findStretches({ day, quarter }: YearCalendar): Stretch[] {
  const list: Stretch[] = [];
  let last: Stretch | undefined;
  for (let step = 0; step < STEPS; step++) {
    const local = day[step] * QUARTERS + quarter[step];
    if (last && local === last.quarter + last.count) last.count++;
    else list.push((last = { step, quarter: local, count: 1 }));
  }
  return list;
}
