import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { azimuthOf, polar, turnFrom, wholeAzimuth } from '../../../src/app/charts/ring/dial.ts';
import { layoutRing, stoppedShare } from '../../../src/app/charts/ring/layout.ts';
import type { RingArc, RingOpening } from '../../../src/app/charts/ring/layout.ts';
import { spread } from '../../../src/app/charts/ring/spread.ts';

describe('dial', () => {
  it('puts north up and goes clockwise', () => {
    expect(polar(0, 10).y).toBeCloseTo(-10, 9);
    expect(polar(90, 10).x).toBeCloseTo(10, 9);
    expect(polar(180, 10).y).toBeCloseTo(10, 9);
    expect(polar(270, 10).x).toBeCloseTo(-10, 9);
  });

  it('reads the azimuth of a point back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 359.99, noNaN: true }), (azimuth) => {
        // Rounding of sine and cosine, a few units in the last place of 360.
        expect(Math.abs(turnFrom(azimuth, azimuthOf(polar(azimuth, 100))))).toBeLessThan(1e-9);
      }),
    );
  });

  it('turns the shorter way, over north too', () => {
    expect(turnFrom(350, 10)).toBe(20);
    expect(turnFrom(10, 350)).toBe(-20);
    expect(wholeAzimuth(359.6)).toBe(0);
    expect(wholeAzimuth(-1)).toBe(359);
  });
});

describe('spread', () => {
  const places = fc.array(fc.double({ min: -200, max: 200, noNaN: true }), {
    minLength: 1,
    maxLength: 12,
  });

  it('keeps neighbours apart, in order and between the ends', () => {
    fc.assert(
      fc.property(places, fc.double({ min: 1, max: 40, noNaN: true }), (wishes, gap) => {
        const [low, high] = [-250, 250];
        const result = spread(wishes, gap, low, high);
        const order = wishes.map((_, i) => i).sort((a, b) => wishes[a] - wishes[b] || a - b);
        const least = Math.min(gap, (high - low) / Math.max(1, wishes.length - 1));
        order.forEach((i, k) => {
          expect(result[i]).toBeGreaterThanOrEqual(low - 1e-9);
          expect(result[i]).toBeLessThanOrEqual(high + 1e-9);
          // 1e-6: rounding of sums of up to a dozen gaps.
          if (k > 0) expect(result[i] - result[order[k - 1]]).toBeGreaterThanOrEqual(least - 1e-6);
        });
      }),
    );
  });

  it('leaves alone what is apart already', () => {
    expect(spread([0, 50, 120], 20)).toEqual([0, 50, 120]);
  });

  it('parts two equal wishes evenly', () => {
    expect(spread([10, 10], 20)).toEqual([0, 20]);
  });
});

const opening = (part: Partial<RingOpening>): RingOpening => ({
  id: 'a',
  name: 'A',
  wall: 'w',
  wallName: 'Wall',
  azimuth: 270,
  tilt: 90,
  width: 1.2,
  without: 100,
  with: 40,
  ...part,
});

const house = fc
  .array(
    fc.record({
      wall: fc.integer({ min: 0, max: 5 }),
      width: fc.double({ min: 0.3, max: 6, noNaN: true }),
      without: fc.double({ min: 0, max: 2000, noNaN: true }),
    }),
    { minLength: 1, maxLength: 10 },
  )
  .chain((openings) =>
    fc.array(fc.integer({ min: 0, max: 359 }), { minLength: 6, maxLength: 6 }).map((azimuths) =>
      openings.map(({ wall, width, without }, i) =>
        opening({
          id: `o${i}`,
          wall: `w${wall}`,
          azimuth: azimuths[wall],
          tilt: wall === 5 ? 30 : 90,
          width,
          without,
          with: without / 2,
        }),
      ),
    ),
  );

/** Whether two arcs cover the same part of the ring. */
function meet(a: RingArc, b: RingArc): boolean {
  const across =
    Math.abs(turnFrom(a.middle, b.middle)) < (a.to - a.from + b.to - b.from) / 2 - 1e-6;
  return across && a.inner < b.outer - 1e-6 && b.inner < a.outer - 1e-6;
}

describe('ring layout', () => {
  it('draws width as length and gain as thickness, with no arc upon another', () => {
    fc.assert(
      fc.property(house, (openings) => {
        const { arcs, degreesPerMetre, perKWh, radii } = layoutRing(openings, 500);
        arcs.forEach((arc, i) => {
          expect(arc.opening.id).toBe(openings[i].id);
          expect(arc.to - arc.from).toBeCloseTo(arc.opening.width * degreesPerMetre, 6);
          const thick = (arc.opening.without ?? 0) * perKWh;
          if (thick > 4) expect(arc.outer - arc.inner).toBeCloseTo(thick, 6);
          expect(arc.inner).toBeGreaterThanOrEqual(radii.base);
          for (const other of arcs.slice(i + 1)) expect(meet(arc, other)).toBe(false);
        });
      }),
      { numRuns: 200 },
    );
  });

  it('centres the openings of a wall on its azimuth', () => {
    const { arcs } = layoutRing(
      [opening({ id: 'a', width: 2 }), opening({ id: 'b', width: 1 })],
      400,
    );
    expect((arcs[0].from + arcs[1].to) / 2).toBeCloseTo(270, 9);
  });

  it('parts an arc at what is let in', () => {
    const { arcs } = layoutRing([opening({ without: 200, with: 50 })], 400);
    const [arc] = arcs;
    expect((arc.letIn - arc.inner) / (arc.outer - arc.inner)).toBeCloseTo(0.25, 9);
    expect(stoppedShare(arc.opening)).toBeCloseTo(0.75, 9);
    expect(stoppedShare(opening({ without: 0, with: 0 }))).toBeUndefined();
  });

  it('sets a roof over a wall that faces the same way outside it', () => {
    const { arcs } = layoutRing(
      [opening({ id: 'roof', wall: 'r', tilt: 30 }), opening({ id: 'wall', wall: 'w' })],
      400,
    );
    expect(arcs[0].inner).toBeGreaterThan(arcs[1].outer);
  });
});
