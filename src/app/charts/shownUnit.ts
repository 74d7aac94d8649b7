import { fromSI, unitOf } from '../../../lib/units/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';

/** How values are measured: which unit they are shown in and how they add up. */
export type Measure = 'heat' | 'share' | 'temperature' | 'excess';

/** A measure in the units of the page: of an opening per area of its glass, of a house in all. */
export interface ShownUnit {
  symbol: string;
  digits: number;
  /** From the engine's unit to the shown one. */
  show(value: number): number;
  /** Unit of the sum of hourly values, where that means something, and its size in it. */
  sum?: { symbol: string; digits: number; size: number };
}

/** The unit a measure is shown in. Energy is in thousands of power-hours in both systems. */
export function shownUnit(measure: Measure, house: boolean, system: UnitSystem): ShownUnit {
  if (measure === 'share') {
    const sum = { symbol: 'h', digits: 0, size: 0.01 };
    return { symbol: '%', digits: 0, show: (value) => value * 100, sum };
  }
  if (measure === 'temperature') {
    const { symbol, digits } = unitOf('temperature', system);
    return { symbol, digits, show: (value) => fromSI('temperature', system, value) };
  }
  if (measure === 'excess') {
    const { symbol, digits } = unitOf('temperatureDifference', system);
    const sum = { symbol: unitOf('degreeHours', system).symbol, digits: 0, size: 1 };
    const show = (value: number) => fromSI('temperatureDifference', system, value);
    return { symbol, digits, show, sum };
  }
  const { symbol, digits } = unitOf(house ? 'power' : 'irradiance', system);
  const energy = unitOf(house ? 'energy' : 'irradiation', system).symbol;
  return {
    symbol: house ? symbol : `${symbol} of glass`,
    digits,
    show: (value) => fromSI(house ? 'power' : 'irradiance', system, value),
    sum: { symbol: house ? energy : `${energy} of glass`, digits: house ? 0 : 1, size: 0.001 },
  };
}

/** A series in shown units; the same array where nothing changes. */
export function shownSeries(values: Float64Array, unit: ShownUnit): Float64Array {
  return unit.show(1) === 1 && unit.show(0) === 0 ? values : values.map(unit.show);
}
