import type { GlassAngular } from '../glazing/index.ts';
import { diffuseOptics } from './diffuse.ts';
import { slatTable } from './optics.ts';
import type { Blind, BlindOptics, TotalGain } from './types.ts';

/** Conductances of ISO 52022-1:2017 (EN 13363-1:2003 clause 5), W/m2K; from memory. */
const G_EXTERNAL_GAP = 5;
const G_EXTERNAL_SURFACE = 10;
const G_INTERNAL = 30;
const G_BETWEEN = 3;

/** Up to here ISO 52022-1 holds for external blinds (from memory: solar transmittance 0 to 0.5). */
const PUBLISHED_TRANSMITTANCE = 0.5;

/** Coefficient tables to be filled or blended. */
type Coefficients = Pick<TotalGain, 'c0' | 'c1' | 'c2'>;

const conductance = (...resistances: number[]): number =>
  1 / resistances.reduce((sum, resistance) => sum + resistance, 0);

function table(optics: BlindOptics, value: (j: number) => number): Float64Array {
  const result = new Float64Array(optics.rho.length);
  for (let j = 0; j < result.length; j++) result[j] = value(j);
  return result;
}

/**
 * Past the published range the warmed gap's term is let fade to nothing at transmittance 1, or a
 * blind that lets everything through would raise the gain above that of the bare glass.
 */
const gapShare = (tau: number): number =>
  tau <= PUBLISHED_TRANSMITTANCE ? 1 : (1 - tau) / (1 - PUBLISHED_TRANSMITTANCE);

/**
 * External blind: g_tot = tau g + alpha G/G2 + tau (1 - g) G/G1 with G = 1/(1/Ug + 1/G1 + 1/G2);
 * light that passes straight meets the glass at its own angle, scattered light at the hemispherical
 * mean.
 */
function external(optics: BlindOptics, glass: GlassAngular): Coefficients {
  const G = conductance(1 / glass.Ug, 1 / G_EXTERNAL_GAP, 1 / G_EXTERNAL_SURFACE);
  const gap = (j: number) =>
    (gapShare(optics.tauDirect[j] + optics.tauDiffuse[j]) * G) / G_EXTERNAL_GAP;
  const surface = G / G_EXTERNAL_SURFACE;
  const g = glass.gDiffuse;
  return {
    c0: table(
      optics,
      (j) =>
        optics.alpha[j] * surface +
        optics.tauDirect[j] * gap(j) +
        optics.tauDiffuse[j] * (g + (1 - g) * gap(j)),
    ),
    c1: table(optics, (j) => optics.tauDirect[j] * (1 - gap(j))),
    c2: new Float64Array(optics.rho.length),
  };
}

/** Internal blind: g_tot = g (1 - g rho - alpha G/G2) with G = 1/(1/Ug + 1/G2). */
function internal(optics: BlindOptics, glass: GlassAngular): Coefficients {
  const share = conductance(1 / glass.Ug, 1 / G_INTERNAL) / G_INTERNAL;
  return {
    c0: new Float64Array(optics.rho.length),
    c1: table(optics, (j) => 1 - optics.alpha[j] * share),
    c2: table(optics, (j) => -optics.rho[j]),
  };
}

/**
 * Blind in a closed cavity: g_tot = g tau + g (alpha + (1 - g) rho) G/G3, G = 1/(1/Ug + 1/G3).
 * The reflected part is weighed by g as published, though the light meets one pane only.
 */
function between(optics: BlindOptics, glass: GlassAngular): Coefficients {
  const share = conductance(1 / glass.Ug, 1 / G_BETWEEN) / G_BETWEEN;
  return {
    c0: new Float64Array(optics.rho.length),
    c1: table(
      optics,
      (j) => optics.tauDirect[j] + optics.tauDiffuse[j] + (optics.alpha[j] + optics.rho[j]) * share,
    ),
    c2: table(optics, (j) => -optics.rho[j] * share),
  };
}

/** Straight line from one set of coefficients (share 0) to another (share 1). */
function blend(from: Coefficients, to: Coefficients, share: number): Coefficients {
  const mix = (a: Float64Array, b: Float64Array) => a.map((x, j) => x + share * (b[j] - x));
  return { c0: mix(from.c0, to.c0), c1: mix(from.c1, to.c1), c2: mix(from.c2, to.c2) };
}

/** What a blind behind a matt pane does at each index: the pane has spread the light evenly. */
function behindMattGlass(blind: Blind, optics: BlindOptics): BlindOptics {
  const seen = Array.from(optics.slatAngle, (angle, j) => {
    if (j > 0 && angle === optics.slatAngle[j - 1]) return null;
    return diffuseOptics(blind.kind === 'slats' ? slatTable(blind, angle) : optics).all;
  });
  for (let j = 1; j < seen.length; j++) seen[j] ??= seen[j - 1];
  return {
    ...optics,
    tauDirect: Float64Array.from(seen, (split) => split!.tauDirect),
    tauDiffuse: Float64Array.from(seen, (split) => split!.tauDiffuse),
    rho: Float64Array.from(seen, (split) => split!.rho),
    alpha: Float64Array.from(seen, (split) => split!.alpha),
  };
}

/**
 * Gain of glass and blind together by ISO 52022-1:2017 (the simple method of EN 13363-1:2003;
 * equations from memory), as coefficients of the bare glass's g: c0 + c1 g + c2 g2 at each index of
 * the optics' basis. A blind between panes is placed by `ventFactor` on the straight line between
 * the closed cavity (0) and the external blind (1): an estimate held by both bounds. An internal
 * blind behind matt glass sees light spread evenly over its hemisphere.
 *
 * Published range (from memory): g 0.15 to 0.85, blind transmittance up to 0.5, reflectance 0.1 to
 * 0.8; more open external blinds fade towards the bare glass.
 * @param optics of this blind from `blindOptics`
 */
export function totalGain(blind: Blind, optics: BlindOptics, glass: GlassAngular): TotalGain {
  const { basis } = optics;
  if (blind.position === 'external') return { basis, optics, ...external(optics, glass) };
  if (blind.position === 'between') {
    const closed = between(optics, glass);
    const vent = blind.ventFactor ?? 0;
    if (vent === 0) return { basis, optics, ...closed };
    return { basis, optics, ...blend(closed, external(optics, glass), vent) };
  }
  const seen = glass.diffusing ? behindMattGlass(blind, optics) : optics;
  return { basis, optics, ...internal(seen, glass) };
}
