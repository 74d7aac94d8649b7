import type { Sides } from '../opening/index.ts';
import { InputError, type Problem, problem } from '../problem/index.ts';
import { say } from './say.ts';

/** A frame as its data sheet and its installation detail give it. */
export interface FrameType {
  id: string;
  name: string;
  /** Frame and sash seen from outside, m. */
  widths: Sides;
  /** Part of the frame behind the wall's insulation, beyond `widths`, m. */
  hidden?: Sides;
  /** Thermal transmittance of the frame, ISO 10077-2, W/m2K. */
  Uf: number;
  /** Linear transmittance of the glass edge (spacer), W/mK. */
  psiSpacer: number;
  /** Linear transmittance of the joint of frame and wall, W/mK. */
  psiInstall: number;
  /** The wall's insulation covers part of the frame. */
  overInsulated?: boolean;
  /** Source or mark. */
  source: string;
}

export interface WindowUInput {
  /** Clear size between what covers or ends the frame, m (the opening's clear size). */
  width: number;
  height: number;
  /** Frame seen between that edge and the glass, m. */
  frame: Sides;
  /** Frame behind the wall's insulation on each side, m; adds to the window's size. */
  hidden?: Sides;
  /** Fields of glass side by side and one above the other, with the bar between them; 1 x 1. */
  fields?: { columns: number; rows: number; barWidth: number };
  /** W/m2K */
  Ug: number;
  Uf: number;
  /** W/mK */
  psiSpacer: number;
  /** W/mK, one for all sides or one each. */
  psiInstall: number | Sides;
}

export interface WindowU {
  /** m2 */
  glassArea: number;
  frameArea: number;
  area: number;
  /** Share of the window that is glass. */
  glassShare: number;
  /** Visible edge of all the glass, m. */
  glassEdge: number;
  /** Outer edge of the frame, m. */
  installEdge: number;
  /** W/m2K */
  Uw: number;
  UwInstalled: number;
}

const NONE: Sides = { head: 0, sill: 0, left: 0, right: 0 };

/**
 * Thermal transmittance of a whole window, ISO 10077-1:2017, eq. 1:
 * Uw = (Ag Ug + Af Uf + lg psi_g) / (Ag + Af), and installed (common practice in very low energy
 * housing): Uw + sum of l psi_install / Aw over the four sides.
 * @throws InputError where the frame leaves no glass
 */
export function windowU(input: WindowUInput): WindowU {
  const { width, height, frame, hidden = NONE, Ug, Uf, psiSpacer, psiInstall } = input;
  const { columns, rows, barWidth } = input.fields ?? { columns: 1, rows: 1, barWidth: 0 };
  const glassWidth = (width - frame.left - frame.right - (columns - 1) * barWidth) / columns;
  const glassHeight = (height - frame.head - frame.sill - (rows - 1) * barWidth) / rows;
  const problems = [
    ...noGlass('width', width, glassWidth),
    ...noGlass('height', height, glassHeight),
  ];
  if (problems.length > 0) throw new InputError(problems);

  const outerWidth = width + hidden.left + hidden.right;
  const outerHeight = height + hidden.head + hidden.sill;
  const area = outerWidth * outerHeight;
  const glassArea = columns * rows * glassWidth * glassHeight;
  const frameArea = area - glassArea;
  const glassEdge = columns * rows * 2 * (glassWidth + glassHeight);
  const psi = typeof psiInstall === 'number' ? allSides(psiInstall) : psiInstall;
  const Uw = (glassArea * Ug + frameArea * Uf + glassEdge * psiSpacer) / area;
  const installLoss = (psi.head + psi.sill) * outerWidth + (psi.left + psi.right) * outerHeight; // W/K
  return {
    glassArea,
    frameArea,
    area,
    glassShare: glassArea / area,
    glassEdge,
    installEdge: 2 * (outerWidth + outerHeight),
    Uw,
    UwInstalled: Uw + installLoss / area,
  };
}

function allSides(value: number): Sides {
  return { head: value, sill: value, left: value, right: value };
}

function noGlass(path: 'width' | 'height', size: number, glass: number): Problem[] {
  if (glass > 0) return [];
  const texts = {
    message: say('glazing.noGlass'),
    allowed: say(path === 'width' ? 'glazing.moreWidth' : 'glazing.moreHeight'),
    fix: say('glazing.sizeFix'),
  };
  return [problem(path, texts, size)];
}
