import { InputError, problem } from '../problem/index.ts';
import { diffuseOptics } from './diffuse.ts';
import { meshOptics } from './fabric.ts';
import type { FabricBlind } from './types.ts';
import { validateBlind } from './validate.ts';
import { rangeText, say } from './say.ts';

/** What an insect screen leaves of the light on the opening. */
export interface ScreenFactor {
  /** For light from one direction, by the cosine of incidence: COS_INTERVALS + 1 values. */
  beam: Float64Array;
  /** For light spread evenly over the hemisphere. */
  diffuse: number;
}

/**
 * Share of the light that passes an insect screen outside the glass, straight and scattered
 * together. What the mesh takes up goes to the outdoor air: of its absorbed part the room would get
 * about 0.05 by ISO 52022-1 with triple glazing, left out here. Multiplies the light that would
 * otherwise reach blind or glass.
 * @param covered share of the opening behind the screen: 1, or 0.5 for half of a sliding pair
 * @throws InputError for a screen `validateBlind` complains of, or a share outside 0 to 1
 */
export function insectScreenFactor(screen: FabricBlind, covered = 1): ScreenFactor {
  checkScreen(screen, covered);
  const optics = meshOptics(screen);
  const left = (tau: number) => 1 - covered * (1 - tau);
  const { all } = diffuseOptics(optics);
  return {
    beam: optics.tauDirect.map((direct, k) => left(direct + optics.tauDiffuse[k])),
    diffuse: left(all.tauDirect + all.tauDiffuse),
  };
}

/** Common practice: discharge coefficient of a plain opening. */
const DISCHARGE = 0.6;

/** Reynolds number of a 0.2 mm wire in 0.75 m/s of air, typical of airing. */
const AIRING_REYNOLDS = 10;

/**
 * Pressure loss of a woven screen in heads of the approach velocity: Brundrett (1993), Prediction
 * of pressure drop for incompressible flow through screens, J. Fluids Eng. 115 (from memory).
 * @param openness open share of the screen
 * @param reynolds approach velocity x wire diameter / viscosity, 1e-4 to 1e4
 */
export function screenLoss(openness: number, reynolds: number): number {
  const wire =
    7 / reynolds + 0.9 / Math.log10(reynolds + 1.25) + 0.05 * Math.log10(Math.max(reynolds, 1e-9));
  return wire * ((1 - openness ** 2) / openness ** 2);
}

/**
 * Share of the airing flow that a screen over the whole opening leaves: the screen's loss in series
 * with a plain opening's (1 / 0.6 squared), at the same pressure difference.
 * @throws InputError for a screen `validateBlind` complains of, or one without holes
 */
export function screenAirFlowFactor(screen: FabricBlind): number {
  checkScreen(screen, 1);
  if (screen.openness < 0.05) {
    const texts = {
      message: say('blind.noHoles'),
      allowed: rangeText(0.05, 1),
      fix: say('blind.noHolesFix'),
    };
    throw new InputError(problem('openness', texts, screen.openness));
  }
  const opening = 1 / DISCHARGE ** 2;
  return Math.sqrt(opening / (opening + screenLoss(screen.openness, AIRING_REYNOLDS)));
}

function checkScreen(screen: FabricBlind, covered: number): void {
  const problems = validateBlind(screen);
  if (!(covered >= 0 && covered <= 1)) {
    const message = say('blind.covered');
    const texts = { message, allowed: rangeText(0, 1), fix: say('blind.coveredFix') };
    problems.push(problem('covered', texts, covered));
  }
  if (problems.length) throw new InputError(problems);
}
