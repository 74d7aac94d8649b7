import { cutFrame, fitScale } from './frame.ts';
import type { CutFrame, Spot } from './frame.ts';

/** Room for figures round the sections, px. */
const PAD = { x: 58, y: 44 };
/** Between a handle and what it measures, px: two handles apart are two targets. */
export const HANDLE_GAP = 26;
/** Least width for two pictures side by side, and between them, px. */
const BESIDE_FROM = 460;
const BETWEEN = 12;
/** A plan drawn smaller than this goes under the section, px to the metre. */
const LEAST_SCALE = 90;
const HEIGHT = 430;

/** The two pictures of a wall cut. */
export interface CutLayout {
  vertical: CutFrame;
  plan: CutFrame;
  /** Side by side rather than one under the other. */
  beside: boolean;
}

/** Lays both sections into a width: side by side where neither gets too small for its handles. */
export function layoutCut(
  vertical: readonly Spot[],
  lean: number,
  plan: readonly Spot[],
  width: number,
): CutLayout {
  const scaleIn = (corners: readonly Spot[], degrees: number, w: number, h: number) =>
    Math.max(8, fitScale(corners, degrees, Math.max(40, w - 2 * PAD.x), h - 2 * PAD.y));
  const lay = (corners: readonly Spot[], degrees: number, w: number, h: number) =>
    cutFrame(corners, degrees, scaleIn(corners, degrees, w, h), w, h);

  const [left, right] = [0.44, 0.56].map((share) => Math.floor((width - BETWEEN) * share));
  if (width >= BESIDE_FROM && scaleIn(plan, 0, right, HEIGHT) >= LEAST_SCALE) {
    return {
      vertical: lay(vertical, lean, left, HEIGHT),
      plan: lay(plan, 0, right, HEIGHT),
      beside: true,
    };
  }
  // As high as a plan of this width needs.
  const across = plan.map(([u]) => u);
  const deep = plan.map(([, v]) => v);
  const ratio =
    (Math.max(...deep) - Math.min(...deep)) / (Math.max(...across) - Math.min(...across));
  const planHeight = Math.min(300, Math.max(170, (width - 2 * PAD.x) * ratio + 2 * PAD.y));
  return {
    vertical: lay(vertical, lean, width, 360),
    plan: lay(plan, 0, width, Math.round(planHeight)),
    beside: false,
  };
}
