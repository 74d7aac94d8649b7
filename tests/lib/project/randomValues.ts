import fc from 'fast-check';

export const figure = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
export const share = figure(0, 1);
export const maybe = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });
export const quarter = fc.integer({ min: 0, max: 96 }).map((n) => n * 15);
export const clock = fc.record({ from: quarter, to: quarter });
export const text = fc.string({ unit: 'grapheme', maxLength: 30 });
export const title = text.map((t) => `Name ${t}`);
export const date = fc.constantFrom('01-01', '02-28', '02-29', '06-21', '12-31');
export const months = fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1 });
export const list = <T>(arb: fc.Arbitrary<T>, length: number) =>
  fc.array(arb, { minLength: length, maxLength: length });
