import type { Text } from '../../problem/index.ts';
import { sayProblem as say } from '../../words/index.ts';
import type { ProblemUnit as RangeUnit } from '../../words/index.ts';

// Monthly normals are told by this file: `weather` comes only with weather files.
export { problemRange as rangeText, sayProblem as say } from '../../words/index.ts';
export type { ProblemUnit as RangeUnit } from '../../words/index.ts';

/** `15 kWh/m2 a day`. */
export function valueText(value: number, unit: RangeUnit): Text {
  return say('normals.value', { value, unit: say(`unit.${unit}`) });
}

/** Names after one another: `July, August`. */
export function listed(names: readonly Text[]): Text {
  return names.reduce((before, next) => say('normals.list', { before, next }));
}
