import { problem } from '../problem/index.ts';
import type { Problem } from '../problem/index.ts';
import { rangeText, say } from './say.ts';
import type { SentenceKey } from './say.ts';
import type { OpeningGeometry } from './types.ts';

const SIDES = ['head', 'sill', 'left', 'right'] as const;

/** Least glass left between the frame's members, m. */
const LEAST_GLASS = 0.01;

/**
 * What makes an opening impossible to build; an empty list if nothing does. Ranges are generous: they
 * catch slips of unit and sign, not odd designs.
 * @param path put before the field names, such as `openings[2].`
 */
export function validateOpening(g: OpeningGeometry, path = ''): Problem[] {
  const problems: Problem[] = [];
  const check = (name: string, value: unknown, min: number, max: number, share = false) => {
    if (typeof value === 'number' && value >= min && value <= max) return;
    const texts = {
      message: say(typeof value === 'number' ? 'opening.outOfRange' : 'opening.notNumber'),
      allowed: share ? rangeText(min, max) : rangeText(min, max, 'm'),
      fix: say(share ? 'opening.share' : 'opening.tape'),
    };
    problems.push(problem(path + name, texts, value));
  };

  check('width', g.width, 0.1, 10);
  check('height', g.height, 0.1, 10);
  check('setBack', g.setBack, 0, 2);
  for (const side of SIDES) check(`frame.${side}`, g.frame[side], 0, 2);
  for (const side of SIDES) check(`reveal.${side}`, g.reveal[side], 0, 2);
  check('revealReflectance', g.revealReflectance, 0, 1, true);
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

  const noGlass = (name: string, key: SentenceKey, sum: number, size: number) => {
    if (size - sum >= LEAST_GLASS) return;
    problems.push(
      problem(path + name, {
        message: say(`opening.${key}`),
        value: say('opening.sum', { sum: Number(sum.toFixed(4)) }),
        allowed: say('opening.mostTogether', { most: Number((size - LEAST_GLASS).toFixed(4)) }),
        fix: say('opening.narrower'),
      }),
    );
  };
  const { frame } = g;
  noGlass('frame.left', 'noGlassWidth', frame.left + frame.right, g.width);
  noGlass('frame.head', 'noGlassHeight', frame.head + frame.sill, g.height);
  return problems;
}
