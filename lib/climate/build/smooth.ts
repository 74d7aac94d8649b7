/**
 * A smooth curve through averages that keeps every average: Rymes & Myers (2001), "Mean preserving
 * algorithm for smoothly interpolating averaged data", Solar Energy 71(4). Each pass takes the mean
 * of neighbours, then shifts every interval back to its own mean; the ends join.
 *
 * @param means one average an interval
 * @param lengths points in each interval
 * @returns one value a point
 */
export function smoothThroughMeans(
  means: ArrayLike<number>,
  lengths: ArrayLike<number>,
  passes = longest(lengths),
): Float64Array {
  const mean = Float64Array.from(means); // one kind of array, so that the inner loops stay fast
  const end = new Int32Array(mean.length);
  for (let i = 0, at = 0; i < mean.length; i++) end[i] = at += lengths[i];
  const curve = new Float64Array(end[end.length - 1]);
  for (let i = 0; i < mean.length; i++) curve.fill(mean[i], i ? end[i - 1] : 0, end[i]);
  for (let pass = 0; pass < passes; pass++) {
    smoothOnce(curve);
    for (let i = 0, from = 0; i < mean.length; from = end[i++]) {
      const to = end[i];
      let sum = 0;
      for (let k = from; k < to; k++) sum += curve[k];
      const shift = mean[i] - sum / (to - from);
      for (let k = from; k < to; k++) curve[k] += shift;
    }
  }
  return curve;
}

function smoothOnce(curve: Float64Array): void {
  const n = curve.length;
  const first = curve[0];
  let before = curve[n - 1];
  for (let k = 0; k < n; k++) {
    const here = curve[k];
    const after = k + 1 < n ? curve[k + 1] : first;
    curve[k] = (before + here + after) / 3;
    before = here;
  }
}

function longest(lengths: ArrayLike<number>): number {
  return Math.max(...Array.from(lengths));
}
