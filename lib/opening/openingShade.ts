import { InputError } from '../problem/index.ts';
import { mirror, mirrorSides, Quadrant } from './quadrant.ts';
import { revealFaces } from './revealFace.ts';
import type { OpeningGeometry, OpeningShade } from './types.ts';
import { validateOpening } from './validate.ts';

/** A sun nearer than this to the plane of the glass counts as along it. */
const GRAZING = 1e-9;

/**
 * Prepares an opening for being asked about the sun many times.
 *
 * The glass is a rectangle in z = 0. The reveal's four faces stand square to it at the opening's
 * clear edges, from the glass out to their own depth, each exactly as long as the opening is wide or
 * high; four equal depths are a hole in a thick wall. The wall's outer face is at z = setBack, where
 * overhang and fins start. A reveal deeper than the set-back is a surround standing out of the wall,
 * a shallower one is cut back; there the faces alone shade, and the wall around the cut, which stands
 * on out to the set-back, is left out.
 *
 * The bounce splits the light on the two faces turned to the sun strip by strip (`seenLight`) and
 * weighs each with its mean view factor to the glass, frame gaps included; light that falls on the
 * frame is lost. Approximations: the lit part of a strip counts as seen like the whole strip, and
 * overhang and fins take from a face the share they take of its sunlit outline, wherever on it that
 * falls. Within 0.01 of the direct normal irradiance for plain holes.
 *
 * @throws InputError for an opening that cannot be built, see `validateOpening`
 */
export function compileOpening(geometry: OpeningGeometry): OpeningShade {
  const problems = validateOpening(geometry);
  if (problems.length) throw new InputError(problems);
  const { width, height, frame } = geometry;
  const glassWidth = width - frame.left - frame.right;
  const glassHeight = height - frame.sill - frame.head;
  const glassArea = glassWidth * glassHeight;
  const perArea = 1 / glassArea;
  const y0 = frame.sill;
  const y1 = height - frame.head;
  const reflected = geometry.revealReflectance * perArea;

  const faces = revealFaces(geometry);
  const quadrant = (flipX: boolean, flipY: boolean) =>
    new Quadrant(mirror(geometry, flipX, flipY), mirrorSides(faces, flipX, flipY));
  const fromRight = quadrant(false, false);
  const fromLeft = quadrant(true, false);
  const fromBelowRight = quadrant(false, true);
  const fromBelowLeft = quadrant(true, true);
  const quarterOf = (sx: number, sy: number) =>
    sy >= 0 ? (sx >= 0 ? fromRight : fromLeft) : sx >= 0 ? fromBelowRight : fromBelowLeft;

  /** Lit share of the glass between two heights. */
  function lit(from: number, to: number, sx: number, sy: number, sz: number): number {
    const a = Math.abs(sx) / sz;
    const b = Math.abs(sy) / sz;
    const quarter = quarterOf(sx, sy);
    return sy >= 0
      ? quarter.litGlass(from, to, a, b) * perArea
      : quarter.litGlass(height - to, height - from, a, b) * perArea;
  }

  return {
    glassWidth,
    glassHeight,
    glassArea,

    sunlit(sx, sy, sz) {
      return sz > GRAZING ? held(lit(y0, y1, sx, sy, sz), 1) : 0;
    },

    sunlitTop(share, sx, sy, sz) {
      if (!(sz > GRAZING && share > 0)) return 0;
      const most = share < 1 ? share : 1;
      return held(lit(y1 - most * glassHeight, y1, sx, sy, sz), most);
    },

    bounce(sx, sy, sz) {
      if (!(sz > GRAZING && reflected > 0)) return 0;
      const across = Math.abs(sx);
      const up = Math.abs(sy);
      const a = across / sz;
      const b = up / sz;
      const quarter = quarterOf(sx, sy);
      const light = across * quarter.fromJamb(a, b) + up * quarter.fromSill(a, b);
      return light > 0 ? light * reflected : 0;
    },
  };
}

/** Rounding may leave a share a hair outside its bounds. */
function held(share: number, most: number): number {
  return share < 0 ? 0 : share > most ? most : share;
}
