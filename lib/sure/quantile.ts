/** Spread of a figure over cases. */
export interface Interval {
  least: number;
  /** 10 % of the cases lie below, 90 % below `high`. */
  low: number;
  median: number;
  high: number;
  most: number;
}

/**
 * Quantile of numbers in rising order: straight lines between the order statistics, the first at 0
 * and the last at 1; type 7 of Hyndman & Fan (1996), Sample quantiles in statistical packages, The
 * American Statistician 50(4).
 * @param p 0 to 1
 */
export function quantile(sorted: readonly number[], p: number): number {
  const at = (sorted.length - 1) * p;
  const i = Math.floor(at);
  const above = sorted[Math.min(i + 1, sorted.length - 1)];
  return sorted[i] + (above - sorted[i]) * (at - i);
}

/** Least, 10 %, middle, 90 % and most of at least one number, in any order. */
export function intervalOf(values: readonly number[]): Interval {
  const sorted = [...values].sort((a, b) => a - b);
  return {
    least: sorted[0],
    low: quantile(sorted, 0.1),
    median: quantile(sorted, 0.5),
    high: quantile(sorted, 0.9),
    most: sorted[sorted.length - 1],
  };
}
