import { fromSI, unitOf } from '../../../lib/units/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import type { Tongue } from './text.ts';

/** An energy in the units of the page, without its unit. */
export function energyText(words: Tongue, units: UnitSystem, kWh: number): string {
  return words.number(fromSI('energy', units, kWh));
}

export function energyUnit(units: UnitSystem): string {
  return unitOf('energy', units).symbol;
}

/** A short length with its unit: the depth of an overhang. */
export function lengthText(words: Tongue, units: UnitSystem, metres: number): string {
  const { symbol } = unitOf('length', units);
  return `${words.number(fromSI('length', units, metres), 1)}\u00a0${symbol}`;
}

export function areaText(words: Tongue, units: UnitSystem, squareMetres: number): string {
  const { symbol } = unitOf('area', units);
  return `${words.number(fromSI('area', units, squareMetres), 1)}\u00a0${symbol}`;
}
