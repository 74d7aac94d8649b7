import { HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';

/** A word with 1 in each of its four bytes: times a byte it is that byte four times over. */
export const EACH_STEP = 0x01010101;

/**
 * The four step bytes of each hour as one 32-bit word on the same memory; HOURS values. Words are
 * combined bit by bit only, so the byte order of the machine does not matter.
 */
export function hourWords(steps: Uint8Array): Int32Array {
  return new Int32Array(steps.buffer, steps.byteOffset, HOURS);
}

/** The same bytes at an address that `hourWords` can take; a copy only where it has to be. */
export function aligned(steps: Uint8Array): Uint8Array {
  return steps.byteOffset % STEPS_PER_HOUR === 0 ? steps : steps.slice(0, STEPS);
}
