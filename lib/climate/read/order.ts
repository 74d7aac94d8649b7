import { InputError } from '../../problem/index.ts';
import { HOURS } from '../../time/index.ts';
import { LEAP_DAY_END, LEAP_DAY_START } from './stamps.ts';
import { at, fileProblem, thousands } from './text.ts';
import type { FileYear, RawYear } from './types.ts';

const LEAP_HOURS = HOURS + 24;
/** Rows that may be left out of the file in one place; their irradiance is filled like a gap. */
export const MOST_ABSENT_ROWS = 3;

/**
 * Puts the rows of a file into the 8,760 hours of its own clock: cuts 29 February, and leaves hours
 * without a row empty where there are few in one place.
 * @throws InputError where rows are not hourly, not in order, twice there, or too many or too few
 */
export function orderRows(raw: RawYear): FileYear {
  const count = raw.lines.length;
  if (!raw.stamps) refuseWrongCount(count);
  const starts = raw.stamps ? hourStarts(raw.stamps, raw.stampToStart) : counted(count);
  if (raw.stamps) refuseOtherSteps(starts, raw.lines);
  if (count > LEAP_HOURS) {
    throw fileProblem(
      `has ${thousands(count)} rows, more than one year of hours`,
      'Give one year: 8,760 rows, or 8,784 with 29 February.',
    );
  }
  const leapDay = raw.stamps ? raw.stamps.some(onLeapDay) : count === LEAP_HOURS;
  const start = fraction(starts[0]);
  const slots = starts.map((hours) => yearHour(Math.round(hours - start), leapDay));
  checkSteps(starts, slots, raw.lines);
  return {
    ...place(raw, slots),
    start,
    firstHour: slots.find((slot) => slot >= 0)!,
    leapDayCut: leapDay,
  };
}

function refuseWrongCount(count: number): void {
  if (count === HOURS || count === LEAP_HOURS) return;
  throw fileProblem(
    `has ${thousands(count)} rows without a time`,
    'Give 8,760 rows (8,784 with 29 February), or point at the column with the time.',
  );
}

function counted(count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) =>
    // Without 29 February the rows after it are a day further on in a year of 366 days.
    count === HOURS && i >= LEAP_DAY_START ? i + 24 : i,
  );
}

function hourStarts(stamps: Float64Array, shift: number): Float64Array {
  return stamps.map((stamp) => stamp + shift);
}

/** Its first instant does not count: it is also the end of 28 February. */
function onLeapDay(stamp: number): boolean {
  return stamp > LEAP_DAY_START && stamp < LEAP_DAY_END;
}

function fraction(hours: number): number {
  const f = hours - Math.floor(hours + 1e-6);
  return Math.abs(f) < 1e-6 ? 0 : f;
}

/** Hour 0 to 8,759 of the year without 29 February; -1 on that day. */
function yearHour(hour: number, leapDay: boolean): number {
  const h = (hour + LEAP_HOURS) % LEAP_HOURS;
  if (h < LEAP_DAY_START) return h;
  if (h >= LEAP_DAY_END) return h - 24;
  // A file without that day calls the end of its 28 February 1 March 00:00.
  return leapDay ? -1 : h - 24;
}

/** Names the step of a file that is not hourly, by the middle one of its first steps. */
function refuseOtherSteps(starts: Float64Array, lines: Uint32Array): void {
  const steps = Array.from(starts.subarray(1, 100), (s, i) => s - starts[i]).sort((a, b) => a - b);
  const step = steps[Math.floor(steps.length / 2)];
  if (step === undefined || (step > 0.99 && step < 1.01)) return;
  if (!(step > 0)) return; // out of order: told with its lines
  const minutes = Math.round(step * 60);
  throw new InputError({
    path: `lines ${lines[0]} to ${lines[1]}`,
    message: 'rows are not an hour apart',
    value: step < 1.01 ? `${minutes} minutes` : `${thousands(step)} hours`,
    allowed: '1 hour',
    fix: 'Give hourly means.',
  });
}

/** Each row must be the hour after the one before, but for a few absent rows; the year is a circle. */
function checkSteps(starts: Float64Array, slots: Float64Array, lines: Uint32Array): void {
  const start = fraction(starts[0]);
  let before = -1;
  let first = -1;
  for (let i = 0; i < slots.length; i++) {
    if (Math.abs(starts[i] - start - Math.round(starts[i] - start)) > 0.02) {
      throw stepProblem(lines, i, 'is not a whole number of hours after the first row');
    }
    if (slots[i] < 0) continue;
    if (before < 0) first = i;
    else refuseStep(slots, lines, before, i);
    before = i;
  }
  if (before < 0) throw fileProblem('has no rows outside 29 February', 'Give a whole year.');
  refuseEnd(slots, lines, first, before);
}

function refuseStep(slots: Float64Array, lines: Uint32Array, before: number, now: number): void {
  const ahead = (slots[now] - slots[before] + HOURS) % HOURS;
  if (ahead >= 1 && ahead <= MOST_ABSENT_ROWS + 1) return;
  const twin = slots.indexOf(slots[now]);
  if (twin < now) {
    const clock = 'Remove one; if the clock changes to summer time, export in standard time.';
    throw stepProblem(lines, now, `has the same hour as line ${lines[twin]}`, clock);
  }
  const next = slots.indexOf((slots[before] + 1) % HOURS);
  if (next >= 0) {
    throw stepProblem(
      lines,
      now,
      `is not the hour after line ${lines[before]}, which stands in line ${lines[next]}`,
      'Sort the rows from January to December; the clock must keep standard time all year.',
    );
  }
  throw stepProblem(
    lines,
    now,
    `${thousands(ahead - 1)} hours are missing between line ${lines[before]} and this one`,
    `Complete the file; at most ${MOST_ABSENT_ROWS} rows in one place are filled.`,
  );
}

/** The last row must meet the first one. */
function refuseEnd(slots: Float64Array, lines: Uint32Array, first: number, last: number): void {
  const absent = (slots[first] - slots[last] - 1 + 2 * HOURS) % HOURS;
  if (absent <= MOST_ABSENT_ROWS) return;
  throw stepProblem(
    lines,
    last,
    `the file ends here, ${thousands(absent)} hours short of a year`,
    'Give the whole year: 8,760 rows, or 8,784 with 29 February.',
  );
}

function stepProblem(
  lines: Uint32Array,
  row: number,
  message: string,
  fix = 'Give hourly rows in order.',
): InputError {
  return new InputError({ path: at(lines[row]), message, fix });
}

/** Moves values and lines to their hours; hours without a row stay NaN. */
function place(raw: RawYear, slots: Float64Array): Pick<FileYear, 'values' | 'lines'> {
  const lines = new Uint32Array(HOURS);
  slots.forEach((slot, i) => {
    if (slot >= 0) lines[slot] = raw.lines[i];
  });
  const values: FileYear['values'] = {};
  for (const [name, column] of Object.entries(raw.values)) {
    const placed = new Float64Array(HOURS).fill(NaN);
    slots.forEach((slot, i) => {
      if (slot >= 0) placed[slot] = column[i];
    });
    values[name as keyof typeof values] = placed;
  }
  return { values, lines };
}
