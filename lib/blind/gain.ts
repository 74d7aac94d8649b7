import { COS_INTERVALS, lookup } from '../glazing/index.ts';
import type { GlassAngular } from '../glazing/index.ts';
import type { DirectionSet } from '../opening/index.ts';
import { requireOneAngle } from './diffuse.ts';
import { blindOptics, slatTable } from './optics.ts';
import { totalGain } from './total.ts';
import { PROFILE_COUNT } from './types.ts';
import type { Blind, TotalGain } from './types.ts';

/** Slat angles solved for tracked diffuse gain, degrees; straight lines between err under 0.001. */
const ANGLE_STEP = 5;

const LEVEL = (PROFILE_COUNT - 1) / 2;

/** Value at a fractional index, straight lines between, held at the ends. */
function valueAt(table: Float64Array, x: number): number {
  const last = table.length - 1;
  if (!(x > 0)) return table[0];
  if (x >= last) return table[last];
  const k = Math.floor(x);
  return table[k] + (x - k) * (table[k + 1] - table[k]);
}

/** Fractional index of a direction in tables of either basis. */
const indexOf = (basis: TotalGain['basis'], cosIncidence: number, profileAngle: number): number =>
  basis === 'profile' ? profileAngle + LEVEL : cosIncidence * COS_INTERVALS;

/**
 * Total g of glass and blind for light from one direction: straight lines between table values,
 * g of the bare glass at its own incidence angle.
 * @param cosIncidence on the glass, 0 to 1
 * @param profileAngle degrees, positive from above
 */
export function directionalGain(
  total: TotalGain,
  glass: GlassAngular,
  cosIncidence: number,
  profileAngle: number,
): number {
  const x = indexOf(total.basis, cosIncidence, profileAngle);
  const g = lookup(glass.g, cosIncidence);
  return valueAt(total.c0, x) + g * (valueAt(total.c1, x) + g * valueAt(total.c2, x));
}

/**
 * A set of directions gathered on the tables' indices: weight, weight x g and weight x g2 at each,
 * so that any blind's gain from the set is three dot products.
 */
interface Moments {
  w0: Float64Array;
  w1: Float64Array;
  w2: Float64Array;
}

function gather(
  basis: TotalGain['basis'],
  length: number,
  glass: GlassAngular,
  set: DirectionSet,
): Moments {
  const w0 = new Float64Array(length);
  const w1 = new Float64Array(length);
  const w2 = new Float64Array(length);
  const last = length - 1;
  for (let i = 0; i < set.weight.length; i++) {
    const g = lookup(glass.g, set.cosIncidence[i]);
    const x = indexOf(basis, set.cosIncidence[i], set.profileAngle[i]);
    const inside = Math.max(0, Math.min(last, x));
    const k = Math.min(last - 1, Math.floor(inside));
    const upper = set.weight[i] * (inside - k);
    const lower = set.weight[i] - upper;
    w0[k] += lower;
    w0[k + 1] += upper;
    w1[k] += lower * g;
    w1[k + 1] += upper * g;
    w2[k] += lower * g * g;
    w2[k + 1] += upper * g * g;
  }
  return { w0, w1, w2 };
}

function dot(total: TotalGain, { w0, w1, w2 }: Moments): number {
  let sum = 0;
  for (let j = 0; j < w0.length; j++) {
    sum += total.c0[j] * w0[j] + total.c1[j] * w1[j] + total.c2[j] * w2[j];
  }
  return sum;
}

/**
 * Gain through glass and blind per unit radiosity of what a set of directions sees: the sum of
 * weight x g_tot, each direction at its own incidence and profile angle.
 * @param total at one slat angle
 * @throws Error for slats that track: see `trackedDiffuseGain`
 */
export function diffuseGain(
  total: TotalGain,
  glass: GlassAngular,
  directions: DirectionSet,
): number {
  requireOneAngle(total.optics);
  return dot(total, gather(total.basis, total.c0.length, glass, directions));
}

/**
 * `diffuseGain` for a blind that tracks, at each profile angle of the sun: index j has the slats
 * at their tracking angle for it, lit from all directions of the set. PROFILE_COUNT values; for
 * fabrics and shutters, which do not track, all are the same. With no sun in front of the blind
 * take the level index, where slats stand at their flattest.
 * @throws InputError for a blind `validateBlind` complains of
 */
export function trackedDiffuseGain(
  blind: Blind,
  glass: GlassAngular,
  directions: DirectionSet,
): Float64Array {
  const result = new Float64Array(PROFILE_COUNT);
  const track = blindOptics(blind, { kind: 'track' });
  if (blind.kind !== 'slats') {
    return result.fill(diffuseGain(totalGain(blind, track, glass), glass, directions));
  }
  const moments = gather(track.basis, PROFILE_COUNT, glass, directions);
  const steps = new Map<number, number>();
  const atStep = (k: number): number => {
    let gain = steps.get(k);
    if (gain === undefined) {
      gain = dot(totalGain(blind, slatTable(blind, k * ANGLE_STEP), glass), moments);
      steps.set(k, gain);
    }
    return gain;
  };
  for (let j = 0; j < PROFILE_COUNT; j++) {
    const x = track.slatAngle[j] / ANGLE_STEP;
    const k = Math.floor(x);
    result[j] = x === k ? atStep(k) : atStep(k) + (x - k) * (atStep(k + 1) - atStep(k));
  }
  return result;
}
