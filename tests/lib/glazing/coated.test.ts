import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coatedFactor, lookup, traceByAngle } from '../../../lib/glazing/index.ts';
import { evenly } from './samples.ts';

const anyPanes = fc.integer({ min: 1, max: 4 });
const anyQ = evenly(1, 10);

describe('coatedFactor (Karlsson & Roos 2000)', () => {
  it('is 1 at normal and 0 at grazing incidence', () => {
    fc.assert(
      fc.property(anyPanes, anyQ, (panes, q) => {
        expect(coatedFactor(0, panes, q)).toBe(1);
        expect(Math.abs(coatedFactor(90, panes, q))).toBeLessThan(1e-14);
      }),
    );
  });

  it('never rises with the angle', () => {
    const anyAngle = evenly(0, 90);
    fc.assert(
      fc.property(anyPanes, anyQ, anyAngle, anyAngle, (panes, q, a, b) => {
        const nearer = coatedFactor(Math.min(a, b), panes, q);
        // Near grazing three panes at q 10 ripple by 0.0002 (the paper's own formula).
        expect(coatedFactor(Math.max(a, b), panes, q)).toBeLessThanOrEqual(nearer + 0.0003);
      }),
      { numRuns: 2000 },
    );
  });

  it('falls sooner with more panes and lower q', () => {
    for (const angle of [50, 60, 70]) {
      expect(coatedFactor(angle, 2, 4)).toBeLessThan(coatedFactor(angle, 1, 4));
      expect(coatedFactor(angle, 3, 4)).toBeLessThan(coatedFactor(angle, 2, 4));
      expect(coatedFactor(angle, 2, 3)).toBeLessThan(coatedFactor(angle, 2, 4));
    }
  });

  // The paper's category 4 stands for uncoated panes. Against the traced ones: within 0.01 up to 50
  // degrees, and 0.04 beyond, where the formula bends less sharply than Fresnel's curve.
  it.each([
    [1, 5.8],
    [2, 2.8],
    [3, 1.9],
  ])('%i panes at q 4 follow the traced clear panes', (panes, Ug) => {
    const pane = { thickness: 0.004, extinction: 20, refractiveIndex: 1.526 };
    const { g } = traceByAngle(
      Array.from({ length: panes }, () => pane),
      Ug,
    );
    for (let angle = 0; angle <= 90; angle += 5) {
      const traced = lookup(g, Math.cos((angle * Math.PI) / 180)) / lookup(g, 1);
      const difference = Math.abs(coatedFactor(angle, panes, 4) - traced);
      expect(difference).toBeLessThan(angle <= 50 ? 0.01 : 0.04);
    }
  });
});
