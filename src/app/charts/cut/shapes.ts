import type { ProjectOpening } from '../../../../lib/project/index.ts';
import type { Spot } from './frame.ts';

/**
 * Sections through an opening, in metres. The vertical section has the outdoors on its left: along
 * it runs the depth from the wall's outer face inward, up it the plane. The plan has the outdoors
 * at its foot: along it runs the width to the right as seen from outside.
 */

export type PartName = 'wall' | 'frame' | 'hidden' | 'overhang' | 'fin' | 'beyond' | 'floor';

export interface Part {
  name: PartName;
  spots: Spot[];
  /** A line rather than an area. */
  open?: boolean;
}

/** What the sections need of the opening and of its wall, m. */
export interface CutSubject {
  opening: ProjectOpening;
  thickness: number;
  panes: number;
  /** Slats or fabric between the panes need a wider first gap. */
  wideGap: boolean;
}

/** Wall shown round the opening, m. */
const WALL_SHOWN = 0.32;
/** Depth of frames, thickness of overhangs and fins and of reveal surrounds as drawn, m. */
const FRAME_OUT = 0.02;
const FRAME_IN = 0.08;
export const PLATE = 0.05;
const SURROUND = 0.04;
/** Outdoors and room shown before and behind the wall, m. */
const OUTSIDE = 0.32;
const INSIDE = 0.24;

/** Depths of panes behind the outer face of the glass, as drawn, m. */
export function paneDepths({ panes, wideGap }: CutSubject): number[] {
  const depths = [0];
  for (let i = 1; i < panes; i++) depths.push(depths[i - 1] + (wideGap && i === 1 ? 0.06 : 0.02));
  return depths;
}

/** Depth of the room-side face of frame and glass, m behind the outer face of the glass. */
export function innerDepth(subject: CutSubject): number {
  return Math.max(FRAME_IN, paneDepths(subject).at(-1)! + 0.02);
}

/** From the depth in front of the glass to the depth in the drawing, outdoors negative. */
export const depth = ({ opening }: CutSubject, z: number): number => opening.setBack - z;

/** What is drawn of a section and which part of it is in view. */
export interface Section {
  parts: Part[];
  corners: Spot[];
}

type Side = 'head' | 'sill' | 'left' | 'right';

/**
 * Wall beside the opening: from the edge of the hole at `edge`, away from it, in the direction
 * `away`. A reveal deeper than the set-back stands out of the wall, a shallower one is cut back.
 */
function wallPart(
  subject: CutSubject,
  side: Side,
  edge: number,
  away: number,
  shown: number,
  spot: (depth: number, along: number) => Spot,
): Part {
  const { opening, thickness } = subject;
  const face = depth(subject, opening.reveal[side]);
  const cut =
    face > 0
      ? [spot(face, edge), spot(0, edge + away * Math.min(face, shown * 0.9))]
      : face < 0
        ? [spot(face, edge), spot(face, edge + away * SURROUND), spot(0, edge + away * SURROUND)]
        : [spot(0, edge)];
  const end = edge + away * shown;
  return {
    name: 'wall',
    spots: [spot(thickness, edge), ...cut, spot(0, end), spot(thickness, end)],
  };
}

/** One member of the frame, and what the wall's insulation hides of it. */
function framePart(
  subject: CutSubject,
  side: Side,
  edge: number,
  away: number,
  spot: (depth: number, along: number) => Spot,
): Part[] {
  const { frame } = subject.opening;
  const from = depth(subject, FRAME_OUT);
  const to = depth(subject, -innerDepth(subject));
  const bar = (name: PartName, a: number, b: number): Part => ({
    name,
    spots: [spot(from, a), spot(from, b), spot(to, b), spot(to, a)],
  });
  const hidden = frame.hidden?.[side] ?? 0;
  return [
    ...(hidden > 0 ? [bar('hidden', edge, edge + away * hidden)] : []),
    bar('frame', edge, edge - away * frame.widths[side]),
  ];
}

function rectangle(name: PartName, u0: number, u1: number, v0: number, v1: number): Part {
  return {
    name,
    spots: [
      [u0, v0],
      [u1, v0],
      [u1, v1],
      [u0, v1],
    ],
  };
}

/** Wall shown under the sill, m. */
export function wallBelow({ sillHeight }: ProjectOpening): number {
  return Math.min(Math.max(sillHeight, 0.12), WALL_SHOWN);
}

/** The vertical section through the middle of the opening. */
export function verticalSection(subject: CutSubject): Section {
  const { opening, thickness } = subject;
  const { height, sillHeight, overhang, finLeft, finRight } = opening;
  const above = Math.max(WALL_SHOWN, overhang ? overhang.aboveHead + 0.16 : 0);
  const below = wallBelow(opening);
  const spot = (d: number, y: number): Spot => [d, y];
  const parts: Part[] = [
    wallPart(subject, 'head', height, 1, above, spot),
    wallPart(subject, 'sill', 0, -1, below, spot),
    ...framePart(subject, 'head', height, 1, spot),
    ...framePart(subject, 'sill', 0, -1, spot),
  ];
  const fin = finLeft ?? finRight;
  if (fin && fin.projection > 0) {
    const low = Math.max(-below, -fin.below);
    const high = Math.min(height + above, height + fin.above);
    parts.unshift(rectangle('beyond', -fin.projection, 0, low, high));
  }
  if (overhang && overhang.projection > 0) {
    const at = height + overhang.aboveHead;
    parts.push(rectangle('overhang', -overhang.projection, 0, at, at + PLATE));
  }
  if (sillHeight <= below) {
    const floor = -sillHeight;
    const line: Spot[] = [
      [depth(subject, -innerDepth(subject)), floor],
      [thickness + INSIDE, floor],
    ];
    parts.push({ name: 'floor', spots: line, open: true });
  }
  const out = Math.max(OUTSIDE, (overhang?.projection ?? 0) + 0.2, (fin?.projection ?? 0) + 0.12);
  return {
    parts,
    corners: [
      [-out, -below - 0.16],
      [-out, height + above],
      [thickness + INSIDE, -below - 0.16],
      [thickness + INSIDE, height + above],
    ],
  };
}

/** The plan through the middle of the opening, seen from above. */
export function planSection(subject: CutSubject): Section {
  const { opening, thickness } = subject;
  const { width, overhang, finLeft, finRight } = opening;
  const beside = (fin: typeof finLeft) => Math.max(WALL_SHOWN, fin ? fin.offset + 0.16 : 0);
  const left = beside(finLeft);
  const right = beside(finRight);
  const spot = (d: number, x: number): Spot => [x, d];
  const parts: Part[] = [
    wallPart(subject, 'left', 0, -1, left, spot),
    wallPart(subject, 'right', width, 1, right, spot),
    ...framePart(subject, 'left', 0, -1, spot),
    ...framePart(subject, 'right', width, 1, spot),
  ];
  if (overhang && overhang.projection > 0) {
    const from = Math.max(-left, -overhang.left);
    const to = Math.min(width + right, width + overhang.right);
    parts.unshift(rectangle('beyond', from, to, -overhang.projection, 0));
  }
  if (finLeft && finLeft.projection > 0) {
    const { offset, projection } = finLeft;
    parts.push(rectangle('fin', -offset - PLATE, -offset, -projection, 0));
  }
  if (finRight && finRight.projection > 0) {
    const at = width + finRight.offset;
    parts.push(rectangle('fin', at, at + PLATE, -finRight.projection, 0));
  }
  const fins = Math.max(finLeft?.projection ?? 0, finRight?.projection ?? 0);
  const out = Math.max(OUTSIDE, fins + 0.2, (overhang?.projection ?? 0) + 0.1);
  const inside = thickness + INSIDE;
  return {
    parts,
    corners: [
      [-left, -out],
      [-left, inside],
      [width + right, -out],
      [width + right, inside],
    ],
  };
}
