/** The two polarisations, kept apart all through a stack and averaged only at its end. */
export type Polarisation = 's' | 'p';

/** Shares of the light that falls on one pane, for one polarisation; they add up to 1. */
export interface PaneOptics {
  tau: number;
  rho: number;
  alpha: number;
}

/** Cosine of the angle inside the glass, by Snell's law. */
export function refractedCosine(cosIncidence: number, refractiveIndex: number): number {
  return Math.sqrt(1 - (1 - cosIncidence * cosIncidence) / (refractiveIndex * refractiveIndex));
}

/**
 * Reflectance of one face between air and glass, Fresnel's equations (Duffie & Beckman, Solar
 * Engineering of Thermal Processes, 4th ed. 2013, eqs. 5.1.1 and 5.1.2, in their form without
 * division by zero at normal incidence).
 * @param cosIncidence 0 to 1 @param refractiveIndex of the glass, air being 1
 */
export function interfaceReflectance(
  cosIncidence: number,
  refractiveIndex: number,
  polarisation: Polarisation,
): number {
  const inside = refractedCosine(cosIncidence, refractiveIndex);
  const [a, b] =
    polarisation === 's'
      ? [cosIncidence, refractiveIndex * inside]
      : [refractiveIndex * cosIncidence, inside];
  const amplitude = (a - b) / (a + b);
  return amplitude * amplitude;
}

/**
 * One pane with all the reflections inside it, for one polarisation (Duffie & Beckman, eqs. 5.2.2
 * and 5.3.1 to 5.3.3; Bouguer's law for the absorption).
 * @param cosIncidence above 0, to 1 @param thickness m @param extinction 1/m
 */
export function paneOptics(
  cosIncidence: number,
  thickness: number,
  extinction: number,
  refractiveIndex: number,
  polarisation: Polarisation,
): PaneOptics {
  const r = interfaceReflectance(cosIncidence, refractiveIndex, polarisation);
  const path = thickness / refractedCosine(cosIncidence, refractiveIndex);
  const a = Math.exp(-extinction * path);
  const tau = (a * (1 - r) * (1 - r)) / (1 - r * r * a * a);
  return { tau, rho: r * (1 + a * tau), alpha: ((1 - a) * (1 - r)) / (1 - r * a) };
}
