/** Points and weights of a rule for integrals over -1 to 1. */
export interface Rule {
  x: Float64Array;
  w: Float64Array;
}

const rules = new Map<number, Rule>();

/**
 * Gauss-Legendre rule of n points, by Newton's method on the Legendre polynomial (Abramowitz & Stegun
 * 1964, 25.4.29 and 8.5.3). Rules are kept.
 */
export function gaussLegendre(n: number): Rule {
  const known = rules.get(n);
  if (known) return known;
  const x = new Float64Array(n);
  const w = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let z = -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 8; step++) {
      let p0 = 1;
      let p1 = z;
      for (let k = 2; k <= n; k++) [p0, p1] = [p1, ((2 * k - 1) * z * p1 - (k - 1) * p0) / k];
      slope = (n * (z * p1 - p0)) / (z * z - 1);
      z -= p1 / slope;
    }
    x[i] = z;
    w[i] = 2 / ((1 - z * z) * slope * slope);
  }
  const rule = { x, w };
  rules.set(n, rule);
  return rule;
}
