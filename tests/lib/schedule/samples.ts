import type {
  Rule,
  RuleAction,
  RuleConditions,
  Schedule,
  Sensors,
} from '../../../lib/schedule/index.ts';
import { HOURS, STEPS } from '../../../lib/time/index.ts';

/** Repeatable numbers from 0 up to 1: a linear congruential generator (Numerical Recipes, 1992, ch. 7.1). */
export function randomSource(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A walk over whole numbers between two bounds, so that thresholds are often met exactly. */
export function walk(length: number, low: number, high: number, random: () => number) {
  let value = Math.round(low + (high - low) * random());
  return Float64Array.from({ length }, () => {
    value += Math.round((random() - 0.5) * 0.3 * (high - low));
    value = Math.min(Math.max(value, low), high);
    return value;
  });
}

/** Restless sensors: every condition comes and goes many times. */
export function restlessSensors(seed: number): Sensors {
  const random = randomSource(seed);
  const tens = walk(STEPS, 0, 40, random);
  return {
    facadeIrradiance: tens.map((x) => 10 * x),
    sunOnFacade: Uint8Array.from(tens, (x) => Number(x > 15 + 10 * random())),
    outdoor: walk(HOURS, -5, 35, random),
    wind: walk(HOURS, 0, 14, random),
  };
}

/** Nothing happens. */
export function stillSensors(changes: Partial<Sensors> = {}): Sensors {
  return {
    sunOnFacade: new Uint8Array(STEPS),
    facadeIrradiance: new Float64Array(STEPS),
    outdoor: new Float64Array(HOURS),
    wind: new Float64Array(HOURS),
    ...changes,
  };
}

export const lower: RuleAction = { kind: 'lower' };

export function rule(when: RuleConditions, then: RuleAction = lower, id = 'rule'): Rule {
  return { id, when, then };
}

export function schedule(rules: Rule[], minMinutesBetweenMoves = 0): Schedule {
  return { id: 'schedule', name: 'Schedule', rules, minMinutesBetweenMoves };
}
