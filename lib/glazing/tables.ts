import { COS_INTERVALS } from './types.ts';

/** A table over the cosine of incidence: value k at cos = k / COS_INTERVALS. */
export function tabulate(at: (cosIncidence: number, k: number) => number): Float64Array {
  return Float64Array.from({ length: COS_INTERVALS + 1 }, (_, k) => at(k / COS_INTERVALS, k));
}

/** Straight line between table values; cosines below 0 count as 0, above 1 as 1. */
export function lookup(table: Float64Array, cosIncidence: number): number {
  const place = cosIncidence * COS_INTERVALS;
  if (!(place > 0)) return table[0]!;
  if (place >= COS_INTERVALS) return table[COS_INTERVALS]!;
  const k = Math.floor(place);
  const low = table[k]!;
  return low + (place - k) * (table[k + 1]! - low);
}

/**
 * Mean over an evenly bright hemisphere, the integral of 2 f(c) c over the cosine c (Lambert's
 * cosine law; Duffie & Beckman, section 5.4). A vertical pane sees sky and ground as two quarter
 * spheres that mirror each other, so each has the same mean. Simpson's rule, exact for straight
 * pieces times c.
 */
export function hemisphereMean(table: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < COS_INTERVALS; k++) {
    const [low, high] = [table[k]!, table[k + 1]!];
    sum += low * k + (low + high) * (2 * k + 1) + high * (k + 1);
  }
  return sum / (3 * COS_INTERVALS * COS_INTERVALS);
}
