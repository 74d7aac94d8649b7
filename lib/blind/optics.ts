import { InputError, problem } from '../problem/index.ts';
import { fabricOptics, shutterOptics } from './fabric.ts';
import { profileTangent, reachable, STANDING_ANGLE, trackingAngle } from './louvre.ts';
import { solveSlats, splitBeam } from './radiosity.ts';
import type { LightSplit, SlatSolution } from './radiosity.ts';
import { emptyOptics } from './tables.ts';
import { PROFILE_COUNT } from './types.ts';
import type { Blind, BlindOptics, BlindSetting, SlatBlind } from './types.ts';
import { validateBlind } from './validate.ts';
import { rangeText, say } from './say.ts';

/** Profile angle of a table index, degrees. */
export const profileOfIndex = (index: number): number => index - (PROFILE_COUNT - 1) / 2;

const tangents = Float64Array.from({ length: PROFILE_COUNT }, (_, j) =>
  profileTangent(profileOfIndex(j)),
);

/** One geometry's solved angles and tables; kept because schedules ask for them over and over. */
interface Kept {
  solutions: Map<number, SlatSolution>;
  tables: Map<number, BlindOptics>;
  tracks: Map<string, BlindOptics>;
}

/** Geometries kept at a time: a house has a few, an editor drags through many. */
const KEPT_GEOMETRIES = 16;
const kept = new Map<string, Kept>();

function keptFor(blind: SlatBlind): Kept {
  const key = [
    blind.slatWidth / blind.slatSpacing,
    blind.reflectanceUpper,
    blind.reflectanceLower,
    blind.slatTransmittance,
  ].join();
  let entry = kept.get(key);
  if (!entry) {
    entry = { solutions: new Map(), tables: new Map(), tracks: new Map() };
    if (kept.size >= KEPT_GEOMETRIES) kept.delete(kept.keys().next().value!);
    kept.set(key, entry);
  }
  return entry;
}

function lookUp<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let value = map.get(key);
  if (value === undefined) {
    value = make();
    map.set(key, value);
  }
  return value;
}

const solutionAt = (blind: SlatBlind, angle: number, of = keptFor(blind)): SlatSolution =>
  lookUp(of.solutions, angle, () => solveSlats(blind, angle));

/** Fills index j of the tables with slats as solved. */
function fill(optics: BlindOptics, j: number, solution: SlatSolution, split: Float64Array): void {
  splitBeam(solution, tangents[j], split);
  optics.tauDirect[j] = split[0];
  optics.tauDiffuse[j] = split[1];
  optics.rho[j] = split[2];
  optics.alpha[j] = split[3];
  optics.slatAngle[j] = solution.angle;
}

/**
 * Tables of a slat blind standing at one angle, PROFILE_COUNT values; kept, so not to be written to.
 * @param angle degrees, not limited by the drive here
 */
export function slatTable(blind: SlatBlind, angle: number): BlindOptics {
  const of = keptFor(blind);
  return lookUp(of.tables, angle, () => {
    const optics = emptyOptics('profile');
    const split = new Float64Array(4);
    const solution = solutionAt(blind, angle, of);
    for (let j = 0; j < PROFILE_COUNT; j++) fill(optics, j, solution, split);
    return optics;
  });
}

/** Tables of slats that stand at `trackingAngle` for each profile angle. */
function trackTable(blind: SlatBlind): BlindOptics {
  const of = keptFor(blind);
  return lookUp(of.tracks, `${blind.angleMin},${blind.angleMax}`, () => {
    const optics = emptyOptics('profile');
    const split = new Float64Array(4);
    for (let j = 0; j < PROFILE_COUNT; j++) {
      const angle = trackingAngle(blind, profileOfIndex(j));
      fill(optics, j, solutionAt(blind, angle, of), split);
    }
    return optics;
  });
}

/**
 * What slats do to a beam, directional to hemispherical; the four parts add up to 1. Straight
 * through by geometry, the rest by radiosity (see `solveSlats`).
 * @param angle slat angle, degrees: 0 flat, positive with the outer edge down, 90 closed
 * @param profileAngle degrees, positive from above, negative for light from the ground
 */
export function slatOptics(blind: SlatBlind, angle: number, profileAngle: number): LightSplit {
  const split = new Float64Array(4);
  splitBeam(solveSlats(blind, angle), profileTangent(profileAngle), split);
  return { tauDirect: split[0], tauDiffuse: split[1], rho: split[2], alpha: split[3] };
}

/**
 * Tables of a lowered blind. Slats run over the profile angle, PROFILE_COUNT whole degrees:
 * `tilt` at its angle and `down` at STANDING_ANGLE, both rounded to whole degrees and held within
 * the drive's range; `track` at `trackingAngle` of each index. Fabrics and shutters run over the
 * cosine of incidence and know one setting only. The tables of slats are kept by geometry and
 * angle: read them, do not write to them.
 * @throws InputError for a blind `validateBlind` complains of, or an angle that is no number
 */
export function blindOptics(blind: Blind, setting: BlindSetting): BlindOptics {
  const problems = validateBlind(blind);
  if (problems.length) throw new InputError(problems);
  if (blind.kind === 'fabric') return fabricOptics(blind);
  if (blind.kind === 'shutter') return shutterOptics(blind);
  if (setting.kind === 'track') return trackTable(blind);
  const angle = setting.kind === 'tilt' ? setting.angle : STANDING_ANGLE;
  if (!Number.isFinite(angle)) {
    const texts = {
      message: say('blind.angle'),
      allowed: rangeText(blind.angleMin, blind.angleMax, 'degrees'),
      fix: say('blind.angleFix'),
    };
    throw new InputError(problem('angle', texts, angle));
  }
  return slatTable(blind, reachable(blind, Math.round(angle)));
}

/**
 * Share of a level view (profile angle 0, square to the blind) that passes straight through, at
 * each index of the optics' basis: constant but for slats that track. 1 is a bare window. For the
 * view out and as the clear part of daylight.
 * @param optics of this blind
 */
export function viewThrough(blind: Blind, optics: BlindOptics): Float64Array {
  if (blind.kind !== 'slats') {
    const normal = optics.tauDirect[optics.tauDirect.length - 1];
    return new Float64Array(optics.tauDirect.length).fill(normal);
  }
  const split = new Float64Array(4);
  return optics.slatAngle.map((angle) => splitBeam(solutionAt(blind, angle), 0, split)[0]);
}
