import type { OpeningGeometry } from './types.ts';
import { perpendicularExchange } from './viewFactor.ts';

/** One reveal face and how the glass sees it, strip by strip outwards from the glass. */
export interface RevealFace {
  depth: number;
  /** Table steps a metre of depth. */
  perMetre: number;
  /** Integral of f(z) dz from the glass out, f the mean view factor of a strip to the glass. */
  m0: Float64Array;
  /** Integral of z f(z) dz. */
  m1: Float64Array;
}

// Straight lines between 32 strips leave an error under 0.1 % of the bounce.
const STRIPS = 32;

/** Tables of the four faces of an opening. */
export function revealFaces(g: OpeningGeometry) {
  const { width, height, frame, reveal } = g;
  const x0 = frame.left;
  const x1 = width - frame.right;
  const y0 = frame.sill;
  const y1 = height - frame.head;
  return {
    left: revealFace(reveal.left, height, y0, y1, x0, x1),
    right: revealFace(reveal.right, height, y0, y1, width - x1, width - x0),
    sill: revealFace(reveal.sill, width, x0, x1, y0, y1),
    head: revealFace(reveal.head, width, x0, x1, height - y1, height - y0),
  };
}

/**
 * @param along length of the face @param a0 @param a1 the glass along that length
 * @param o0 @param o1 the glass by distance from the face's plane
 */
function revealFace(
  depth: number,
  along: number,
  a0: number,
  a1: number,
  o0: number,
  o1: number,
): RevealFace {
  const m0 = new Float64Array(STRIPS + 1);
  const m1 = new Float64Array(STRIPS + 1);
  const dz = depth / STRIPS;
  let area = 0; // under m0, by trapezoids
  for (let i = 1; i <= STRIPS && depth > 0; i++) {
    m0[i] = perpendicularExchange(0, i * dz, 0, along, a0, a1, o0, o1) / along;
    area += ((m0[i] + m0[i - 1]) / 2) * dz;
    m1[i] = i * dz * m0[i] - area;
  }
  return { depth, perMetre: depth > 0 ? STRIPS / depth : 0, m0, m1 };
}

/**
 * Lit length of a face times its strips' view factor to the glass, integrated over its depth, m2. At
 * depth z the face beside it shades one end of a strip, the opposite face the rest of it.
 *
 * For four equal depths d this splits the light through the outer opening into glass, jamb
 * |dx| (h T - |dy| T^2 / 2) and sill |dy| (w T - |dx| T^2 / 2), with dx = a d, dy = b d and
 * T = min(1, w / |dx|, h / |dy|).
 * @param opposite depth of the face across the opening @param beside depth of the face that shades
 * its end @param across distance to the opposite face @param along length of the face
 * @param slope rise of the ray towards the opposite face a metre out @param slopeAlong along the face
 */
export function seenLight(
  face: RevealFace,
  opposite: number,
  beside: number,
  across: number,
  along: number,
  slope: number,
  slopeAlong: number,
): number {
  const { depth, m0, m1 } = face;
  if (depth === 0 || slope < 1e-12) return 0;
  const whole = m0[STRIPS];
  const reach = across / slope; // how far out the ray passes the plane of the opposite face
  const spread = Math.min(reach, along / slopeAlong); // how far out the end face can still shade
  const rest = along - slopeAlong * spread; // what is left of a strip for the opposite face
  const from = clamp(beside - spread, 0, depth);
  const to = clamp(beside, 0, depth);
  const m0From = integral(face, m0, from);
  const m0To = to < depth ? integral(face, m0, to) : whole;
  const m1To = to < depth ? integral(face, m1, to) : m1[STRIPS];
  const ends = spread * m0From + beside * (m0To - m0From) - (m1To - integral(face, m1, from));
  const middle = rest > 0 ? rest * integral(face, m0, clamp(opposite - reach, 0, depth)) : 0;
  return along * whole - slopeAlong * ends - middle;
}

function clamp(v: number, least: number, most: number): number {
  return v < least ? least : v > most ? most : v;
}

function integral(face: RevealFace, table: Float64Array, z: number): number {
  const at = z * face.perMetre;
  const i = Math.min(Math.floor(at), STRIPS - 1);
  return table[i] + (table[i + 1] - table[i]) * (at - i);
}
