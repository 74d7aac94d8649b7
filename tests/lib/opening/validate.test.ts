import { describe, expect, it } from 'vitest';
import { InputError } from '../../../lib/problem/index.ts';
import { compileOpening, validateOpening } from '../../../lib/opening/index.ts';
import type { OpeningGeometry } from '../../../lib/opening/index.ts';
import { bareOpening, randomFrom, randomOpening } from './rays.ts';

const open = bareOpening(1.2, 1.5);

describe('validateOpening', () => {
  it('has nothing to say about openings as houses have them', () => {
    const random = randomFrom(3);
    for (let k = 0; k < 50; k++) expect(validateOpening(randomOpening(random))).toEqual([]);
  });

  const wrong: [string, OpeningGeometry, string[]][] = [
    ['a width in millimetres', { ...open, width: 1200 }, ['width']],
    ['no height', { ...open, height: 0 }, ['height']],
    ['a negative set-back', { ...open, setBack: -0.1 }, ['setBack']],
    ['a negative reveal', { ...open, reveal: { ...open.reveal, sill: -0.2 } }, ['reveal.sill']],
    ['a reveal 3 m deep', { ...open, reveal: { ...open.reveal, left: 3 } }, ['reveal.left']],
    ['a reflectance in per cent', { ...open, revealReflectance: 50 }, ['revealReflectance']],
    ['a number that is none', { ...open, width: NaN }, ['width']],
    [
      'a frame as wide as the opening',
      { ...open, frame: { ...open.frame, left: 0.6, right: 0.6 } },
      ['frame.left'],
    ],
    [
      'a frame as high as the opening',
      { ...open, frame: { ...open.frame, head: 0.8, sill: 0.8 } },
      ['frame.head'],
    ],
    [
      'an overhang with wrong signs',
      { ...open, overhang: { projection: -1, aboveHead: -0.1, left: 0, right: -1 } },
      ['overhang.projection', 'overhang.aboveHead', 'overhang.right'],
    ],
    [
      'a fin in the opening',
      { ...open, finRight: { projection: 0.5, offset: -0.2, above: 0, below: 0 } },
      ['finRight.offset'],
    ],
    ['text for a number', { ...open, width: '1.2' as unknown as number }, ['width']],
  ];

  it.each(wrong)('names %s', (_, geometry, paths) => {
    const problems = validateOpening(geometry);
    expect(problems.map((p) => p.path)).toEqual(paths);
    for (const p of problems) {
      expect(p.allowed).toMatch(/\d/);
      expect(p.fix).toMatch(/\.$/);
      expect(p.value).toBeTruthy();
    }
    expect(() => compileOpening(geometry)).toThrow(InputError);
  });

  it('puts a path before the names', () => {
    const [problem] = validateOpening({ ...open, height: 40 }, 'openings[2].');
    expect(problem.path).toBe('openings[2].height');
  });
});
