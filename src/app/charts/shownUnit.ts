import { fromSI, unitOf } from '../../../lib/units/index.ts';
import type { QuantityName, UnitSystem } from '../../../lib/units/index.ts';
import type { Wording } from '../../words/index.ts';

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
export function shownUnit(
  words: Wording,
  measure: Measure,
  house: boolean,
  system: UnitSystem,
): ShownUnit {
  switch (measure) {
    case 'share': {
      const sum = { symbol: 'h', digits: 0, size: 0.01 };
      return { symbol: '%', digits: 0, show: (value) => value * 100, sum };
    }
    case 'temperature':
      return temperatureUnit(system);
    case 'excess': {
      const sum = { symbol: unitOf('degreeHours', system).symbol, digits: 0, size: 1 };
      return { ...plainUnit('temperatureDifference', system), sum };
    }
    case 'heat': {
      const energy = unitOf(house ? 'energy' : 'irradiation', system).symbol;
      const unit = plainUnit(house ? 'power' : 'irradiance', system);
      const named = (symbol: string) =>
        house ? symbol : words.of('charts')('ofGlass', { unit: symbol });
      const sum = { symbol: named(energy), digits: house ? 0 : 1, size: 0.001 };
      return { ...unit, symbol: named(unit.symbol), sum };
    }
  }
}

/** The unit temperatures are shown in. */
export function temperatureUnit(system: UnitSystem): ShownUnit {
  return plainUnit('temperature', system);
}

function plainUnit(name: QuantityName, system: UnitSystem): ShownUnit {
  const { symbol, digits } = unitOf(name, system);
  return { symbol, digits, show: (value) => fromSI(name, system, value) };
}

/** A series in shown units; the same array where nothing changes. */
export function shownSeries(values: Float64Array, unit: ShownUnit): Float64Array {
  return unit.show(1) === 1 && unit.show(0) === 0 ? values : values.map(unit.show);
}
