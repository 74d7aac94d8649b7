import { STEPS } from '../time/index.ts';
import type { CompiledRule, CompiledSchedule } from './compile.ts';
import { EACH_STEP, aligned, hourWords } from './hourWords.ts';
import { fallingLatch, latchedSteps, risingLatch } from './latch.ts';
import type { Latch } from './latch.ts';
import type { Sensors } from './sensors.ts';
import type { RuleConditions, Trigger } from './types.ts';

/** A rule that waits for the room as well. */
export interface RoomRule {
  action: number;
  /** 1 where all its other conditions hold and no rule before it that needs no room; STEPS values. */
  holds: Uint8Array;
  /** All must hold. */
  latches: Latch[];
}

/** Steps where no rule has decided yet: working memory of findWishes. */
const open = new Uint8Array(STEPS);
const openWords = hourWords(open);
const everyStep = hourWords(new Uint8Array(STEPS).fill(1));

/**
 * Number of the action of the first rule that holds and needs no room; STEPS values. Filled by
 * findWishes and good until it is called again: a fresh array costs as much as the work on it.
 */
export const wishes = new Uint8Array(STEPS);
export const wishWords = hourWords(wishes);

/**
 * Finds what the rules ask for before wind and the least time between moves, as far as calendar and
 * sensors can tell without the room, and puts it in `wishes`.
 * @returns the rules that need the room, in order; the first that holds goes before `wishes`
 */
export function findWishes({ rules }: CompiledSchedule, sensors: Sensors): RoomRule[] {
  const room: RoomRule[] = [];
  wishes.fill(0);
  open.fill(1);
  for (const rule of rules) {
    const { when, action } = rule;
    const sensed = sensedSteps(when, sensors);
    const latches = latchesOf(when.roomAbove, when.roomBelow);
    if (latches.length === 0) claim(rule, sensed, action);
    else room.push({ action, holds: openSteps(rule, sensed), latches });
  }
  return room;
}

/** Hour words of what a rule asks of its sensors outdoors. */
interface SensedSteps {
  sunny: Int32Array;
  /** Turns `sunny` round where the sun must be off the facade. */
  flip: number;
  first: Int32Array;
  second: Int32Array;
}

function sensedSteps(when: RuleConditions, sensors: Sensors): SensedSteps {
  const { outdoor, facadeIrradiance, sunOnFacade } = sensors;
  const [first = everyStep, second = everyStep, ...others] = [
    ...latchesOf(when.irradianceAbove, when.irradianceBelow).map((latch) =>
      hourWords(latchedSteps(latch, facadeIrradiance)),
    ),
    ...latchesOf(when.outdoorAbove, when.outdoorBelow).map((latch) =>
      hourWords(latchedSteps(latch, outdoor)),
    ),
  ];
  return {
    sunny: when.sunOnFacade === undefined ? everyStep : hourWords(aligned(sunOnFacade)),
    flip: when.sunOnFacade === false ? EACH_STEP : 0,
    first,
    second: others.reduce((a, b) => a.map((word, hour) => word & b[hour]), second),
  };
}

function latchesOf(above: Trigger | undefined, below: Trigger | undefined): Latch[] {
  return [...(above ? [risingLatch(above)] : []), ...(below ? [fallingLatch(below)] : [])];
}

/** Gives a rule's steps its action and closes them to later rules. */
function claim(rule: CompiledRule, sensed: SensedSteps, action: number): void {
  const { hours } = rule;
  const { sunny, flip, first, second } = sensed;
  const allowed = hourWords(rule.allowed);
  const count = hours.length;
  for (let n = 0; n < count; n++) {
    const hour = hours[n];
    let steps = openWords[hour] & (sunny[hour] ^ flip);
    if (steps === 0) continue;
    steps &= allowed[hour] & first[hour] & second[hour];
    // Open steps have no wish yet, and 0 or 1 times a byte stays in its byte.
    wishWords[hour] |= Math.imul(steps, action);
    openWords[hour] &= ~steps;
  }
}

/** Steps that are open to a rule as far as can be told without the room. */
function openSteps(rule: CompiledRule, sensed: SensedSteps): Uint8Array {
  const { sunny, flip, first, second } = sensed;
  const allowed = hourWords(rule.allowed);
  const steps = new Uint8Array(STEPS);
  const words = hourWords(steps);
  for (const hour of rule.hours) {
    words[hour] =
      openWords[hour] & (sunny[hour] ^ flip) & allowed[hour] & first[hour] & second[hour];
  }
  return steps;
}
