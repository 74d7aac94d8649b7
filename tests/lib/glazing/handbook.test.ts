import { describe, expect, it } from 'vitest';
import {
  coatedFactor,
  hemisphereMean,
  inwardFractions,
  lookup,
  paneOptics,
  tabulate,
  traceByAngle,
  type ClearPane,
} from '../../../lib/glazing/index.ts';
import reference from '../../reference/glass-shgc-by-angle.json';

/**
 * The handbook's glass takes an extinction of 30 1/m (near the 32 Duffie & Beckman give for greenish
 * glass): it meets the handbook's normal transmittance of 3 mm sheet, 0.83 to 0.84.
 */
const EXTINCTION = 30;
const cosine = (degrees: number) => Math.cos((degrees * Math.PI) / 180);

function panesOf(row: { panes: number; thickness: number }): ClearPane[] {
  const pane = { thickness: row.thickness, extinction: EXTINCTION, refractiveIndex: 1.526 };
  return Array.from({ length: row.panes }, () => pane);
}

/** g where the polarisations are averaged at each pane already, as a tracing shortcut does. */
function averagedG(panes: ClearPane[], Ug: number, cos: number): number {
  const optics = panes.map((pane) => {
    const of = (way: 's' | 'p') =>
      paneOptics(cos, pane.thickness, pane.extinction, pane.refractiveIndex, way);
    const [s, p] = [of('s'), of('p')];
    return { tau: (s.tau + p.tau) / 2, rho: (s.rho + p.rho) / 2, alpha: (s.alpha + p.alpha) / 2 };
  });
  const inward = inwardFractions(panes, Ug);
  // Fifty passes to and fro leave less than 1e-12 of the light.
  let down: number[] = optics.map((_, k) => (k === 0 ? 1 : 0));
  let up: number[] = optics.map(() => 0);
  let g = 0;
  for (let pass = 0; pass < 50; pass++) {
    const nextDown: number[] = optics.map(() => 0);
    const nextUp: number[] = optics.map(() => 0);
    optics.forEach(({ tau, rho, alpha }, k) => {
      g += inward[k]! * alpha * (down[k]! + up[k]!);
      const on = tau * down[k]! + rho * up[k]!;
      const back = rho * down[k]! + tau * up[k]!;
      if (k + 1 < optics.length) nextDown[k + 1]! += on;
      else g += on;
      if (k > 0) nextUp[k - 1]! += back;
    });
    [down, up] = [nextDown, nextUp];
  }
  return g;
}

describe.each(reference.clear)('SHGC by angle of $name', (row) => {
  const panes = panesOf(row);
  const { g } = traceByAngle(panes, row.Ug);
  const averaged = tabulate((cos) => (cos > 0 ? averagedG(panes, row.Ug, cos) : 0));
  const worst = (table: Float64Array, angles: number[]) =>
    Math.max(
      ...angles.map((angle) =>
        Math.abs(lookup(table, cosine(angle)) - row.shgc[reference.angles.indexOf(angle)]!),
      ),
    );

  it('the same trace with polarisations averaged pane by pane is the handbook', () => {
    // Two decimals are printed (0.005), and one extinction stands for all wavelengths (0.005).
    expect(worst(averaged, reference.angles)).toBeLessThan(0.01);
    expect(Math.abs(hemisphereMean(averaged) - row.diffuse)).toBeLessThan(0.015);
  });

  it('the trace lands on the handbook where polarisation hardly matters', () => {
    expect(worst(g, row.panes === 1 ? reference.angles : [0, 40])).toBeLessThan(0.02);
    // Up to 50 degrees the handbook's averaging costs three panes 0.026.
    expect(worst(g, [0, 40, 50])).toBeLessThan(0.03);
  });

  it('beyond, several panes pass more, by what the averaging loses', () => {
    // The first pane lets the light through that the next one lets through best: keeping the
    // polarisations apart adds up to 0.06 at 70 degrees to three panes, and up to 0.035 to the mean.
    for (const [k, angle] of reference.angles.entries()) {
      const gained = lookup(g, cosine(angle)) - lookup(averaged, cosine(angle));
      expect(gained).toBeGreaterThan(-1e-9);
      expect(lookup(g, cosine(angle)) - row.shgc[k]!).toBeLessThan(gained + 0.01);
      expect(gained).toBeLessThan(0.02 * row.panes);
    }
    expect(hemisphereMean(g) - row.diffuse).toBeGreaterThan(-0.01);
    expect(hemisphereMean(g) - row.diffuse).toBeLessThan(row.panes === 3 ? 0.035 : 0.02);
  });
});

describe.each(reference.coated)('SHGC by angle of $name', (row) => {
  const factor = (angle: number, q: number) => row.shgc[0]! * coatedFactor(angle, row.panes, q);
  const diffuse = (q: number) =>
    row.shgc[0]! *
    hemisphereMean(tabulate((c) => coatedFactor((Math.acos(c) * 180) / Math.PI, row.panes, q)));

  it.each(reference.angles.map((angle, k) => [angle, row.shgc[k]!]))(
    'at %i degrees Karlsson & Roos is near',
    (angle, shgc) => {
      // q 3 within 0.02. The usual q 4 within 0.035: above the handbook, which averages the
      // polarisations pane by pane, by no more than that averaging loses (see above).
      expect(Math.abs(factor(angle, 3) - shgc)).toBeLessThan(0.02);
      expect(Math.abs(factor(angle, 4) - shgc)).toBeLessThan(0.035);
    },
  );

  it('the hemispherical mean is near', () => {
    expect(Math.abs(diffuse(3) - row.diffuse)).toBeLessThan(0.02);
    expect(Math.abs(diffuse(4) - row.diffuse)).toBeLessThan(0.025);
  });
});
