import { paneOptics, type PaneOptics, type Polarisation } from './fresnel.ts';
import type { ClearPane } from './types.ts';

/** Cosine below which all light turns back: less than 1e-5 passes, and rounding would rule. */
const GRAZING = 1e-6;

/** Shares of the light that falls on a stack of panes; tau + rho + the sum of alpha is 1. */
export interface StackOptics {
  tau: number;
  rho: number;
  /** Absorbed in each pane, outside first. */
  alpha: number[];
}

/**
 * Unpolarised light through a stack of uncoated panes, outside first, with every reflection between
 * them: Edwards (1977), "Solar absorption by each element in an absorber-coverglass array", Solar
 * Energy 19(4), 401-402; polarisations apart as in Duffie & Beckman, ch. 5.
 * @param cosIncidence cosine of the angle of incidence, 0 to 1
 */
export function traceStack(panes: readonly ClearPane[], cosIncidence: number): StackOptics {
  if (cosIncidence < GRAZING) return { tau: 0, rho: 1, alpha: panes.map(() => 0) };
  const s = traceOne(panes, cosIncidence, 's');
  const p = traceOne(panes, cosIncidence, 'p');
  return {
    tau: (s.tau + p.tau) / 2,
    rho: (s.rho + p.rho) / 2,
    alpha: s.alpha.map((value, k) => (value + p.alpha[k]!) / 2),
  };
}

function traceOne(
  panes: readonly ClearPane[],
  cosIncidence: number,
  polarisation: Polarisation,
): StackOptics {
  const optics = panes.map((pane) =>
    paneOptics(cosIncidence, pane.thickness, pane.extinction, pane.refractiveIndex, polarisation),
  );
  const behind = reflectancesBehind(optics);
  const alpha: number[] = [];
  let inward = 1; // what falls on pane k from outside
  optics.forEach((pane, k) => {
    const next = (pane.tau * inward) / (1 - pane.rho * behind[k]!);
    alpha.push(pane.alpha * (inward + behind[k]! * next));
    inward = next;
  });
  return { tau: inward, rho: stackedReflectance(optics[0]!, behind[0]!), alpha };
}

/** Reflectance of all that lies inward of each pane, seen from the pane. */
function reflectancesBehind(optics: readonly PaneOptics[]): number[] {
  const behind = new Array<number>(optics.length).fill(0);
  for (let k = optics.length - 2; k >= 0; k--) {
    behind[k] = stackedReflectance(optics[k + 1]!, behind[k + 1]!);
  }
  return behind;
}

function stackedReflectance(pane: PaneOptics, behind: number): number {
  return pane.rho + (pane.tau * pane.tau * behind) / (1 - pane.rho * behind);
}
