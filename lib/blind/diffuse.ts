import { hemisphereMean } from '../glazing/index.ts';
import type { LightSplit } from './radiosity.ts';
import { PROFILE_COUNT } from './types.ts';
import type { BlindOptics } from './types.ts';

/** A vertical blind in light spread evenly over parts of the hemisphere before it. */
export interface DiffuseOptics {
  /** From above the level. */
  sky: LightSplit;
  /** From below the level. */
  ground: LightSplit;
  /** Evenly from both halves. */
  all: LightSplit;
}

/** Table index of profile angle 0. */
const LEVEL = (PROFILE_COUNT - 1) / 2;

/**
 * Weights of the profile table for the upper half of an even hemisphere before a vertical plane,
 * from level (0) to 90 degrees; they add up to 1.
 *
 * A direction at profile angle p and angle b out of the plane square to the slats has solid angle
 * cos b db dp and meets the plane at cos b cos p. Over b the product of cos2 b gives the same
 * constant for every p, so the irradiance of a band dp goes as cos p dp; here each table value's
 * share of it with straight lines between the values, integrated exactly.
 */
const halfWeights: Float64Array = (() => {
  const step = Math.PI / 2 / LEVEL;
  const inner = (2 - 2 * Math.cos(step)) / step;
  return Float64Array.from({ length: LEVEL + 1 }, (_, k) => {
    if (k === 0) return inner / 2;
    return k === LEVEL ? 1 - Math.sin(step) / step : inner * Math.cos(k * step);
  });
})();

/** Mean over the half above the level (sign 1) or below it (-1). */
function halfMean(table: Float64Array, sign: 1 | -1): number {
  let sum = 0;
  for (let k = 0; k < halfWeights.length; k++) sum += halfWeights[k] * table[LEVEL + sign * k];
  return sum;
}

const splitOf = (optics: BlindOptics, mean: (table: Float64Array) => number): LightSplit => ({
  tauDirect: mean(optics.tauDirect),
  tauDiffuse: mean(optics.tauDiffuse),
  rho: mean(optics.rho),
  alpha: mean(optics.alpha),
});

/**
 * Transmittance, reflectance and absorptance of a vertical blind for an evenly bright sky, for an
 * evenly bright ground and for both: the tables weighed by projected solid angle.
 * @param optics at one slat angle
 * @throws Error for tables of slats that track: each of their values stands for other slat angles
 */
export function diffuseOptics(optics: BlindOptics): DiffuseOptics {
  if (optics.basis === 'incidence') {
    // The same at every azimuth round the normal, so both halves see the mean of the whole.
    const mean = splitOf(optics, hemisphereMean);
    return { sky: mean, ground: mean, all: mean };
  }
  requireOneAngle(optics);
  const sky = splitOf(optics, (table) => halfMean(table, 1));
  const ground = splitOf(optics, (table) => halfMean(table, -1));
  const half = (part: keyof LightSplit) => (sky[part] + ground[part]) / 2;
  return {
    sky,
    ground,
    all: {
      tauDirect: half('tauDirect'),
      tauDiffuse: half('tauDiffuse'),
      rho: half('rho'),
      alpha: half('alpha'),
    },
  };
}

/** Refuses tables of slats that track where one slat angle is meant. */
export function requireOneAngle(optics: BlindOptics): void {
  const first = optics.slatAngle[0];
  if (optics.slatAngle.some((angle) => angle !== first)) {
    throw new Error('Slats that track have no diffuse properties of one slat angle');
  }
}
