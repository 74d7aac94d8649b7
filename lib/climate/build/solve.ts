/** A growing function's value and slope at a point; filled in by the caller's function. */
export interface SumAndSlope {
  sum: number;
  slope: number;
}

/**
 * Finds where a growing function reaches `wanted`, by Newton steps kept inside a bracket that is
 * halved when a step leaves it, to `within` of the value. The function was last called at the point returned.
 */
export function meetSum(
  wanted: number,
  start: number,
  low: number,
  high: number,
  at: (x: number, out: SumAndSlope) => void,
  within = 1e-8,
): number {
  const out = { sum: 0, slope: 0 };
  let below = low;
  let above = high;
  let x = Math.max(low, Math.min(start, high));
  for (let pass = 0; pass < 60; pass++) {
    at(x, out);
    const error = out.sum - wanted;
    if (Math.abs(error) <= within * Math.abs(wanted) || above - below < 1e-9) break;
    if (error > 0) above = x;
    else below = x;
    const next = x - error / out.slope;
    x = next > below && next < above ? next : (below + above) / 2;
  }
  return x;
}
