import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { traceStack, type ClearPane } from '../../../lib/glazing/index.ts';
import { seeded, tracePhotons } from './monteCarlo.ts';
import { evenly } from './samples.ts';

const RAD = Math.PI / 180;
const anyPane = fc.record<ClearPane>({
  thickness: evenly(0.001, 0.05),
  extinction: evenly(0, 200),
  refractiveIndex: evenly(1.3, 1.9),
});
const anyStack = fc.array(anyPane, { minLength: 1, maxLength: 4 });

describe('traceStack', () => {
  it('loses no light: what passes, turns back and is absorbed adds up to 1', () => {
    // A dozen roundings of 1e-16 each; the reflected part is found apart from the absorbed ones.
    const anyCosine = fc.oneof(evenly(0, 1), fc.double({ min: 0, max: 1, noNaN: true }));
    fc.assert(
      fc.property(anyStack, anyCosine, (panes, cos) => {
        const { tau, rho, alpha } = traceStack(panes, cos);
        const sum = alpha.reduce((total, value) => total + value, tau + rho);
        expect(Math.abs(sum - 1)).toBeLessThan(1e-12);
        for (const part of [tau, rho, ...alpha]) expect(part).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 1000 },
    );
  });

  it('passes the same light both ways', () => {
    // Stokes' reciprocity of a stack of lossy plates.
    fc.assert(
      fc.property(anyStack, evenly(0.01, 1), (panes, cos) => {
        const back = [...panes].reverse();
        expect(Math.abs(traceStack(panes, cos).tau - traceStack(back, cos).tau)).toBeLessThan(
          1e-13,
        );
      }),
    );
  });

  it('turns everything back at grazing incidence', () => {
    const pane = { thickness: 0.004, extinction: 20, refractiveIndex: 1.526 };
    expect(traceStack([pane, pane], 0)).toEqual({ tau: 0, rho: 1, alpha: [0, 0] });
  });

  const grey = { thickness: 0.006, extinction: 100, refractiveIndex: 1.526 };
  const clear = { thickness: 0.004, extinction: 20, refractiveIndex: 1.526 };
  const low = { thickness: 0.01, extinction: 4, refractiveIndex: 1.45 };
  const stacks: [string, ClearPane[]][] = [
    ['clear', [clear]],
    ['grey, clear', [grey, clear]],
    ['clear, low-index, grey', [clear, low, grey]],
    ['three alike', [clear, clear, clear]],
  ];
  const cases = stacks.flatMap(([name, panes]) =>
    [5, 40, 60, 75, 85].map((angle) => ({ name, panes, angle })),
  );
  it.each(cases)('photons one by one: $name at $angle degrees', ({ panes, angle }) => {
    // 60,000 photons: standard deviation of a share at most 0.5 / sqrt(60000) = 0.002, so 0.01 is
    // five of them.
    const photons = tracePhotons(panes, angle * RAD, 60_000, seeded(angle));
    const { tau, rho, alpha } = traceStack(panes, Math.cos(angle * RAD));
    expect(Math.abs(tau - photons.passed)).toBeLessThan(0.01);
    expect(Math.abs(rho - photons.reflected)).toBeLessThan(0.01);
    alpha.forEach((value, k) => expect(Math.abs(value - photons.absorbed[k]!)).toBeLessThan(0.01));
  });
});
