import type { Text, TextValue } from './text.ts';

/** Tells ranges by a language file that has `range` and the units under `unit`. */
export function rangesFrom<Unit extends string>(
  say: (
    key: 'range.bare' | 'range.unit' | `unit.${Unit}`,
    values?: Record<string, TextValue>,
  ) => Text,
): (min: number, max: number, unit?: Unit) => Text {
  return (min, max, unit) =>
    unit === undefined
      ? say('range.bare', { min, max })
      : say('range.unit', { min, max, unit: say(`unit.${unit}`) });
}
