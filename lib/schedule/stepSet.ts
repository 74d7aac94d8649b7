import { STEPS } from '../time/index.ts';

const BITS = 32;
const WORDS = STEPS / BITS;
const ALL = -1;

/**
 * A set of steps of the year, one bit a step: step i is bit `i & 31` of word `i >> 5`. 1,095 words,
 * so that two conditions are put together thirty-two steps at a time.
 */
export type StepSet = Int32Array;

export function noSteps(): StepSet {
  return new Int32Array(WORDS);
}

export function everyStep(): StepSet {
  return noSteps().fill(ALL);
}

export function has(set: StepSet, step: number): boolean {
  return ((set[step >> 5] >>> (step & 31)) & 1) === 1;
}

/** Adds `count` steps from `step` on, all of them in one word: part of an hour never straddles two. */
export function add(set: StepSet, step: number, count: number): void {
  set[step >> 5] |= ((1 << count) - 1) << (step & 31);
}

/** The steps whose flag is 1. */
export function stepsOf(flags: Uint8Array): StepSet {
  const set = noSteps();
  for (let word = 0, step = 0; word < WORDS; word++) {
    let bits = 0;
    for (let bit = 0; bit < BITS; bit++, step++) bits |= flags[step] << bit;
    set[word] = bits;
  }
  return set;
}

export function complement(set: StepSet): StepSet {
  return set.map((bits) => ~bits);
}

/** Keeps in `set` what is in `other` too. */
export function keep(set: StepSet, other: StepSet): void {
  for (let word = 0; word < WORDS; word++) set[word] &= other[word];
}

/** Adds to `set` what is in `other`. */
export function join(set: StepSet, other: StepSet): void {
  for (let word = 0; word < WORDS; word++) set[word] |= other[word];
}

/** Takes out of `set` what is in `other`. */
export function remove(set: StepSet, other: StepSet): void {
  for (let word = 0; word < WORDS; word++) set[word] &= ~other[word];
}

/** Keeps in `set` what is still free, and takes it out of the free ones. */
export function claim(set: StepSet, free: StepSet): void {
  for (let word = 0; word < WORDS; word++) {
    set[word] &= free[word];
    free[word] ^= set[word];
  }
}

export function isEmpty(set: StepSet): boolean {
  return set.every((bits) => bits === 0);
}

/** Adds `count` steps of `from` beginning at `at` to `set`, moved so that they begin at `to`. */
export function addMoved(set: StepSet, to: number, from: StepSet, at: number, count: number): void {
  const end = to + count;
  const shift = (at - to) & 31;
  for (let word = to >> 5; word * BITS < end; word++) {
    const source = (word * BITS + at - to) >> 5;
    let bits = from[source] >>> shift;
    if (shift > 0) bits |= from[source + 1] << (BITS - shift);
    const before = to - word * BITS;
    const after = (word + 1) * BITS - end;
    if (before > 0) bits &= ALL << before;
    if (after > 0) bits &= ALL >>> after;
    set[word] |= bits;
  }
}

/** Adds to `changes` the steps at which `set` begins or ends. */
export function addChanges(changes: StepSet, set: StepSet): void {
  let before = 0;
  for (let word = 0; word < WORDS; word++) {
    const bits = set[word];
    changes[word] |= bits ^ ((bits << 1) | before);
    before = bits >>> 31;
  }
}

/** First step of the set from `step` on and before `end`; `end` where there is none. */
export function nextIn(set: StepSet, step: number, end: number): number {
  if (step >= end) return end;
  let word = step >> 5;
  const last = (end - 1) >> 5;
  let bits = set[word] & (ALL << (step & 31));
  while (bits === 0) {
    if (++word > last) return end;
    bits = set[word];
  }
  return Math.min(word * BITS + 31 - Math.clz32(bits & -bits), end);
}
