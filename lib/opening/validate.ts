import { showValue } from '../problem/index.ts';
import type { Problem } from '../problem/index.ts';
import type { OpeningGeometry } from './types.ts';

const SIDES = ['head', 'sill', 'left', 'right'] as const;
const TAPE = 'Measure it with a tape or read it on the drawing, in metres.';

/** Least glass left between the frame's members, m. */
const LEAST_GLASS = 0.01;

/**
 * What makes an opening impossible to build; an empty list if nothing does. Ranges are generous: they
 * catch slips of unit and sign, not odd designs.
 * @param path put before the field names, such as `openings[2].`
 */
export function validateOpening(g: OpeningGeometry, path = ''): Problem[] {
  const problems: Problem[] = [];
  const check = (name: string, value: unknown, min: number, max: number, unit = 'm') => {
    if (typeof value === 'number' && value >= min && value <= max) return;
    problems.push({
      path: path + name,
      message: typeof value === 'number' ? 'is out of range' : 'must be a number',
      value: typeof value === 'number' ? String(value) : showValue(value),
      allowed: `${min} to ${max}${unit && ` ${unit}`}`,
      fix: unit ? TAPE : 'Give a share between 0 and 1.',
    });
  };

  check('width', g.width, 0.1, 10);
  check('height', g.height, 0.1, 10);
  check('setBack', g.setBack, 0, 2);
  for (const side of SIDES) check(`frame.${side}`, g.frame[side], 0, 2);
  for (const side of SIDES) check(`reveal.${side}`, g.reveal[side], 0, 2);
  check('revealReflectance', g.revealReflectance, 0, 1, '');
  if (g.overhang) {
    check('overhang.projection', g.overhang.projection, 0, 10);
    check('overhang.aboveHead', g.overhang.aboveHead, 0, 10);
    check('overhang.left', g.overhang.left, 0, 50);
    check('overhang.right', g.overhang.right, 0, 50);
  }
  for (const name of ['finLeft', 'finRight'] as const) {
    const fin = g[name];
    if (!fin) continue;
    check(`${name}.projection`, fin.projection, 0, 10);
    check(`${name}.offset`, fin.offset, 0, 10);
    check(`${name}.above`, fin.above, 0, 50);
    check(`${name}.below`, fin.below, 0, 50);
  }
  if (problems.length) return problems;

  const noGlass = (name: string, sides: string, sum: number, size: number, of: string) => {
    if (size - sum >= LEAST_GLASS) return;
    problems.push({
      path: path + name,
      message: `${sides} together leave no glass in the opening's ${of}`,
      value: `${Number(sum.toFixed(4))} m`,
      allowed: `up to ${Number((size - LEAST_GLASS).toFixed(4))} m together`,
      fix: `Make the frame narrower or the opening larger.`,
    });
  };
  const { frame } = g;
  noGlass('frame.left', 'left and right', frame.left + frame.right, g.width, 'width');
  noGlass('frame.head', 'head and sill', frame.head + frame.sill, g.height, 'height');
  return problems;
}
