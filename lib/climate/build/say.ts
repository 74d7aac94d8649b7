import problems from '../../../data/words/en/problems.json' with { type: 'json' };
import { rangesFrom, sayFrom } from '../../problem/index.ts';
import type { Text } from '../../problem/index.ts';

/** Sentences about monthly normals; the file `weather` comes only with weather files. */
export const say = /* @__PURE__ */ sayFrom('problems', problems);

/** Units by their place in the language file. */
export type RangeUnit = keyof typeof problems.unit;

/** `0 to 14 kWh/m2 a day`. */
export const rangeText = /* @__PURE__ */ rangesFrom<RangeUnit>(say);

/** `15 kWh/m2 a day`. */
export function valueText(value: number, unit: RangeUnit): Text {
  return say('normals.value', { value, unit: say(`unit.${unit}`) });
}

/** Names after one another: `July, August`. */
export function listed(names: readonly Text[]): Text {
  return names.reduce((before, next) => say('normals.list', { before, next }));
}
