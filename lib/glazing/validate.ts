import { showValue, type Problem } from '../problem/index.ts';
import { gapResistance, inwardFractions } from './inwardHeat.ts';
import { traceStack } from './stack.ts';
import type { ClearPane, Glazing } from './types.ts';

/** Most the trace of uncoated panes may differ from the data sheet's normal values. */
const TRACE_TOLERANCE = 0.05;
const SHEET = "Read it on the glazing's data sheet.";

/**
 * What is wrong with a glazing, empty where nothing is. Ranges cover the glass on the market: from
 * four coated panes to one of low-iron glass (g 0.91).
 * @param path of the glazing, put before the field's name
 */
export function validateGlazing(glazing: Glazing, path = 'glazing'): Problem[] {
  const problems: Problem[] = [];
  const { panes, g, solarTransmittance, visibleTransmittance, Ug, angular } = glazing;
  check('panes', panes, 1, 4, 'Count the panes.');
  if (inRange(panes, 1, 4) && !Number.isInteger(panes)) {
    add('panes', 'The number of panes is not whole', panes, '1, 2, 3 or 4', 'Count the panes.');
  }
  check('g', g, 0.05, 0.92, `${SHEET} 50 % is 0.5.`);
  check('solarTransmittance', solarTransmittance, 0.01, 0.92, SHEET);
  check('visibleTransmittance', visibleTransmittance, 0, 1, SHEET);
  check('Ug', Ug, 0.3, 6, `${SHEET} 5.678 over R (ft2 F h/Btu) gives it.`);
  if (solarTransmittance > g) {
    const fix = 'g is the direct transmittance plus the heat given inward: look up both again.';
    add('solarTransmittance', 'More passes than g', solarTransmittance, `up to g, ${g}`, fix);
  }
  if (angular.kind === 'coated') {
    check(
      'angular.q',
      angular.q,
      1,
      10,
      'Take 4 for most coated glass.',
      ' (Karlsson & Roos 2000)',
    );
    return problems;
  }
  angular.panes.forEach((pane, k) => {
    const at = `angular.panes[${k}]`;
    check(`${at}.thickness`, pane.thickness, 0.001, 0.05, '4 mm is 0.004.', ' m');
    check(
      `${at}.extinction`,
      pane.extinction,
      0,
      200,
      'Take 4 water white to 32 greenish.',
      ' 1/m',
    );
    check(`${at}.refractiveIndex`, pane.refractiveIndex, 1.2, 2, 'Take 1.526 for soda-lime glass.');
  });
  if (angular.panes.length !== panes) {
    const fix = 'List every pane once, outside first.';
    add('angular.panes', 'Panes listed differ from `panes`', angular.panes.length, `${panes}`, fix);
  }
  if (problems.length === 0) checkTrace(angular.panes);
  return problems;

  function add(field: string, message: string, value: unknown, allowed: string, fix: string) {
    problems.push({ path: `${path}.${field}`, message, value: showValue(value), allowed, fix });
  }

  function check(field: string, value: number, min: number, max: number, fix: string, unit = '') {
    if (!inRange(value, min, max))
      add(field, 'Out of range', value, `${min} to ${max}${unit}`, fix);
  }

  function checkTrace(clear: readonly ClearPane[]) {
    if (clear.length > 1 && gapResistance(clear, Ug) <= 0) {
      const fix = 'Take 2.7 to 3.3 for two uncoated panes, 1.7 to 2.2 for three.';
      add('Ug', 'Too high for this number of panes', Ug, 'below that of the panes alone', fix);
      return;
    }
    const inward = inwardFractions(clear, Ug);
    const { tau, alpha } = traceStack(clear, 1);
    compare('solarTransmittance', solarTransmittance, tau);
    compare('g', g, tau + alpha.reduce((sum, value, k) => sum + value * inward[k]!, 0));
  }

  function compare(field: string, given: number, traced: number) {
    if (Math.abs(given - traced) <= TRACE_TOLERANCE) return;
    const [low, high] = [traced - TRACE_TOLERANCE, traced + TRACE_TOLERANCE];
    add(
      field,
      'Does not fit the listed panes',
      given,
      `${low.toFixed(2)} to ${high.toFixed(2)}`,
      `The panes give ${traced.toFixed(2)}: correct thickness or extinction, or use the coated model.`,
    );
  }
}

function inRange(value: number, min: number, max: number): boolean {
  return value >= min && value <= max;
}
