import { keepOpen } from './louvre.ts';
import { solveInPlace } from './solve.ts';
import type { SlatBlind } from './types.ts';

/** Strips each slat side is split into: 12 stay within 0.005 of 96 (errors at p weighed by cos p). */
const STRIPS = 12;

/** What becomes of a light beam; the four add up to 1. */
export interface LightSplit {
  tauDirect: number;
  tauDiffuse: number;
  rho: number;
  alpha: number;
}

/**
 * Where light ends that lands on one slat side, summed strip by strip from the outer edge as a
 * share of the chord: STRIPS + 1 values each, adding up to k / STRIPS at index k.
 */
interface Ends {
  inward: Float64Array;
  outward: Float64Array;
  absorbed: Float64Array;
}

/** One slat geometry at one angle, solved for light from any direction. */
export interface SlatSolution {
  angle: number;
  /** The chord's extent down the blind's plane and out of it, in slat spacings. */
  drop: number;
  reach: number;
  upper: Ends;
  lower: Ends;
}

/** What of a slat blind matters to light. */
export type SlatOptical = Pick<
  SlatBlind,
  'slatWidth' | 'slatSpacing' | 'reflectanceUpper' | 'reflectanceLower' | 'slatTransmittance'
>;

/**
 * Distance between the k-th node of a slat and that of the slat above, for nodes counted from the
 * inner edge and a spacing of 1: value k + n for k = -n to n.
 */
function nodeDistances(drop: number, reach: number, n: number): Float64Array {
  const d = new Float64Array(2 * n + 1);
  for (let k = -n; k <= n; k++) d[k + n] = Math.hypot((k / n) * reach, 1 - (k / n) * drop);
  return d;
}

/**
 * Solves the exchange of diffuse light between two neighbouring slats and the two open faces, the
 * scheme of ISO 15099:2003 clause 7.3 and ISO 52022-3: flat strips that scatter evenly, view
 * factors by crossed strings (Hottel 1954). It is solved backwards (the adjoint system): the share
 * of light landing on each strip that ends inward, outward or absorbed. So one elimination serves
 * every direction the light may come from, and lit lengths need not end at a strip's edge.
 *
 * Slats are flat, curved ones count as their chord, infinitely long and thin. What a slat transmits
 * leaves its other side scattered.
 * @param angle slat angle, degrees
 * @param strips per slat side
 */
export function solveSlats(blind: SlatOptical, angle: number, strips = STRIPS): SlatSolution {
  const n = strips;
  const ratio = blind.slatWidth / blind.slatSpacing;
  const h = ratio / n;
  const radians = (keepOpen(angle) * Math.PI) / 180;
  const drop = ratio * Math.sin(radians);
  const reach = ratio * Math.cos(radians);
  const d = nodeDistances(drop, reach, n);
  const face = (near: number, far: number) => (d[near] + h - d[far]) / (2 * h);
  const tau = blind.slatTransmittance;
  const upper = { rho: blind.reflectanceUpper, alpha: 1 - blind.reflectanceUpper - tau };
  const lower = { rho: blind.reflectanceLower, alpha: 1 - blind.reflectanceLower - tau };

  // Unknown e: where light that leaves a strip ends. Rows 0 to n-1 upper sides of the lower slat,
  // n to 2n-1 lower sides of the upper slat; strip 0 at the inner edge.
  const size = 2 * n;
  const a = new Float64Array(size * size);
  const b = new Float64Array(size * 3);
  for (let i = 0; i < n; i++) {
    const u = i * size;
    const l = (n + i) * size;
    a[u + i] = a[l + n + i] = 1;
    let seen = 0;
    for (let j = 0; j < n; j++) {
      const above = viewFactor(d, n + j - i, h);
      const below = viewFactor(d, n + i - j, h);
      a[u + n + j] -= above * lower.rho;
      a[u + j] -= above * tau;
      a[l + j] -= below * upper.rho;
      a[l + n + j] -= below * tau;
      seen += above;
      b[(n + i) * 3 + 2] += below * upper.alpha;
    }
    b[i * 3 + 2] = seen * lower.alpha;
    b[i * 3] = face(n - i, n - i - 1);
    b[i * 3 + 1] = face(2 * n - i - 1, 2 * n - i);
    b[(n + i) * 3] = face(n + i, n + i + 1);
    b[(n + i) * 3 + 1] = face(i + 1, i);
  }
  solveInPlace(a, b, size, 3);
  return {
    angle,
    drop,
    reach,
    upper: sumEnds(b, 0, n, upper.rho, tau, upper.alpha),
    lower: sumEnds(b, n, 0, lower.rho, tau, lower.alpha),
  };
}

/** Crossed strings between two strips of equal length h whose nodes lie k - n apart. */
function viewFactor(d: Float64Array, k: number, h: number): number {
  return (d[k + 1] + d[k - 1] - 2 * d[k]) / (2 * h);
}

/** From where leaving light ends to where landing light ends, summed from the outer edge. */
function sumEnds(
  e: Float64Array,
  own: number,
  other: number,
  rho: number,
  tau: number,
  alpha: number,
): Ends {
  const n = e.length / 6;
  const sum = (end: number, kept: number) => {
    const total = new Float64Array(n + 1);
    for (let k = 0; k < n; k++) {
      const i = n - 1 - k;
      const share = rho * e[(own + i) * 3 + end] + tau * e[(other + i) * 3 + end] + kept;
      total[k + 1] = total[k] + share / n;
    }
    return total;
  };
  return { inward: sum(0, 0), outward: sum(1, 0), absorbed: sum(2, alpha) };
}

/**
 * Splits a beam from one profile angle, written as tauDirect, tauDiffuse, rho, alpha (sum 1).
 * @param tangent of the profile angle, positive from above
 * @param out four values
 */
export function splitBeam(
  solution: SlatSolution,
  tangent: number,
  out: Float64Array,
): Float64Array {
  // Height of a slat's shadow on the blind's plane in spacings, negative on lower sides:
  // w sin(angle + p) / (s cos p). From 1 up shadows meet and no direct light passes.
  const signed = solution.drop + solution.reach * tangent;
  const shadow = Math.abs(signed);
  const ends = signed > 0 ? solution.upper : solution.lower;
  // Lit from the outer edge; the light on it per unit of chord is the shadow's height.
  const lit = shadow > 1 ? 1 / shadow : 1;
  out[0] = shadow < 1 ? 1 - shadow : 0;
  out[1] = shadow * valueAt(ends.inward, lit);
  out[2] = shadow * valueAt(ends.outward, lit);
  out[3] = shadow * valueAt(ends.absorbed, lit);
  return out;
}

function valueAt(sums: Float64Array, share: number): number {
  const x = share * (sums.length - 1);
  const k = Math.min(sums.length - 2, Math.floor(x));
  return sums[k] + (x - k) * (sums[k + 1] - sums[k]);
}
