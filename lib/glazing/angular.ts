import { InputError } from '../problem/index.ts';
import { coatedFactor } from './coated.ts';
import { inwardFractions } from './inwardHeat.ts';
import { traceStack } from './stack.ts';
import { hemisphereMean, tabulate } from './tables.ts';
import { COS_INTERVALS, type ClearPane, type GlassAngular, type Glazing } from './types.ts';
import { validateGlazing } from './validate.ts';

/** Two tables over the cosine of incidence, COS_INTERVALS + 1 values each. */
export interface AngularTables {
  g: Float64Array;
  solarTransmittance: Float64Array;
}

/**
 * Total and direct solar transmittance of uncoated panes by angle, as the trace gives them: g is
 * the light that passes plus the inward share of what each pane absorbs.
 * @param Ug W/m2K, from which the gaps' resistances are taken
 */
export function traceByAngle(panes: readonly ClearPane[], Ug: number): AngularTables {
  const inward = inwardFractions(panes, Ug);
  const g = new Float64Array(COS_INTERVALS + 1);
  const solarTransmittance = tabulate((cos, k) => {
    const { tau, alpha } = traceStack(panes, cos);
    g[k] = alpha.reduce((sum, value, pane) => sum + value * inward[pane]!, tau);
    return tau;
  });
  return { g, solarTransmittance };
}

/**
 * A glazing's properties by angle of incidence. Coated glass takes the curve of Karlsson & Roos for
 * both quantities. Uncoated glass is traced pane by pane, then both tables are scaled to the normal
 * values of the data sheet (which `validateGlazing` lets differ by 0.05 at most).
 * @throws InputError with the problems of `validateGlazing`
 */
export function glassAngular(glazing: Glazing): GlassAngular {
  const problems = validateGlazing(glazing);
  if (problems.length > 0) throw new InputError(problems);
  const { g, solarTransmittance } = anglesOf(glazing);
  return {
    g,
    solarTransmittance,
    gDiffuse: hemisphereMean(g),
    solarTransmittanceDiffuse: hemisphereMean(solarTransmittance),
    Ug: glazing.Ug,
    diffusing: glazing.diffusing ?? false,
  };
}

function anglesOf(glazing: Glazing): AngularTables {
  const { angular, panes } = glazing;
  const { g, solarTransmittance } =
    angular.kind === 'clear' ? traceByAngle(angular.panes, glazing.Ug) : shape(panes, angular.q);
  const scaledG = scaledTo(g, glazing.g);
  const scaledTau = scaledTo(solarTransmittance, glazing.solarTransmittance);
  // Two scales could part the tables the wrong way by a hair near grazing.
  return { g: scaledG, solarTransmittance: scaledTau.map((tau, k) => Math.min(tau, scaledG[k]!)) };
}

function shape(panes: number, q: number): AngularTables {
  const table = tabulate((cos) => coatedFactor((Math.acos(cos) * 180) / Math.PI, panes, q));
  return { g: table, solarTransmittance: table };
}

function scaledTo(table: Float64Array, normal: number): Float64Array {
  const factor = normal / table[table.length - 1]!;
  return table.map((value) => value * factor);
}
