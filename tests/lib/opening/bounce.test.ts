import { describe, expect, it } from 'vitest';
import { compileOpening } from '../../../lib/opening/index.ts';
import { perpendicularExchange } from '../../../lib/opening/viewFactor.ts';
import { bareOpening, bounceByRays, randomFrom, randomOpening, randomSun } from './rays.ts';

describe('exchange between perpendicular rectangles', () => {
  it('gives the tabulated 0.2000 between two faces of a cube, and closes the cube', () => {
    // Howell's catalogue C-11: opposite faces of a cube 0.1998 (0.199825); four sides take the rest.
    const factor = perpendicularExchange(0, 1, 0, 1, 0, 1, 0, 1);
    expect(factor).toBeCloseTo(0.2, 4);
    expect(4 * factor + oppositeSquares(1)).toBeCloseTo(1, 12);
  });

  it('closes a box of three unequal sides', () => {
    // From the floor 1.3 x 0.8 of a box 0.5 high: four walls and the ceiling, C-11 again.
    const walls =
      2 * perpendicularExchange(0, 0.8, 0, 1.3, 0, 1.3, 0, 0.5) +
      2 * perpendicularExchange(0, 1.3, 0, 0.8, 0, 0.8, 0, 0.5);
    expect(walls / (1.3 * 0.8) + parallelRectangles(1.3, 0.8, 0.5)).toBeCloseTo(1, 12);
  });

  it('agrees with the double area integral for rectangles with a gap to the common line', () => {
    // Midpoints, 24 in each of four directions; the integrand is smooth for a gap of 0.1, so the error
    // is of the order (0.05 / 0.1)^2 / 24 of the nearest cells, under 0.5 %.
    const span = (a: number, b: number) =>
      Array.from({ length: 24 }, (_, i) => a + ((i + 0.5) / 24) * (b - a));
    let sum = 0;
    for (const x of span(0.1, 0.4))
      for (const xi of span(0.12, 1.0))
        for (const y of span(0, 1.5))
          for (const eta of span(0.1, 1.3)) {
            const r2 = x * x + xi * xi + (y - eta) ** 2;
            sum += (x * xi) / (Math.PI * r2 * r2);
          }
    const integral = (sum * 0.3 * 0.88 * 1.5 * 1.2) / 24 ** 4;
    const exact = perpendicularExchange(0.1, 0.4, 0, 1.5, 0.1, 1.3, 0.12, 1.0);
    expect(Math.abs(exact / integral - 1)).toBeLessThan(0.005);
  });
});

describe('bounce against a one-bounce ray tracer', () => {
  // 120 x 120 points a face, each with one cosine-distributed ray: the share that hits the glass is
  // within 0.5 / 120 = 0.004 (one sigma), times reflectance and face over glass area: 0.001 or so.
  const cases = (
    seed: number,
    make: (random: () => number) => ReturnType<typeof randomOpening>,
  ) => {
    const random = randomFrom(seed);
    return Array.from({ length: 60 }, () => {
      const g = make(random);
      const sun = randomSun(random);
      const traced = bounceByRays(g, sun, 120, random);
      return { g, sun, traced, error: compileOpening(g).bounce(...sun) - traced };
    });
  };
  const rms = (list: { error: number }[]) =>
    Math.sqrt(list.reduce((sum, c) => sum + c.error ** 2, 0) / list.length);
  const worst = (list: { error: number }[]) => Math.max(...list.map((c) => Math.abs(c.error)));

  it('within 0.01 of the direct normal for plain holes, bare and with overhang and fins', () => {
    const list = cases(21, (random) => {
      const g = randomOpening(random);
      const d = 0.05 + 0.5 * random();
      return { ...g, setBack: d, reveal: { head: d, sill: d, left: d, right: d } };
    });
    expect(worst(list), JSON.stringify(list.find((c) => Math.abs(c.error) > 0.01))).toBeLessThan(
      0.01,
    );
    expect(rms(list)).toBeLessThan(0.003);
    expect(Math.max(...list.map((c) => c.traced))).toBeGreaterThan(0.05);
  });

  it('within 0.01 in nearly all cases for uneven reveals, surrounds and shades together', () => {
    // Faces that stand alone past their neighbours are lit in patches the strips do not follow.
    const list = cases(22, randomOpening);
    expect(list.filter((c) => Math.abs(c.error) > 0.01).length).toBeLessThanOrEqual(3);
    expect(worst(list)).toBeLessThan(0.04);
    expect(rms(list)).toBeLessThan(0.004);
  });

  it('is nothing without a reveal or with a black one', () => {
    expect(compileOpening(bareOpening(1, 1)).bounce(0.6, 0, 0.8)).toBe(0);
    const black = { ...bareOpening(1, 1), revealReflectance: 0 };
    const deep = {
      ...black,
      setBack: 0.3,
      reveal: { head: 0.3, sill: 0.3, left: 0.3, right: 0.3 },
    };
    expect(compileOpening(deep).bounce(0.6, 0, 0.8)).toBe(0);
    expect(compileOpening({ ...deep, revealReflectance: 0.6 }).bounce(0.6, 0, 0.8)).toBeGreaterThan(
      0.01,
    );
  });
});

/** View factor between opposite faces of a box, w x h apart by d: Howell's catalogue C-11. */
function parallelRectangles(w: number, h: number, d: number): number {
  const x = w / d;
  const y = h / d;
  const x1 = Math.sqrt(1 + x * x);
  const y1 = Math.sqrt(1 + y * y);
  return (
    (2 / (Math.PI * x * y)) *
    (Math.log((x1 * y1) / Math.sqrt(1 + x * x + y * y)) +
      x * y1 * Math.atan(x / y1) +
      y * x1 * Math.atan(y / x1) -
      x * Math.atan(x) -
      y * Math.atan(y))
  );
}

function oppositeSquares(d: number): number {
  return parallelRectangles(1, 1, d);
}
