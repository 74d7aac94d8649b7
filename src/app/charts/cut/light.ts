import { cutOffAngle } from '../../../../lib/blind/index.ts';
import { compileOpening, validateOpening } from '../../../../lib/opening/index.ts';
import { geometryOf } from '../../../../lib/project/index.ts';
import type { BlindPose } from './blindDrawing.ts';
import { blindPlace } from './blindDrawing.ts';
import type { Spot } from './frame.ts';
import { litAcross, litUp, stopDistance } from './rays.ts';
import type { SunOnPlane } from './rays.ts';
import { depth } from './shapes.ts';
import type { CutSubject } from './shapes.ts';

/** The sun in the two sections. */
export interface CutLight {
  /** Share of all the glass the sun reaches, blind aside, 0 to 1. */
  share: number;
  vertical: SectionLight;
  plan: SectionLight;
}

interface SectionLight {
  /** Sunlit parts of the glass. */
  lit: Spot[][];
  /** Rays from far out to where they end. */
  rays: Spot[][];
}

const RAYS = 5;
/** How far out rays begin, m along the ray. */
const FAR = 30;
/** Sunlit parts are drawn just before the glass, m. */
const BEFORE = 0.012;

/** Where the sun reaches the glass in both sections; undefined where the glass is impossible. */
export function cutLight(
  subject: CutSubject,
  sun: SunOnPlane,
  pose: BlindPose | undefined,
): CutLight | undefined {
  const { opening } = subject;
  const geometry = geometryOf(opening);
  if (validateOpening(geometry).length > 0) return undefined;
  const { width, height, frame } = geometry;
  const x = (frame.left + width - frame.right) / 2;
  const y = (frame.sill + height - frame.head) / 2;
  const [sx, sy, sz] = sun.vector;
  const at = (z: number) => depth(subject, z);
  const end = (px: number, py: number) =>
    Math.max(stopDistance(geometry, px, py, sun.vector), blindStop(subject, pose, sun, py));
  const points = (from: number, to: number) =>
    Array.from({ length: RAYS }, (_, i) => from + ((i + 0.5) / RAYS) * (to - from));

  return {
    share: compileOpening(geometry).sunlit(sx, sy, sz),
    vertical: {
      lit: litUp(geometry, x, sun.vector).map(([a, b]) => [
        [at(BEFORE), a],
        [at(BEFORE), b],
      ]),
      rays: points(frame.sill, height - frame.head).map((py) => {
        const t = end(x, py);
        return [
          [at(FAR * sz), py + FAR * sy],
          [at(t * sz), py + t * sy],
        ];
      }),
    },
    plan: {
      lit: litAcross(geometry, y, sun.vector).map(([a, b]) => [
        [a, at(BEFORE)],
        [b, at(BEFORE)],
      ]),
      rays: points(frame.left, width - frame.right).map((px) => {
        const t = end(px, y);
        return [
          [px + FAR * sx, at(FAR * sz)],
          [px + t * sx, at(t * sz)],
        ];
      }),
    },
  };
}

/** Distance along a ray to an external blind that stops it; 0 where none does. */
function blindStop(
  subject: CutSubject,
  pose: BlindPose | undefined,
  sun: SunOnPlane,
  y: number,
): number {
  if (!pose || pose.share <= 0 || pose.blind.position !== 'external') return 0;
  const { blind, share, angle } = pose;
  if (blind.kind === 'slats' && angle < cutOffAngle(blind, sun.profile)) return 0;
  const { height, frame } = subject.opening;
  const [, sy, sz] = sun.vector;
  const t = blindPlace(subject, blind) / sz;
  const top = height - frame.widths.head;
  const foot = top - share * (top - frame.widths.sill);
  const crossing = y + t * sy;
  return crossing >= foot && crossing <= height ? t : 0;
}
