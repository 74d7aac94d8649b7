import { STANDING_ANGLE, trackingAngle } from '../../../../lib/blind/index.ts';
import type { Blind } from '../../../../lib/blind/index.ts';
import type { ProjectOpening } from '../../../../lib/project/index.ts';
import type { RuleAction } from '../../../../lib/schedule/index.ts';
import { dayOfYear } from '../../../../lib/time/index.ts';
import type { Spot } from './frame.ts';
import { depth, innerDepth } from './shapes.ts';
import type { CutSubject } from './shapes.ts';

/** A blind as it stands at an hour. */
export interface BlindPose {
  blind: Blind;
  /** Part of the glass height covered, 0 raised to 1. */
  share: number;
  /** Of slats: 0 flat, positive turns the outer edge down, degrees. */
  angle: number;
}

/** How a blind stands under an action, the sun at this profile angle (undefined: not in front). */
export function blindPose(
  opening: ProjectOpening,
  blind: Blind,
  action: RuleAction,
  profile: number | undefined,
): BlindPose {
  const slats = blind.kind === 'slats';
  const share = action.kind === 'raise' ? 0 : (action.share ?? 1);
  const angle = slats ? slatAngle(opening, blind, action, profile) : 0;
  return { blind, share, angle };
}

function slatAngle(
  opening: ProjectOpening,
  blind: Extract<Blind, { kind: 'slats' }>,
  action: RuleAction,
  profile: number | undefined,
): number {
  if (action.kind === 'track') return trackingAngle(blind, profile ?? 0);
  const wish =
    action.kind === 'tilt' ? action.angle : (opening.blind?.standingAngle ?? STANDING_ANGLE);
  return Math.max(blind.angleMin, Math.min(blind.angleMax, wish));
}

/** Depth of a blind in front of the glass (negative behind it), as drawn, m. */
export function blindPlace(subject: CutSubject, blind: Blind): number {
  const half = blind.kind === 'slats' ? blind.slatWidth / 2 : 0.02;
  if (blind.position === 'between') return -0.03;
  if (blind.position === 'internal') return -innerDepth(subject) - 0.02 - half;
  return 0.05 + half;
}

/** Lines of a drawing, and whether they are solid. */
export interface BlindDrawing {
  lines: Spot[][];
  /** The raised package or box at the head. */
  box: Spot[];
}

/** Least distance of slats in the picture, m of the section. */
const BOX = 0.045;

/**
 * A blind in the vertical section: slats at their angle, drawn larger where they would run
 * together, or the line of a fabric or shutter.
 * @param least distance from slat to slat that can be told apart, m
 */
export function blindUp(subject: CutSubject, pose: BlindPose, least: number): BlindDrawing {
  const { opening } = subject;
  const { blind, share, angle } = pose;
  const z = blindPlace(subject, blind);
  const glassTop = opening.height - opening.frame.widths.head;
  const glassHeight = glassTop - opening.frame.widths.sill;
  const top = blind.position === 'external' ? opening.height : glassTop;
  const half = blind.position === 'between' ? 0.012 : 0.03;
  const at = (dz: number, y: number): Spot => [depth(subject, z + dz), y];
  const box = [at(-half, top), at(half, top), at(half, top - BOX), at(-half, top - BOX)];
  if (share <= 0) return { lines: [], box };
  const foot = glassTop - share * glassHeight;
  if (blind.kind !== 'slats') return { lines: [[at(0, top - BOX), at(0, foot)]], box };

  const grow = Math.max(1, least / blind.slatSpacing);
  const width = Math.min(blind.slatWidth * grow, blind.position === 'between' ? 0.05 : 0.12);
  const count = Math.max(1, Math.floor((top - BOX - foot) / (blind.slatSpacing * grow)));
  const step = (top - BOX - foot) / count;
  const a = (angle * Math.PI) / 180;
  const [out, down] = [(Math.cos(a) * width) / 2, (Math.sin(a) * width) / 2];
  const lines = Array.from({ length: count }, (_, i) => {
    const y = top - BOX - (i + 0.5) * step;
    return [at(out, y - down), at(-out, y + down)];
  });
  return { lines, box };
}

/** A blind in the plan: a line across, where it hangs down as far as the middle. */
export function blindAcross(subject: CutSubject, pose: BlindPose): Spot[] | undefined {
  if (pose.share < 0.5) return undefined;
  const { opening } = subject;
  const d = depth(subject, blindPlace(subject, pose.blind));
  const inset = pose.blind.position === 'external' ? 0.01 : opening.frame.widths.left;
  const other = pose.blind.position === 'external' ? 0.01 : opening.frame.widths.right;
  return [
    [inset, d],
    [opening.width - other, d],
  ];
}

/** Depth of an insect screen in front of the glass, as drawn, m. */
const SCREEN = 0.035;

export function screenUp(subject: CutSubject): Spot[] {
  const { height, frame } = subject.opening;
  const d = depth(subject, SCREEN);
  return [
    [d, frame.widths.sill / 2],
    [d, height - frame.widths.head / 2],
  ];
}

export function screenAcross(subject: CutSubject, share: number): Spot[] {
  const { width, frame } = subject.opening;
  const d = depth(subject, SCREEN);
  const from = frame.widths.left / 2;
  const to = width - frame.widths.right / 2;
  return [
    [from, d],
    [from + (to - from) * share, d],
  ];
}

/** Whether a day of the typical year lies in a season of `MM-DD` dates; it may run over new year. */
export function inSeason(day: number, season: { from: string; to: string }): boolean {
  const dayOf = (text: string) => {
    const [month, date] = text.split('-').map(Number);
    return dayOfYear(month, date);
  };
  const from = dayOf(season.from);
  const to = dayOf(season.to);
  return from <= to ? day >= from && day <= to : day >= from || day <= to;
}
