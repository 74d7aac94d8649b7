import fc from 'fast-check';
import { traceByAngle, type ClearPane, type Glazing } from '../../../lib/glazing/index.ts';

/** Evenly spread numbers; `fc.double` alone spreads over exponents and so draws mostly tiny ones. */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1_000_000 }).map((k) => min + ((max - min) * k) / 1_000_000);
}

const PANE: ClearPane = { thickness: 0.004, extinction: 20, refractiveIndex: 1.526 };
const UG = [5.8, 2.8, 1.9, 1.4];

/** Uncoated panes with the normal values their own trace gives. */
export function clearGlazing(panes: number): Glazing {
  const list = Array.from({ length: panes }, () => PANE);
  const Ug = UG[panes - 1]!;
  const { g, solarTransmittance } = traceByAngle(list, Ug);
  return {
    id: `clear-${panes}`,
    name: `${panes} clear panes`,
    panes,
    g: g.at(-1)!,
    solarTransmittance: solarTransmittance.at(-1)!,
    visibleTransmittance: 0.8,
    Ug,
    angular: { kind: 'clear', panes: list },
    source: 'made for the tests',
  };
}

/** A coated unit of a common kind. */
export function coatedGlazing(panes: number, q = 4): Glazing {
  return {
    id: `coated-${panes}`,
    name: `${panes} coated panes`,
    panes,
    g: 0.5,
    solarTransmittance: 0.42,
    visibleTransmittance: 0.71,
    Ug: 0.6,
    angular: { kind: 'coated', q },
    source: 'made for the tests',
  };
}
