/** Profile angles tabled: -90 to 90 in whole degrees. */
export const PROFILE_COUNT = 181;

/** Where the blind hangs in relation to the glass. */
export type BlindPosition = 'external' | 'between' | 'internal';

interface BlindCommon {
  id: string;
  name: string;
  position: BlindPosition;
  /** For `between`: 0 a closed cavity, 1 as free to the outdoor air as an external blind. */
  ventFactor?: number;
  /** Wind speed above which it must be raised, m/s; absent where wind does not matter. */
  windLimit?: number;
  /** Source or mark: `common practice`, `from memory`, or a publication. */
  source: string;
}

/**
 * Horizontal slats, taken flat and thin (curved ones as their chord). Slat angle 0 lies flat,
 * positive turns the outer edge down, 90 is closed.
 */
export interface SlatBlind extends BlindCommon {
  kind: 'slats';
  /** Chord of a slat, m. */
  slatWidth: number;
  /** Distance from slat to slat along the plane, m. */
  slatSpacing: number;
  /** Solar reflectance of the upper and the lower side. */
  reflectanceUpper: number;
  reflectanceLower: number;
  /** Solar transmittance of the slat itself, 0 for metal. */
  slatTransmittance: number;
  /** Angles the drive can reach, degrees. */
  angleMin: number;
  angleMax: number;
}

/**
 * A screen, roller fabric or insect mesh. openness + diffuseTransmittance + reflectance are parts of
 * the light that falls on it square; the rest is absorbed.
 */
export interface FabricBlind extends BlindCommon {
  kind: 'fabric';
  /** Open share of the weave: direct transmittance at normal incidence. */
  openness: number;
  /** Solar transmittance of the yarn side of it: direct to diffuse at normal incidence. */
  diffuseTransmittance: number;
  /** Solar reflectance of the side towards the sun. */
  reflectance: number;
}

/** A roller or hinged shutter: opaque but for its gaps. */
export interface ShutterBlind extends BlindCommon {
  kind: 'shutter';
  /** Share of the light that leaks past it. */
  transmittance: number;
  reflectance: number;
}

export type Blind = SlatBlind | FabricBlind | ShutterBlind;

/**
 * How a lowered blind is set: slats at an angle or following the sun's cut-off; `down` leaves slats
 * at STANDING_ANGLE and is the only setting fabrics and shutters know.
 */
export type BlindSetting = { kind: 'down' } | { kind: 'tilt'; angle: number } | { kind: 'track' };

/**
 * What a lowered blind does to light from one direction. Tables run over profile angle (slats,
 * PROFILE_COUNT values) or over the cosine of incidence (fabrics, glazing's COS_INTERVALS + 1).
 * At each index tauDirect + tauDiffuse + rho + alpha = 1. Shared between callers: read only.
 */
export interface BlindOptics {
  basis: 'profile' | 'incidence';
  /** Straight through. */
  tauDirect: Float64Array;
  /** Through after scattering. */
  tauDiffuse: Float64Array;
  rho: Float64Array;
  alpha: Float64Array;
  /** Slat angle at each index, degrees, where slats track; constant otherwise; 0 for fabrics. */
  slatAngle: Float64Array;
}

/**
 * Gain of glass and blind together for direct light, per W/m2 on the glass:
 * g_tot = c0[j] + c1[j] g + c2[j] g^2, with g the bare glass at its own incidence angle and j the
 * index of the optics' basis.
 */
export interface TotalGain {
  basis: 'profile' | 'incidence';
  c0: Float64Array;
  c1: Float64Array;
  c2: Float64Array;
  optics: BlindOptics;
}
