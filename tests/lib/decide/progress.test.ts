import { expect, it } from 'vitest';
import { decide } from '../../../lib/decide/index.ts';
import { library } from '../study/support.ts';
import { paneHouse, paneYear } from './support.ts';

it('tells how far it is without going back, and decides the same', () => {
  const house = paneHouse([
    { azimuth: 90, width: 1.2, height: 1.4 },
    { azimuth: 250, width: 2, height: 2 },
  ]);
  const input = { project: house, library, year: paneYear() };
  const told: number[] = [];
  const decision = decide(input, { onProgress: (done) => told.push(done) });
  expect(told[0]).toBe(0);
  expect(told).toEqual(told.toSorted((a, b) => a - b));
  // The last part is 35 %: all before it is done once it begins, and most of it once it ends.
  expect(told.at(-1)).toBeGreaterThan(0.9);
  expect(told.at(-1)).toBeLessThanOrEqual(1);
  expect(new Set(told).size).toBeGreaterThan(20);
  expect(decision).toEqual(decide(input));
});
