import { traceStack } from './stack.ts';
import type { Glazing } from './types.ts';

export interface StressSituation {
  /** Part of the pane stays in shade while the rest is in the sun. */
  shadedEdge?: boolean;
  /** A blind hangs close behind the glass or between panes and sends heat back into it. */
  blindClose?: boolean;
  /** Heat absorbed in the glass at its peak hour, W/m2, where it is known. */
  absorbedW?: number;
}

/** Absorptance above which annealed glass is looked at with care (common practice). */
const ABSORPTANCE_LIMIT = 0.5;
/** The same in full sun of about 800 W/m2 on the pane, W/m2. */
const ABSORBED_LIMIT = 400;
/** Least solar reflectance of common units, outside: one pane, several panes (common practice). */
const LEAST_REFLECTANCE = [0.08, 0.15];

/**
 * Solar absorptance at normal incidence of the hottest pane of uncoated glass; of coated glass, where
 * the data sheet does not say which pane absorbs, the most that all panes together can absorb.
 */
export function hottestAbsorptance(glazing: Glazing): number {
  const { angular, panes, solarTransmittance } = glazing;
  if (angular.kind === 'clear') return Math.max(...traceStack(angular.panes, 1).alpha);
  return 1 - solarTransmittance - LEAST_REFLECTANCE[panes > 1 ? 1 : 0]!;
}

/**
 * A sentence where the glass may crack from heat, undefined where nothing points to it. A flag only:
 * whether a pane holds is the glass supplier's thermal safety check to say.
 */
export function thermalStressCaution(
  glazing: Glazing,
  { shadedEdge = false, blindClose = false, absorbedW = 0 }: StressSituation,
): string | undefined {
  const uneven = shadedEdge || blindClose;
  const absorbing = hottestAbsorptance(glazing) > ABSORPTANCE_LIMIT;
  if (!(uneven && absorbing) && absorbedW <= ABSORBED_LIMIT) return undefined;
  const because = [
    shadedEdge ? 'part of the pane is shaded' : '',
    blindClose ? 'a blind is close to the glass' : '',
    absorbedW > ABSORBED_LIMIT ? `it absorbs up to ${Math.round(absorbedW)} W/m²` : '',
  ].filter(Boolean);
  return (
    `Annealed glass may crack from heat here (${because.join(', ')}): ask the glass supplier for a ` +
    'thermal safety check before ordering; toughened or heat-strengthened panes may be needed.'
  );
}
