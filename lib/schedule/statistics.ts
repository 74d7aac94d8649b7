import { DAYS, HOURS, STEPS, STEPS_PER_HOUR, monthOfDay } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { EACH_STEP, aligned, hourWords } from './hourWords.ts';
import type { RunCounts } from './moves.ts';

const noSun = new Uint8Array(STEPS);

export interface MoveOptions {
  /** Counts of the run that gave the states: wind and waiting cannot be seen in them. */
  counts?: Pick<RunCounts, 'stepsRaisedByWind' | 'delays' | 'stepsDelayed'>;
  /** 1 at the steps with the sun up; STEPS values. */
  sunUp?: Uint8Array;
  /** Months 1 to 12 that count as the season; absent: those in which the blind moves. */
  season?: readonly number[];
}

/** What a blind did over a year. */
export interface MoveStatistics {
  /** Raising, lowering, another share or another fixed tilt; not the turning of slats that track. */
  moves: number;
  /** The local day with the most moves, 0 to 364, the first of equal ones; -1 where it never moves. */
  busiestDay: number;
  movesOnBusiestDay: number;
  /** Mean over all days of the season; 0 where there is none. */
  movesADayInSeason: number;
  /** Hours not raised, at whatever share. */
  hoursLowered: number;
  /** Those of them with the sun up; 0 where `sunUp` is absent. */
  daytimeHoursLowered: number;
  /** Hours held up by wind that the rules wanted lowered. */
  hoursRaisedByWind: number;
  /** How often a wanted move waited for the least time between moves, and for how long together. */
  delays: number;
  hoursDelayed: number;
}

/**
 * Sums up the positions of a year, which is a loop: the first step is a move where it differs from
 * the last. Moves count on the local day they fall on.
 * @param state action number of each step, 0 raised; STEPS values
 */
export function moveStatistics(
  state: Uint8Array,
  calendar: YearCalendar,
  { counts, sunUp, season }: MoveOptions = {},
): MoveStatistics {
  const { perDay, lowered, loweredInDaytime } = scanYear(state, calendar.day, sunUp);
  const { busiestDay, moves } = sumDays(perDay);
  const months = season ?? monthsWithMoves(perDay);
  return {
    moves,
    busiestDay,
    movesOnBusiestDay: busiestDay < 0 ? 0 : perDay[busiestDay],
    movesADayInSeason: meanInMonths(perDay, months),
    hoursLowered: lowered / STEPS_PER_HOUR,
    daytimeHoursLowered: loweredInDaytime / STEPS_PER_HOUR,
    hoursRaisedByWind: (counts?.stepsRaisedByWind ?? 0) / STEPS_PER_HOUR,
    delays: counts?.delays ?? 0,
    hoursDelayed: (counts?.stepsDelayed ?? 0) / STEPS_PER_HOUR,
  };
}

/** Moves of each day, and steps that are not raised. */
function scanYear(state: Uint8Array, day: Uint16Array, sunUp: Uint8Array = noSun) {
  const perDay = new Uint16Array(DAYS);
  const words = hourWords(aligned(state));
  const sunWords = hourWords(aligned(sunUp));
  let lowered = 0;
  let loweredInDaytime = 0;
  let before = state[STEPS - 1];
  for (let hour = 0; hour < HOURS; hour++) {
    if (words[hour] === Math.imul(before, EACH_STEP)) {
      if (before === 0) continue;
      lowered += STEPS_PER_HOUR;
      // The product's highest byte is the sum of the four.
      loweredInDaytime += Math.imul(sunWords[hour], EACH_STEP) >>> 24;
      continue;
    }
    for (let i = hour * STEPS_PER_HOUR; i < (hour + 1) * STEPS_PER_HOUR; i++) {
      if (state[i] !== before) perDay[day[i]]++;
      before = state[i];
      if (before === 0) continue;
      lowered++;
      loweredInDaytime += sunUp[i];
    }
  }
  return { perDay, lowered, loweredInDaytime };
}

function sumDays(perDay: Uint16Array): { busiestDay: number; moves: number } {
  let moves = 0;
  let busiestDay = -1;
  let most = 0;
  for (let day = 0; day < DAYS; day++) {
    moves += perDay[day];
    if (perDay[day] > most) {
      most = perDay[day];
      busiestDay = day;
    }
  }
  return { busiestDay, moves };
}

function monthsWithMoves(perDay: Uint16Array): number[] {
  const months = new Set<number>();
  perDay.forEach((moves, day) => {
    if (moves > 0) months.add(monthOfDay(day));
  });
  return [...months];
}

function meanInMonths(perDay: Uint16Array, months: readonly number[]): number {
  let days = 0;
  let moves = 0;
  perDay.forEach((count, day) => {
    if (!months.includes(monthOfDay(day))) return;
    days++;
    moves += count;
  });
  return days > 0 ? moves / days : 0;
}
