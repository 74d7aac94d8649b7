import { decimalText, problem, verbatim } from '../problem/index.ts';
import type { Problem, Text } from '../problem/index.ts';
import { gapResistance, inwardFractions } from './inwardHeat.ts';
import { rangeText, say } from './say.ts';
import type { RangeUnit, SentenceKey } from './say.ts';
import { traceStack } from './stack.ts';
import type { ClearPane, Glazing } from './types.ts';

/** Most the trace of uncoated panes may differ from the data sheet's normal values. */
const TRACE_TOLERANCE = 0.05;

/**
 * What is wrong with a glazing, empty where nothing is. Ranges cover the glass on the market: from
 * four coated panes to one of low-iron glass (g 0.91).
 * @param path of the glazing, put before the field's name
 */
export function validateGlazing(glazing: Glazing, path = 'glazing'): Problem[] {
  const problems: Problem[] = [];
  const { panes, g, solarTransmittance, visibleTransmittance, Ug, angular } = glazing;
  check('panes', panes, 1, 4, 'countPanes');
  if (inRange(panes, 1, 4) && !Number.isInteger(panes)) {
    add('panes', 'notWhole', panes, say('glazing.panes'), 'countPanes');
  }
  check('g', g, 0.05, 0.92, 'sheetShare');
  check('solarTransmittance', solarTransmittance, 0.01, 0.92, 'sheet');
  check('visibleTransmittance', visibleTransmittance, 0, 1, 'sheet');
  check('Ug', Ug, 0.3, 6, 'sheetU');
  if (solarTransmittance > g) {
    const allowed = say('glazing.upToG', { g });
    add('solarTransmittance', 'moreThanG', solarTransmittance, allowed, 'gFix');
  }
  if (angular.kind === 'coated') {
    const { q } = angular;
    const allowed = say('glazing.karlsson', { min: 1, max: 10 });
    if (!inRange(q, 1, 10)) add('angular.q', 'outOfRange', q, allowed, 'q');
    return problems;
  }
  angular.panes.forEach((pane, k) => {
    const at = `angular.panes[${k}]`;
    check(`${at}.thickness`, pane.thickness, 0.001, 0.05, 'thickness', 'm');
    check(`${at}.extinction`, pane.extinction, 0, 200, 'extinction', '1/m');
    check(`${at}.refractiveIndex`, pane.refractiveIndex, 1.2, 2, 'refraction');
  });
  if (angular.panes.length !== panes) {
    const allowed = verbatim(`${panes}`);
    add('angular.panes', 'differ', angular.panes.length, allowed, 'listFix');
  }
  if (problems.length === 0) checkTrace(angular.panes);
  return problems;

  function add(
    field: string,
    message: SentenceKey,
    value: unknown,
    allowed: Text,
    fix: SentenceKey | Text,
  ) {
    const mend = typeof fix === 'string' ? say(`glazing.${fix}`) : fix;
    const texts = { message: say(`glazing.${message}`), allowed, fix: mend };
    problems.push(problem(`${path}.${field}`, texts, value));
  }

  function check(
    field: string,
    value: number,
    min: number,
    max: number,
    fix: SentenceKey,
    unit?: RangeUnit,
  ) {
    if (!inRange(value, min, max)) add(field, 'outOfRange', value, rangeText(min, max, unit), fix);
  }

  function checkTrace(clear: readonly ClearPane[]) {
    if (clear.length > 1 && gapResistance(clear, Ug) <= 0) {
      add('Ug', 'tooHigh', Ug, say('glazing.belowPanes'), 'UgFix');
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
    const allowed = say('range.bare', { min: decimalText(low, 2), max: decimalText(high, 2) });
    const fix = say('glazing.traceFix', { value: decimalText(traced, 2) });
    add(field, 'notFitting', given, allowed, fix);
  }
}

function inRange(value: number, min: number, max: number): boolean {
  return value >= min && value <= max;
}
