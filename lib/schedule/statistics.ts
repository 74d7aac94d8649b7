import { DAYS, STEPS, STEPS_PER_HOUR, dateText, daysInMonth, monthOfDay } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import type { RuleAction } from './types.ts';

/** What a blind did over a year. */
export interface MoveStatistics {
  /** Raising, lowering, another share or another fixed tilt; not the turning of slats that track. */
  moves: number;
  /** The local day with the most moves, the first of equal ones; absent where it never moves. */
  busiestDay?: { date: string; moves: number };
  /** Mean moves a day over the months in which it moves at all; 0 where there are none. */
  movesPerDay: number;
  /** Hours lowered, by whatever share. */
  hoursLowered: number;
  /** Those of them with the sun up; absent where `sunUp` is. */
  daylightHoursLowered?: number;
}

/**
 * Sums up the positions of a year. The year is a loop: its first step is a move where it differs
 * from its last. Moves count on the local day they fall on.
 * @param state action number of each step; STEPS values
 * @param actions what the numbers mean
 * @param sunUp 1 at the steps with the sun up; STEPS values
 */
export function moveStatistics(
  state: Uint8Array,
  actions: readonly RuleAction[],
  calendar: YearCalendar,
  sunUp?: Uint8Array,
): MoveStatistics {
  const down = Uint8Array.from(actions, ({ kind }) => Number(kind !== 'raise'));
  const perDay = new Uint32Array(DAYS);
  let lowered = 0;
  let inDaylight = 0;
  let before = state[STEPS - 1];
  for (let step = 0; step < STEPS; step++) {
    const now = state[step];
    if (now !== before) perDay[calendar.day[step]]++;
    before = now;
    lowered += down[now];
    if (sunUp) inDaylight += down[now] & sunUp[step];
  }
  return {
    ...dayFigures(perDay, calendar),
    hoursLowered: lowered / STEPS_PER_HOUR,
    ...(sunUp && { daylightHoursLowered: inDaylight / STEPS_PER_HOUR }),
  };
}

function dayFigures(perDay: Uint32Array, calendar: YearCalendar) {
  const perMonth = new Array<number>(12).fill(0);
  let busiest = 0;
  perDay.forEach((moves, day) => {
    perMonth[monthOfDay(day) - 1] += moves;
    if (moves > perDay[busiest]) busiest = day;
  });
  const moves = perMonth.reduce((sum, n) => sum + n, 0);
  if (moves === 0) return { moves, movesPerDay: 0 };
  const days = daysInMonth.reduce((sum, n, month) => sum + (perMonth[month] > 0 ? n : 0), 0);
  const date = dateText(calendar, calendar.day.indexOf(busiest));
  return { moves, busiestDay: { date, moves: perDay[busiest] }, movesPerDay: moves / days };
}
