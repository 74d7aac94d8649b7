import type { YearCalendar } from '../time/index.ts';

export const QUARTERS = 96;
export const QUARTER = 15;
const DAY = QUARTERS * QUARTER;

/** Clock times at which a blind may go down and up, each in order from the middle of the dark. */
export interface ClockGrid {
  /** Minutes after midnight, 0 to 1425. */
  down: number[];
  up: number[];
  /** Minutes since the middle of the dark; a time at it counts as the end of the day for `up`. */
  placeDown(minutes: number): number;
  placeUp(minutes: number): number;
}

/**
 * Quarter hours of the local clock from the earliest light of the year to the latest. Where that
 * runs past midnight the times go on into the next day.
 *
 * @param sunUp 1 at the steps with the sun up; STEPS values
 */
export function clockGrid(
  sunUp: Uint8Array,
  calendar: YearCalendar,
  allowed: { down?: readonly number[]; up?: readonly number[] } = {},
): ClockGrid {
  const { start, length } = lightWindow(sunUp, calendar);
  const middle = (start - Math.floor((QUARTERS - length) / 2) + QUARTERS) % QUARTERS;
  const since = (minutes: number) => (minutes - middle * QUARTER + 2 * DAY) % DAY;
  const placeUp = (minutes: number) => since(minutes) || DAY;
  const times = (first: number) =>
    Array.from({ length }, (_, i) => ((start + first + i) % QUARTERS) * QUARTER);
  const sorted = (list: readonly number[], place: (minutes: number) => number) =>
    [...new Set(list.map((m) => m % DAY))].sort((a, b) => place(a) - place(b));
  return {
    down: sorted(allowed.down ?? times(0), since),
    up: sorted(allowed.up ?? times(1), placeUp),
    placeDown: since,
    placeUp,
  };
}

/** The part of the day outside the longest time without light; all day where there is none. */
function lightWindow(sunUp: Uint8Array, calendar: YearCalendar): { start: number; length: number } {
  const lit = new Uint8Array(QUARTERS);
  sunUp.forEach((on, step) => {
    if (on) lit[calendar.quarter[step]] = 1;
  });
  let gap = { start: 0, length: 0 };
  for (let start = 0; start < QUARTERS; start++) {
    let length = 0;
    while (length < QUARTERS && !lit[(start + length) % QUARTERS]) length++;
    if (length > gap.length) gap = { start, length };
  }
  if (gap.length === QUARTERS) return { start: 0, length: QUARTERS };
  return { start: (gap.start + gap.length) % QUARTERS, length: QUARTERS - gap.length };
}
