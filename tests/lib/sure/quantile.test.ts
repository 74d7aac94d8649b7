import { quantile as d3Quantile } from 'd3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intervalOf, quantile } from '../../../lib/sure/index.ts';

const numbers = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), {
  minLength: 1,
  maxLength: 60,
});

describe('quantiles', () => {
  it('are those of d3-array, which takes the same rule (type 7 of Hyndman & Fan)', () => {
    fc.assert(
      fc.property(numbers, fc.double({ min: 0, max: 1, noNaN: true }), (values, p) => {
        const sorted = [...values].sort((a, b) => a - b);
        // The two round in another order: a few units in the last place of the largest value.
        const tolerance = 1e-12 * Math.max(...values.map(Math.abs), 1);
        expect(Math.abs(quantile(sorted, p) - d3Quantile(values, p)!)).toBeLessThanOrEqual(
          tolerance,
        );
      }),
      { seed: 3 },
    );
  });

  it('stand in rising order in an interval, whatever the order of the values', () => {
    fc.assert(
      fc.property(numbers, (values) => {
        const interval = intervalOf(values);
        const { least, low, median, high, most } = interval;
        const places = [least, low, median, high, most];
        expect([...places].sort((a, b) => a - b)).toEqual(places);
        expect([least, most]).toEqual([Math.min(...values), Math.max(...values)]);
        expect(intervalOf([...values].reverse())).toEqual(interval);
      }),
      { seed: 4 },
    );
  });
});
