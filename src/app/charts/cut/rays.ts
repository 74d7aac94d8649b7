import type { OpeningGeometry } from '../../../../lib/opening/index.ts';
import { planeAxes, toPlane } from '../../../../lib/sun/index.ts';

const RAD = Math.PI / 180;

/**
 * Sun rays for the drawing, in plane coordinates of the opening (lib/opening): x to the right as
 * seen from outside, y up the plane, z outward, origin in the lower left corner, glass in z = 0.
 */

/** Unit vector to the sun. */
export type SunVector = readonly [number, number, number];

/** The sun over a plane; undefined where it is down or behind. */
export interface SunOnPlane {
  vector: SunVector;
  /** Up the plane, square to it: tan p = sy / sz, degrees; positive from above. */
  profile: number;
  /** Sideways, square to the plane, degrees; positive from the right as seen from outside. */
  sideways: number;
}

export function sunOnPlane(
  sun: { azimuth: number; altitude: number },
  plane: { azimuth: number; tilt: number },
): SunOnPlane | undefined {
  if (sun.altitude <= 0) return undefined;
  const vector = toPlane(planeAxes(plane.azimuth, plane.tilt), sun.azimuth, sun.altitude);
  const [sx, sy, sz] = vector;
  if (sz <= 1e-6) return undefined;
  return { vector, profile: Math.atan2(sy, sz) / RAD, sideways: Math.atan2(sx, sz) / RAD };
}

/**
 * Distance along the ray from a point of the glass to what stops it, m: to the outermost plate it
 * meets; 0 where the sun reaches the point.
 */
export function stopDistance(
  geometry: OpeningGeometry,
  x: number,
  y: number,
  [sx, sy, sz]: SunVector,
): number {
  const { width, height, setBack, reveal, overhang, finLeft, finRight } = geometry;
  let farthest = 0;
  /** A plate square to the glass, at a distance along the ray, between two depths and two ends. */
  const plate = (t: number, z0: number, z1: number, place: number, from: number, to: number) => {
    const z = t * sz;
    if (t > 0 && z >= z0 && z <= z1 && place >= from && place <= to) {
      farthest = Math.max(farthest, t);
    }
  };
  const level = (at: number, z0: number, z1: number, from: number, to: number) => {
    const t = (at - y) / sy;
    plate(t, z0, z1, x + t * sx, from, to);
  };
  const upright = (at: number, z0: number, z1: number, from: number, to: number) => {
    const t = (at - x) / sx;
    plate(t, z0, z1, y + t * sy, from, to);
  };
  if (sy > 0) {
    level(height, 0, reveal.head, 0, width);
    if (overhang) {
      const out = setBack + overhang.projection;
      level(height + overhang.aboveHead, setBack, out, -overhang.left, width + overhang.right);
    }
  } else if (sy < 0) level(0, 0, reveal.sill, 0, width);
  const fin = (f: typeof finLeft, at: number) => {
    if (f) upright(at, setBack, setBack + f.projection, -f.below, height + f.above);
  };
  if (sx > 0) {
    upright(width, 0, reveal.right, 0, height);
    fin(finRight, width + (finRight?.offset ?? 0));
  } else if (sx < 0) {
    upright(0, 0, reveal.left, 0, height);
    fin(finLeft, -(finLeft?.offset ?? 0));
  }
  return farthest;
}

/** From where to where along a line the sun reaches, m. */
export type Span = [number, number];

/** Points looked at along a line. */
const SAMPLES = 400;

/** Sunlit parts of an upright line of the glass at x, by height. */
export function litUp(geometry: OpeningGeometry, x: number, sun: SunVector): Span[] {
  const { height, frame } = geometry;
  return spans(frame.sill, height - frame.head, (y) => stopDistance(geometry, x, y, sun) === 0);
}

/** Sunlit parts of a level line of the glass at y, from left to right. */
export function litAcross(geometry: OpeningGeometry, y: number, sun: SunVector): Span[] {
  const { width, frame } = geometry;
  return spans(frame.left, width - frame.right, (x) => stopDistance(geometry, x, y, sun) === 0);
}

function spans(from: number, to: number, lit: (at: number) => boolean): Span[] {
  const found: Span[] = [];
  const step = (to - from) / SAMPLES;
  let open = false;
  for (let i = 0; i < SAMPLES; i++) {
    const on = lit(from + (i + 0.5) * step);
    if (on && open) found.at(-1)![1] = from + (i + 1) * step;
    else if (on) found.push([from + i * step, from + (i + 1) * step]);
    open = on;
  }
  return found;
}
