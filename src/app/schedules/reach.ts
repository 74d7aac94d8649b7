import { compileSchedule, runSchedule } from '../../../lib/schedule/index.ts';
import type { RuleConditions, Sensors } from '../../../lib/schedule/index.ts';
import { HOURS, STEPS, monthOfDay } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';
import { CELLS, QUARTERS } from '../charts/schedule/cells.ts';
import type { Cells } from '../charts/schedule/cells.ts';

/** A year without weather: what a rule does by its calendar alone. */
const still: Sensors = {
  sunOnFacade: new Uint8Array(STEPS),
  facadeIrradiance: new Float64Array(STEPS),
  outdoor: new Float64Array(HOURS),
  wind: new Float64Array(HOURS),
};

/**
 * The quarters of each month in which a rule's months, dates, weekdays and clock hours let it act
 * on any day, painted hours aside; undefined where they leave it free.
 */
export function reachOf(when: RuleConditions, calendar: YearCalendar): Cells | undefined {
  const { months, dates, weekdays, clock } = when;
  if (!months && !dates && !clock) return undefined;
  const rule = { id: 'reach', when: { months, dates, weekdays, clock }, then: DOWN };
  const schedule = { id: 'reach', name: '', rules: [rule], minMinutesBetweenMoves: 0 };
  const state = new Uint8Array(STEPS);
  runSchedule(compileSchedule(schedule, calendar), still, {}, state);
  const cells = new Uint8Array(CELLS);
  for (let step = 0; step < STEPS; step++) {
    if (state[step] === 0) continue;
    const month = monthOfDay(calendar.day[step]) - 1;
    cells[month * QUARTERS + calendar.quarter[step]] = 1;
  }
  return cells;
}

const DOWN = { kind: 'lower' } as const;
