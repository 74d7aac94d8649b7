import fc from 'fast-check';
import type { Fin, OpeningGeometry } from '../../../lib/opening/index.ts';

const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const sides = (max: number) =>
  fc.record({
    head: metres(0, max),
    sill: metres(0, max),
    left: metres(0, max),
    right: metres(0, max),
  });

const fin = fc.record({
  projection: metres(0, 3),
  offset: metres(0, 1),
  above: metres(0, 2),
  below: metres(0, 2),
});

const overhang = fc.record({
  projection: metres(0, 3),
  aboveHead: metres(0, 1),
  left: metres(0, 3),
  right: metres(0, 3),
});

/** Openings of any shape the checks let pass, half of them plain holes. */
export const openings: fc.Arbitrary<OpeningGeometry> = fc
  .record({
    width: metres(0.35, 3),
    height: metres(0.35, 3),
    frame: sides(0.15),
    setBack: metres(0, 1),
    reveal: sides(1),
    revealReflectance: metres(0, 1),
    overhang: fc.option(overhang, { nil: undefined }),
    finLeft: fc.option(fin, { nil: undefined }),
    finRight: fc.option(fin, { nil: undefined }),
    plain: fc.boolean(),
  })
  .map(({ plain, ...g }) => {
    const d = g.setBack;
    return plain ? { ...g, reveal: { head: d, sill: d, left: d, right: d } } : g;
  });

/** Directions in front of the glass, unit vectors; those exactly along an edge come up too. */
export const suns: fc.Arbitrary<[number, number, number]> = fc
  .tuple(
    fc.oneof(metres(-1, 1), fc.constant(0)),
    fc.oneof(metres(-1, 1), fc.constant(0)),
    metres(0.01, 1),
  )
  .map(([x, y, z]) => {
    const r = Math.hypot(x, y, z);
    return [x / r, y / r, z / r];
  });

/** The opening with left and right changed over. */
export function mirrored(g: OpeningGeometry): OpeningGeometry {
  const swap = <T>(s: { head: T; sill: T; left: T; right: T }) => ({
    ...s,
    left: s.right,
    right: s.left,
  });
  const copy = (f: Fin | undefined) => f && { ...f };
  return {
    ...g,
    frame: swap(g.frame),
    reveal: swap(g.reveal),
    overhang: g.overhang && { ...g.overhang, left: g.overhang.right, right: g.overhang.left },
    finLeft: copy(g.finRight),
    finRight: copy(g.finLeft),
  };
}
