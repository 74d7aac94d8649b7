/** A source of numbers, even on 0 up to 1. */
export type Random = () => number;

/**
 * The mulberry32 generator (T. Ettinger 2017, public domain): 32 bits of state, period 2^32. Each
 * `stream` of a seed is a sequence of its own, so that more wind draws leave the sun as it was.
 */
export function randomStream(seed: number, stream: number): Random {
  let state = (Math.imul(seed | 0, 0x9e3779b1) ^ Math.imul(stream + 1, 0x85ebca6b)) | 0;
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  for (let i = 0; i < 8; i++) next(); // neighbouring seeds part ways
  return next;
}

/** Standard normal numbers from even ones by Box & Muller (1958), Ann. Math. Stat. 29(2). */
export function gaussianFrom(random: Random): Random {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - random()));
    const angle = 2 * Math.PI * random();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

/** First-order autoregressive series of standard normal numbers. */
export function autoregressive(n: number, correlation: number, gaussian: Random): Float64Array {
  const values = new Float64Array(n);
  const fresh = Math.sqrt(1 - correlation ** 2);
  let last = gaussian();
  for (let i = 0; i < n; i++) {
    values[i] = last;
    last = correlation * last + fresh * gaussian();
  }
  return values;
}

/**
 * Quantile of the standard normal distribution, Abramowitz & Stegun (1964), 26.2.23; within 4.5e-4.
 * @param p between 0 and 1, both left out
 */
export function normalQuantile(p: number): number {
  if (p > 0.5) return -normalQuantile(1 - p);
  const t = Math.sqrt(-2 * Math.log(p));
  const top = 2.515517 + t * (0.802853 + t * 0.010328);
  const bottom = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
  return top / bottom - t;
}

/**
 * Normal scores of `values[from]` up to `values[to]` by their ranks, written over them: the sequence
 * stays, and each stretch gets the same even spread of quantiles whatever was drawn.
 */
export function toNormalScores(values: Float64Array, from: number, to: number): void {
  const n = to - from;
  const order = Array.from({ length: n }, (_, i) => from + i);
  order.sort((a, b) => values[a] - values[b]);
  for (let rank = 0; rank < n; rank++) values[order[rank]] = normalQuantile((rank + 0.5) / n);
}
