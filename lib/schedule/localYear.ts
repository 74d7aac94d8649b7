import { DAYS, dayOfYear, monthOfDay } from '../time/index.ts';
import { noSteps } from './stepSet.ts';
import type { StepSet } from './stepSet.ts';
import type { ClockMinutes, RuleConditions } from './types.ts';

export const MINUTES_PER_QUARTER = 15;
export const MINUTES_PER_DAY = 1440;
export const QUARTERS = 96;
/** A day's quarters are three words of a set. */
const WORDS_PER_DAY = QUARTERS / 32;

/** From one clock time to another; equal: all day, `to` before `from`: past midnight. */
export interface ClockSpan {
  from: ClockMinutes;
  to: ClockMinutes;
}

const months = Uint8Array.from({ length: DAYS }, (_, day) => monthOfDay(day));

/**
 * The quarters of a local year, read as a set of steps that begins on 1 January 00:00 and knows no
 * change of the clock, that meet a rule's calendar conditions.
 * @param weekday ISO weekday of each day; DAYS values
 */
export function localQuarters(when: RuleConditions, weekday: Uint8Array): StepSet {
  const { clock, grid } = when;
  const span = clock && split(clock);
  const evening = clockWords(span?.evening ?? [0, QUARTERS]);
  const morning = clockWords(span?.morning ?? [0, 0]);
  const painted = grid && gridWords(grid);
  const days = daysOf(when, weekday);
  const set = noSteps();
  for (let day = 0; day < DAYS; day++) {
    const today = days[day] ? -1 : 0;
    const nightBefore = days[day === 0 ? DAYS - 1 : day - 1] ? -1 : 0;
    const row = (months[day] - 1) * WORDS_PER_DAY;
    for (let i = 0; i < WORDS_PER_DAY; i++) {
      const bits = (evening[i] & today) | (morning[i] & nightBefore);
      set[day * WORDS_PER_DAY + i] = painted ? bits & painted[row + i] : bits;
    }
  }
  return set;
}

/** 1 on the days that a rule's months, dates and weekdays allow; DAYS values. */
function daysOf(when: RuleConditions, weekday: Uint8Array): Uint8Array {
  const monthAllowed = oneOf(when.months, 12);
  const weekdayAllowed = oneOf(when.weekdays, 7);
  const from = when.dates ? dayIndex(when.dates.from) : 0;
  const to = when.dates ? dayIndex(when.dates.to) : DAYS - 1;
  const overNewYear = from > to;
  const days = new Uint8Array(DAYS);
  for (let day = 0; day < DAYS; day++) {
    const inDates = overNewYear ? day >= from || day <= to : day >= from && day <= to;
    if (inDates) days[day] = monthAllowed[months[day]] & weekdayAllowed[weekday[day]];
  }
  return days;
}

/** 1 at the numbers named, from 1 to `most`; at all of them where none are named at all. */
function oneOf(numbers: readonly number[] | undefined, most: number): Uint8Array {
  const allowed = new Uint8Array(most + 1);
  if (!numbers) return allowed.fill(1);
  for (const n of numbers) allowed[n] = 1;
  return allowed;
}

type Quarters = [from: number, to: number];

/** A span as its quarters up to midnight and those after it. */
function split({ from, to }: ClockSpan): { evening: Quarters; morning: Quarters } {
  const first = (from % MINUTES_PER_DAY) / MINUTES_PER_QUARTER;
  const last = to / MINUTES_PER_QUARTER;
  if (first < last) return { evening: [first, last], morning: [0, 0] };
  if (first === last) return { evening: [0, QUARTERS], morning: [0, 0] };
  return { evening: [first, QUARTERS], morning: [0, last] };
}

function clockWords([from, to]: Quarters): Int32Array {
  const words = new Int32Array(WORDS_PER_DAY);
  for (let quarter = from; quarter < to; quarter++) words[quarter >> 5] |= 1 << (quarter & 31);
  return words;
}

/** A painted grid as twelve days of quarters; a span past midnight stays in its month. */
function gridWords(grid: NonNullable<RuleConditions['grid']>): Int32Array {
  const rows = new Int32Array(12 * WORDS_PER_DAY);
  for (const span of grid) {
    const { evening, morning } = split(span);
    const a = clockWords(evening);
    const b = clockWords(morning);
    const row = (span.month - 1) * WORDS_PER_DAY;
    for (let i = 0; i < WORDS_PER_DAY; i++) rows[row + i] |= a[i] | b[i];
  }
  return rows;
}

/** Quarters of each month's day that a grid paints, January first: twelve rows of 96 flags. */
export function paintedQuarters(grid: NonNullable<RuleConditions['grid']>): boolean[][] {
  const words = gridWords(grid);
  return Array.from({ length: 12 }, (_, month) =>
    Array.from({ length: QUARTERS }, (_, quarter) => {
      const word = words[month * WORDS_PER_DAY + (quarter >> 5)];
      return ((word >>> (quarter & 31)) & 1) === 1;
    }),
  );
}

function dayIndex(monthDay: string): number {
  return dayOfYear(Number(monthDay.slice(0, 2)), Number(monthDay.slice(3)));
}
