import { memo } from './memo.ts';
import { noSteps } from './stepSet.ts';
import type { StepSet } from './stepSet.ts';
import type { Trigger } from './types.ts';

/**
 * A trigger turned so that it waits for a rise: with x = sign times the reading it holds from
 * x >= at until x <= release. One that waits for a fall is mirrored at zero.
 */
export interface Latch {
  sign: 1 | -1;
  at: number;
  release: number;
}

export function risingLatch({ at, release }: Trigger): Latch {
  return { sign: 1, at, release };
}

export function fallingLatch({ at, release }: Trigger): Latch {
  return { sign: -1, at: -at, release: -release };
}

/**
 * Whether a latch holds after a reading. Where there is no gap, a reading at both bounds sets it; a
 * reading that is no number changes nothing.
 */
export function latched(latch: Latch, held: boolean, reading: number): boolean {
  return holds(held, latch.sign * reading, latch.at, latch.release);
}

function holds(held: boolean, x: number, at: number, release: number): boolean {
  return x >= at || (held && !(x <= release));
}

/**
 * Steps at which a latch holds. The year is a loop: it begins as it ends.
 * @param readings one a step or one an hour
 */
export function latchedSteps(latch: Latch, readings: Float64Array): StepSet {
  const key = `${latch.sign} ${latch.at} ${latch.release}`;
  return memo(readings, key, () => findLatchedSteps(latch, readings));
}

function findLatchedSteps({ sign, at, release }: Latch, readings: Float64Array): StepSet {
  const steps = noSteps();
  const { low, high, perWord } = memo(readings, 'ranges', () => findRanges(readings, steps.length));
  const least = sign > 0 ? low : high;
  const most = sign > 0 ? high : low;
  const width = 32 / perWord;
  const one = (1 << width) - 1;
  let held = heldAtEnd({ sign, at, release }, readings);
  for (let word = 0; word < steps.length; word++) {
    // Most words, all of a night or of a dull morning, cannot change the state.
    const steady = held
      ? holds(true, sign * least[word], at, release)
      : !holds(false, sign * most[word], at, release);
    if (steady) {
      if (held) steps[word] = -1;
      continue;
    }
    let bits = 0;
    let i = word * perWord;
    for (let shift = 0; shift < 32; shift += width, i++) {
      held = holds(held, sign * readings[i], at, release);
      if (held) bits |= one << shift;
    }
    steps[word] = bits;
  }
  return steps;
}

/** Whether the year leaves a latch set, as the last reading tells that decides by itself. */
function heldAtEnd(latch: Latch, readings: Float64Array): boolean {
  for (let i = readings.length - 1; i >= 0; i--) {
    const held = latched(latch, false, readings[i]);
    if (latched(latch, true, readings[i]) === held) return held;
  }
  return false;
}

/** Least and greatest reading in each word of a set of steps. */
interface Ranges {
  low: Float64Array;
  high: Float64Array;
  /** Readings in a word. */
  perWord: number;
}

function findRanges(readings: Float64Array, words: number): Ranges {
  const perWord = readings.length / words;
  const low = new Float64Array(words).fill(Infinity);
  const high = new Float64Array(words).fill(-Infinity);
  for (let i = 0; i < readings.length; i++) {
    const word = Math.floor(i / perWord);
    // Not `Math.min`: a reading that is no number changes no latch, so it is passed over.
    if (readings[i] < low[word]) low[word] = readings[i];
    if (readings[i] > high[word]) high[word] = readings[i];
  }
  return { low, high, perWord };
}
