export type { HorizonPoint } from '../sky/index.ts';

/**
 * Plane coordinates of an opening, metres: x to the right as seen from outside, y up the plane,
 * z outward along its normal. The origin is the lower left corner of the opening's clear size;
 * the glass lies in z = 0.
 */

/** One value for each side, left and right as seen from outside. */
export interface Sides {
  head: number;
  sill: number;
  left: number;
  right: number;
}

/**
 * A flat shade above the opening, square to the wall, starting at the wall's outer face. On a roof
 * or a leaning pane it stays square to the glass.
 */
export interface Overhang {
  /** Outward from the wall's outer face, m. */
  projection: number;
  /** Underside above the head of the opening, m. */
  aboveHead: number;
  /** How far it runs past the left and the right jamb, m. */
  left: number;
  right: number;
}

/** A flat upright shade beside the opening, square to the wall, starting at its outer face. */
export interface Fin {
  /** Outward from the wall's outer face, m. */
  projection: number;
  /** From the jamb sideways to the fin's near face, m. */
  offset: number;
  /** How far it runs above the head and below the sill, m. */
  above: number;
  below: number;
}

/** What casts shade on a rectangle of glass and what it reflects. */
export interface OpeningGeometry {
  /** Clear size of the opening in the wall, m. */
  width: number;
  height: number;
  /** Frame seen between the opening's edge and the glass, m. */
  frame: Sides;
  /** From the wall's outer face in to the outer face of the glass, m. */
  setBack: number;
  /** Depth of each reveal face measured out from the glass, m; equals `setBack` in a plain hole. */
  reveal: Sides;
  /** Solar reflectance of the reveal faces, 0 to 1. */
  revealReflectance: number;
  overhang?: Overhang;
  finLeft?: Fin;
  finRight?: Fin;
}

/** The plane an opening lies in. */
export interface Plane {
  /** Of the outward normal, degrees clockwise from north. */
  azimuth: number;
  /** From the horizontal, degrees: 90 a wall, under 90 facing up, over 90 leaning out. */
  tilt: number;
}

/** One compiled geometry: built once, asked for every sun position. */
export interface OpeningShade {
  glassWidth: number;
  glassHeight: number;
  /** m2. */
  glassArea: number;
  /**
   * Share of the glass the sun reaches, 0 to 1, exact for flat shades.
   * @param sx @param sy @param sz unit vector to the sun in plane coordinates, sz > 0
   */
  sunlit(sx: number, sy: number, sz: number): number;
  /**
   * The same for the top `share` of the glass (the part a blind lowered by `share` covers), as a
   * share of the whole glass: at most `share`.
   */
  sunlitTop(share: number, sx: number, sy: number, sz: number): number;
  /**
   * Direct sun reflected once, diffusely, by the reveal faces onto the glass: mean irradiance of
   * the glass for a direct normal irradiance of 1 W/m2.
   */
  bounce(sx: number, sy: number, sz: number): number;
}

/** Directions with their weights, as parallel arrays. */
export interface DirectionSet {
  /** Cosine of the incidence angle on the glass. */
  cosIncidence: Float64Array;
  /** Profile angle in the plane square to the glass, degrees, positive from above. */
  profileAngle: Float64Array;
  /** View factor of the direction's patch times the share of the glass that sees it. */
  weight: Float64Array;
}

/** What the glass sees of the diffuse sky and ground, averaged over its area. */
export interface DiffuseView {
  /** Weights add up to the sky view factor: 0.5 for an unobstructed wall. */
  sky: DirectionSet;
  /** Weights add up to the ground view factor. */
  ground: DirectionSet;
  /** Weights add up to the share of the horizon's brightening that reaches the glass, at most 1. */
  horizon: DirectionSet;
  /** Diffuse light that reaches the glass after one reflection in the reveal, per unit of sky radiosity. */
  bounceSky: number;
  /** The same per unit of ground radiosity. */
  bounceGround: number;
}
