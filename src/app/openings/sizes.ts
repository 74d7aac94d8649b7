import type { ProjectOpening } from '../../../lib/project/index.ts';

/** Sizes of an opening that depend on one another: its hole, sash, set-back and reveal. */

/** Sets the size of the hole; a sash that no longer fits shrinks to what the frame leaves. */
export function setSize(opening: ProjectOpening, side: 'width' | 'height', value: number): void {
  opening[side] = value;
  const sash = opening.airing;
  if (!sash || sash[side] <= value) return;
  const { left, right, head, sill } = opening.frame.widths;
  const frame = side === 'width' ? left + right : head + sill;
  sash[side] = round(Math.max(0, value - frame));
}

/** Sets how far back the glass stands; reveal faces that end flush with the wall follow. */
export function setSetBack(opening: ProjectOpening, setBack: number): void {
  const { reveal } = opening;
  for (const side of ['head', 'sill', 'left', 'right'] as const) {
    if (Math.abs(reveal[side] - opening.setBack) < 1e-6) reveal[side] = setBack;
  }
  opening.setBack = setBack;
}

/** Sets the kind; a fixed pane has no sash. */
export function setKind(opening: ProjectOpening, kind: ProjectOpening['kind']): void {
  opening.kind = kind;
  if (kind === 'fixed') opening.airing = { kind: 'none', width: 0, height: 0, tiltAngle: 0 };
}

/** Sets how the sash opens; one that had no size gets what the frame leaves. */
export function setSash(
  opening: ProjectOpening,
  kind: NonNullable<ProjectOpening['airing']>['kind'],
): void {
  const { width, height, frame } = opening;
  const { left, right, head, sill } = frame.widths;
  const before = opening.airing ?? { kind: 'none', width: 0, height: 0, tiltAngle: 0 };
  const sash = { ...before, kind };
  if (kind !== 'none') {
    if (!(sash.width > 0)) sash.width = round(Math.max(0, width - left - right));
    if (!(sash.height > 0)) sash.height = round(Math.max(0, height - head - sill));
    if (kind === 'tilt' && !(sash.tiltAngle > 0)) sash.tiltAngle = USUAL_TILT;
  }
  opening.airing = sash;
}

/** Degrees a sash tilts (4 to 10 is usual: common practice). */
const USUAL_TILT = 8;

const round = (metres: number) => Number(metres.toFixed(4));
