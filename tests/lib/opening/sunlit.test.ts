import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileOpening } from '../../../lib/opening/index.ts';
import type { OpeningGeometry } from '../../../lib/opening/index.ts';
import { bareOpening, randomFrom, randomOpening, randomSun, sunlitByRays } from './rays.ts';
import { mirrored, openings, suns } from './arbitraries.ts';

describe('sunlit share against rays cast at rectangles in space', () => {
  // 200 x 200 jittered rays: a shadow's edge crosses about 400 cells, each wrong by up to half a cell
  // at random, so the error is near 0.5 sqrt(400) / 40,000 = 0.0003; 0.002 leaves seven times that.
  const tolerance = 0.002;

  it('agrees on 200 random openings and suns, above and below', () => {
    const random = randomFrom(11);
    let partly = 0;
    for (let k = 0; k < 200; k++) {
      const g = randomOpening(random);
      const sun = randomSun(random);
      const share = compileOpening(g).sunlit(...sun);
      if (share > 0.02 && share < 0.98) partly++;
      const cast = sunlitByRays(g, sun, 200, random);
      expect(Math.abs(share - cast), JSON.stringify({ g, sun, share, cast })).toBeLessThan(
        tolerance,
      );
    }
    expect(partly).toBeGreaterThan(80); // the sample is not made of all-or-nothing cases
  });

  it('agrees on the top part of the glass', () => {
    const random = randomFrom(12);
    for (let k = 0; k < 100; k++) {
      const g = randomOpening(random);
      const sun = randomSun(random);
      const part = 0.05 + 0.9 * random();
      const share = compileOpening(g).sunlitTop(part, ...sun);
      const cast = sunlitByRays(g, sun, 200, random, part);
      expect(Math.abs(share - cast), JSON.stringify({ g, sun, share, cast })).toBeLessThan(
        tolerance,
      );
    }
  });
});

describe('sunlit share worked by hand', () => {
  const sun = (a: number, b: number): [number, number, number] => {
    const z = 1 / Math.hypot(a, b, 1);
    return [a * z, b * z, z];
  };

  it('an endless overhang shades projection x tan(profile angle) less its height above the head', () => {
    // 50 m of run on each side is endless for a sun less than 85 degrees off to the side.
    const g: OpeningGeometry = {
      ...bareOpening(1, 2),
      overhang: { projection: 0.8, aboveHead: 0.3, left: 50, right: 50 },
    };
    for (const profile of [10, 30, 45, 60, 70]) {
      const tan = Math.tan((profile * Math.PI) / 180);
      const depth = Math.min(2, Math.max(0, 0.8 * tan - 0.3));
      expect(compileOpening(g).sunlit(...sun(0.7, tan))).toBeCloseTo(1 - depth / 2, 12);
    }
  });

  it('a plain hole leaves the glass that its outer edge, moved along the ray, still covers', () => {
    const d = 0.4;
    const g: OpeningGeometry = {
      width: 1.2,
      height: 1.5,
      frame: { head: 0.1, sill: 0.05, left: 0.1, right: 0.2 },
      setBack: d,
      reveal: { head: d, sill: d, left: d, right: d },
      revealReflectance: 0.5,
    };
    // Sun from the upper right, a 1.5, b 0.75: shadow 0.6 from the right edge, 0.3 from the head.
    // Glass x 0.1 to 1.0, y 0.05 to 1.4; lit x to 1.2 - 0.6 = 0.6, y to 1.5 - 0.3 = 1.2.
    const expected = ((0.6 - 0.1) * (1.2 - 0.05)) / (0.9 * 1.35);
    expect(compileOpening(g).sunlit(...sun(1.5, 0.75))).toBeCloseTo(expected, 12);
    // From the lower left: lit from x 0.6 and from y 0.3.
    const below = ((1.0 - 0.6) * (1.4 - 0.3)) / (0.9 * 1.35);
    expect(compileOpening(g).sunlit(...sun(-1.5, -0.75))).toBeCloseTo(below, 12);
  });

  it('an overhang as wide as the window leaves a slanting edge', () => {
    const g: OpeningGeometry = {
      ...bareOpening(2, 2),
      overhang: { projection: 1, aboveHead: 0, left: 0, right: 0 },
    };
    // a = b = 1: the shadow's corners are (0, 2), (2, 2), (1, 1), (-1, 1): on the glass the trapezium
    // x 0 to 2 at the head, 0 to 1 at y = 1, area 1.5 of 4.
    expect(compileOpening(g).sunlit(...sun(1, 1))).toBeCloseTo(1 - 1.5 / 4, 12);
  });

  it('a sun behind or along the glass lights none of it, one square to it all', () => {
    const shade = compileOpening(bareOpening(1, 1));
    expect(shade.sunlit(0, 1, 0)).toBe(0);
    expect(shade.sunlit(0, 0.6, -0.8)).toBe(0);
    expect(shade.sunlitTop(0.5, 0, 0.6, -0.8)).toBe(0);
    expect(shade.bounce(0, 0.6, -0.8)).toBe(0);
    expect(shade.sunlit(0, 0, 1)).toBe(1);
    expect(shade.sunlitTop(0.3, 0, 0, 1)).toBeCloseTo(0.3, 12);
  });

  it('gives the size of the glass', () => {
    const shade = compileOpening({
      ...bareOpening(1.2, 1.5),
      frame: { head: 0.1, sill: 0.05, left: 0.1, right: 0.2 },
    });
    expect(shade.glassWidth).toBeCloseTo(0.9, 12);
    expect(shade.glassHeight).toBeCloseTo(1.35, 12);
    expect(shade.glassArea).toBeCloseTo(0.9 * 1.35, 12);
  });
});

describe('sunlit share: what must always hold', () => {
  const rounding = 1e-9;

  it('stays within 0 and 1, the top part within its share and the whole', () => {
    fc.assert(
      fc.property(openings, suns, fc.double({ min: 0, max: 1, noNaN: true }), (g, sun, part) => {
        const shade = compileOpening(g);
        const whole = shade.sunlit(...sun);
        const top = shade.sunlitTop(part, ...sun);
        expect(whole).toBeGreaterThanOrEqual(0);
        expect(whole).toBeLessThanOrEqual(1);
        expect(top).toBeGreaterThanOrEqual(0);
        expect(top).toBeLessThanOrEqual(Math.min(part, whole + rounding));
        expect(shade.sunlitTop(1, ...sun)).toBeCloseTo(whole, 9);
      }),
      { numRuns: 500 },
    );
  });

  it('never grows with a deeper reveal or a longer shade', () => {
    const longer: ((g: OpeningGeometry, by: number) => OpeningGeometry)[] = [
      (g, by) => ({ ...g, reveal: { ...g.reveal, head: Math.min(2, g.reveal.head + by) } }),
      (g, by) => ({ ...g, reveal: { ...g.reveal, sill: Math.min(2, g.reveal.sill + by) } }),
      (g, by) => ({ ...g, reveal: { ...g.reveal, left: Math.min(2, g.reveal.left + by) } }),
      (g, by) => ({ ...g, reveal: { ...g.reveal, right: Math.min(2, g.reveal.right + by) } }),
      (g, by) =>
        g.overhang
          ? { ...g, overhang: { ...g.overhang, projection: g.overhang.projection + by } }
          : { ...g, overhang: { projection: by, aboveHead: 0.1, left: by, right: 0 } },
      (g, by) =>
        g.finLeft
          ? { ...g, finLeft: { ...g.finLeft, projection: g.finLeft.projection + by } }
          : { ...g, finLeft: { projection: by, offset: 0.1, above: 0, below: by } },
      (g, by) =>
        g.finRight
          ? { ...g, finRight: { ...g.finRight, above: g.finRight.above + by } }
          : { ...g, finRight: { projection: by, offset: 0, above: by, below: 0 } },
    ];
    fc.assert(
      fc.property(
        openings,
        suns,
        fc.constantFrom(...longer),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (g, sun, change, by) => {
          const before = compileOpening(g).sunlit(...sun);
          const after = compileOpening(change(g, by)).sunlit(...sun);
          expect(after).toBeLessThanOrEqual(before + rounding);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('is the same in a mirror', () => {
    fc.assert(
      fc.property(openings, suns, (g, [x, y, z]) => {
        const one = compileOpening(g);
        const other = compileOpening(mirrored(g));
        expect(other.sunlit(-x, y, z)).toBeCloseTo(one.sunlit(x, y, z), 9);
        expect(other.sunlitTop(0.4, -x, y, z)).toBeCloseTo(one.sunlitTop(0.4, x, y, z), 9);
        expect(other.bounce(-x, y, z)).toBeCloseTo(one.bounce(x, y, z), 9);
      }),
      { numRuns: 300 },
    );
  });

  it('has no steps: a millionth of a turn of the sun or of a metre changes little', () => {
    // An edge moves by at most (reach of the shade, 4 m) x d(slope), d(slope) = 1e-6 / z^2 < 1.1e-5,
    // over a glass of 0.1 m or more: 4.4e-4 of it, and no more than four edges move.
    fc.assert(
      fc.property(openings, suns, (g, [x, y, z]) => {
        fc.pre(z > 0.3 && g.width > 0.4 && g.height > 0.4);
        const shade = compileOpening(g);
        const here = shade.sunlit(x, y, z);
        expect(Math.abs(shade.sunlit(x + 1e-6, y, z) - here)).toBeLessThan(2e-3);
        expect(Math.abs(shade.sunlit(x, y - 1e-6, z) - here)).toBeLessThan(2e-3);
        const bounce = shade.bounce(x, y, z);
        expect(Math.abs(shade.bounce(x + 1e-6, y, z) - bounce)).toBeLessThan(2e-3);
        const deeper = { ...g, reveal: { ...g.reveal, head: g.reveal.head + 1e-6 } };
        fc.pre(deeper.reveal.head <= 2);
        expect(Math.abs(compileOpening(deeper).sunlit(x, y, z) - here)).toBeLessThan(2e-3);
      }),
      { numRuns: 500 },
    );
  });
});
