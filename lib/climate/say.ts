import weather from '../../data/words/en/weather.json' with { type: 'json' };
import { rangesFrom, sayFrom } from '../problem/index.ts';
import type { Text } from '../problem/index.ts';

/** Sentences about weather, from the language file `weather`. */
export const say = sayFrom('weather', weather);

/** Names or places after one another: `July, August`. */
export function listed(names: readonly Text[]): Text {
  return names.reduce((before, next) => say('list', { before, next }));
}

/** Units by their place in the language file. */
export type RangeUnit = keyof typeof weather.unit;

/** `0 to 1500 W/m2`. */
export const rangeText = rangesFrom<RangeUnit>(say);

/** `1600 W/m2`. */
export function valueText(value: number, unit: RangeUnit): Text {
  return say('range.value', { value, unit: say(`unit.${unit}`) });
}
