import { STEPS } from '../time/index.ts';
import { createMemo } from './memo.ts';
import type { Trigger } from './types.ts';

/**
 * A trigger with its sign turned so that it always waits for a rise: with x = sign times the value
 * it holds from x >= at until x <= release, and keeps as it was in between.
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

/** 35 kB each. */
const keepLatched = createMemo<Float64Array, Uint8Array>(24);

/**
 * 1 at the steps at which the latch holds; STEPS values, shared: read only. The year is a loop, so
 * the latch begins as it ends; it is off where no reading ever tells.
 * @param readings one for each step or each hour; kept results go by it, so it must not be changed
 *   afterwards
 */
export function latchedSteps({ sign, at, release }: Latch, readings: Float64Array): Uint8Array {
  return keepLatched(readings, `${sign} ${at} ${release}`, () => {
    const steps = new Uint8Array(STEPS);
    const count = readings.length;
    const each = STEPS / count;
    let i = 0;
    let held = endsHeld(sign, at, release, readings);
    while (i < count) {
      if (!held) while (i < count && !(sign * readings[i] >= at)) i++;
      held = false;
      const start = i;
      while (i < count && !isOff(sign * readings[i], at, release)) i++;
      steps.fill(1, start * each, i * each);
    }
    return steps;
  });
}

/** Where both bounds are the same value, that value still holds. */
function isOff(x: number, at: number, release: number): boolean {
  return x <= release && x < at;
}

/** Whether the latch holds after the last reading: the last one beyond either bound tells. */
function endsHeld(sign: number, at: number, release: number, readings: Float64Array): boolean {
  for (let i = readings.length - 1; i >= 0; i--) {
    const x = sign * readings[i];
    if (x >= at) return true;
    if (x <= release) return false;
  }
  return false;
}
