import fc from 'fast-check';

/** Evenly spread numbers; `fc.double` alone spreads over exponents and so draws mostly tiny ones. */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 10_000_000 }).map((k) => min + ((max - min) * k) / 10_000_000);
}
