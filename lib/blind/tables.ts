import { COS_INTERVALS } from '../glazing/index.ts';
import { PROFILE_COUNT } from './types.ts';
import type { BlindOptics } from './types.ts';

/** Tables of a basis filled with 0. */
export function emptyOptics(basis: BlindOptics['basis']): BlindOptics {
  const table = () => new Float64Array(basis === 'profile' ? PROFILE_COUNT : COS_INTERVALS + 1);
  return {
    basis,
    tauDirect: table(),
    tauDiffuse: table(),
    rho: table(),
    alpha: table(),
    slatAngle: table(),
  };
}
