import type { Rule, RuleAction, Schedule } from '../schedule/index.ts';
import { HOURS, STEPS, STEPS_PER_HOUR, dayOfYear, monthOfDay } from '../time/index.ts';
import type { StudyResult } from '../study/index.ts';
import { QUARTER } from './clock.ts';

/** Quarter hours of one local day in a row in which the blind is down. */
export interface Stretch {
  day: number;
  /** First step and the one after the last. */
  from: number;
  to: number;
  /** Quarters of the local clock at both. */
  down: number;
  up: number;
}

/** One stretch a day from the first hour that is wanted to the last. */
export function daysLowered(result: StudyResult, wanted: (hour: number) => boolean): Stretch[] {
  const { day } = result.calendar;
  const lowered = new Uint8Array(STEPS);
  let first = -1;
  for (let hour = 0; hour < HOURS; hour++) {
    const step = hour * STEPS_PER_HOUR;
    if (!wanted(hour)) continue;
    if (first < 0 || day[first] !== day[step]) first = step;
    lowered.fill(1, first, step + STEPS_PER_HOUR);
  }
  return stretchesOf(result, lowered);
}

/** Positions of a year as stretches, parted at midnight. */
export function stretchesOf({ calendar }: StudyResult, lowered: Uint8Array): Stretch[] {
  const { day, quarter } = calendar;
  const list: Stretch[] = [];
  let open: Stretch | undefined;
  for (let step = 0; step < STEPS; step++) {
    // A change of the clock parts a stretch too.
    const goesOn = open?.day === day[step] && quarter[step] === open.up;
    if (!lowered[step]) open = undefined;
    else if (open && goesOn) {
      open.to = step + 1;
      open.up++;
    } else {
      open = {
        day: day[step],
        from: step,
        to: step + 1,
        down: quarter[step],
        up: quarter[step] + 1,
      };
      list.push(open);
    }
  }
  return list;
}

/** A schedule with a rule for every stretch: what only hindsight can set up. */
export function dayByDay(stretches: readonly Stretch[], then: RuleAction): Schedule {
  const rules = [...stretches]
    .sort((a, b) => a.from - b.from)
    .map(({ day, down, up }, i): Rule => {
      const month = monthOfDay(day);
      const date = `${pad(month)}-${pad(day - dayOfYear(month, 1) + 1)}`;
      return {
        id: `day-${i}`,
        when: {
          dates: { from: date, to: date },
          clock: { from: down * QUARTER, to: up * QUARTER },
        },
        then,
      };
    });
  return { id: 'hindsight', name: 'With hindsight', rules, minMinutesBetweenMoves: 0 };
}

/** Days of the year with a stretch. */
export function daysIn(stretches: readonly Stretch[]): number {
  return new Set(stretches.map((s) => s.day)).size;
}

function pad(n: number): string {
  return String(n).padStart(2, '0');
}
