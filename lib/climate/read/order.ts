import { InputError, figureText, problem } from '../../problem/index.ts';
import type { Text } from '../../problem/index.ts';
import { HOURS } from '../../time/index.ts';
import { say } from '../say.ts';
import { LEAP_DAY_END, LEAP_DAY_START } from './stamps.ts';
import { at, fileProblem } from './text.ts';
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
    const message = say('file.tooManyRows', { figure: figureText(count) });
    throw fileProblem(message, say('file.tooManyRowsFix'));
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
  const message = say('file.untimed', { figure: figureText(count) });
  throw fileProblem(message, say('file.untimedFix'));
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
  const value =
    step < 1.01
      ? say('range.minutes', { minutes: Math.round(step * 60) })
      : say('range.hours', { figure: figureText(step) });
  throw new InputError(
    problem(say('where.lines', { first: lines[0], last: lines[1] }), {
      message: say('row.notHourly'),
      value,
      allowed: say('range.hour'),
      fix: say('row.notHourlyFix'),
    }),
  );
}

/** Each row must be the hour after the one before, but for a few absent rows; the year is a circle. */
function checkSteps(starts: Float64Array, slots: Float64Array, lines: Uint32Array): void {
  const start = fraction(starts[0]);
  let before = -1;
  let first = -1;
  for (let i = 0; i < slots.length; i++) {
    if (Math.abs(starts[i] - start - Math.round(starts[i] - start)) > 0.02) {
      throw stepProblem(lines, i, say('row.notWhole'));
    }
    if (slots[i] < 0) continue;
    if (before < 0) first = i;
    else refuseStep(slots, lines, before, i);
    before = i;
  }
  if (before < 0) throw fileProblem(say('file.onlyLeapDay'), say('file.onlyLeapDayFix'));
  refuseEnd(slots, lines, first, before);
}

function refuseStep(slots: Float64Array, lines: Uint32Array, before: number, now: number): void {
  const ahead = (slots[now] - slots[before] + HOURS) % HOURS;
  if (ahead >= 1 && ahead <= MOST_ABSENT_ROWS + 1) return;
  const twin = slots.indexOf(slots[now]);
  if (twin < now) {
    const message = say('row.twin', { line: lines[twin] });
    throw stepProblem(lines, now, message, say('row.twinFix'));
  }
  const next = slots.indexOf((slots[before] + 1) % HOURS);
  if (next >= 0) {
    const message = say('row.notNext', { line: lines[before], next: lines[next] });
    throw stepProblem(lines, now, message, say('row.notNextFix'));
  }
  const message = say('row.absent', { figure: figureText(ahead - 1), line: lines[before] });
  throw stepProblem(lines, now, message, say('row.absentFix', { most: MOST_ABSENT_ROWS }));
}

/** The last row must meet the first one. */
function refuseEnd(slots: Float64Array, lines: Uint32Array, first: number, last: number): void {
  const absent = (slots[first] - slots[last] - 1 + 2 * HOURS) % HOURS;
  if (absent <= MOST_ABSENT_ROWS) return;
  const message = say('row.short', { figure: figureText(absent) });
  throw stepProblem(lines, last, message, say('row.shortFix'));
}

function stepProblem(
  lines: Uint32Array,
  row: number,
  message: Text,
  fix: Text = say('row.inOrder'),
): InputError {
  return new InputError(problem(at(lines[row]), { message, fix }));
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
