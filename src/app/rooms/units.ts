import { toSI } from '../../../lib/units/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import type { Wording } from '../../words/index.ts';

/** How a figure of a room is shown: its unit, and how much of the project's unit that is. */
export interface RoomUnit {
  symbol: string;
  size: number;
  digits: number;
}

export const PERCENT: RoomUnit = { symbol: '%', size: 0.01, digits: 1 };
export const AIR_CHANGES: RoomUnit = { symbol: '1/h', size: 1, digits: 3 };
export const PLAIN: RoomUnit = { symbol: '', size: 1, digits: 3 };

const FOOT = toSI('length', 'imperial', 1);
const BTU_PER_HOUR = toSI('power', 'imperial', 1);
const FAHRENHEIT_DEGREE = toSI('temperatureDifference', 'imperial', 1);
const SECONDS_PER_HOUR = 3600;

/** Air in a room, kept in m3. */
export function volumeUnit(system: UnitSystem): RoomUnit {
  return system === 'metric'
    ? { symbol: 'm³', size: 1, digits: 1 }
    : { symbol: 'ft³', size: FOOT ** 3, digits: 0 };
}

/** Heat loss per degree, kept in W/K. */
export function lossUnit(system: UnitSystem): RoomUnit {
  return system === 'metric'
    ? { symbol: 'W/K', size: 1, digits: 2 }
    : { symbol: 'Btu/h °F', size: BTU_PER_HOUR / FAHRENHEIT_DEGREE, digits: 2 };
}

/** Heat stored per degree, kept in J/K. */
export function storeUnit(system: UnitSystem): RoomUnit {
  return system === 'metric'
    ? { symbol: 'kJ/K', size: 1000, digits: 0 }
    : {
        symbol: 'Btu/°F',
        size: (BTU_PER_HOUR * SECONDS_PER_HOUR) / FAHRENHEIT_DEGREE,
        digits: 0,
      };
}

/** A figure of the project in its shown unit, with as few decimals as it needs. */
export function roomFigure(
  words: Wording,
  value: number,
  { symbol, size, digits }: RoomUnit,
): string {
  const rounded = Number((value / size).toFixed(digits));
  const [, decimals = ''] = String(rounded).split('.');
  const text = words.number(rounded, decimals.length);
  return symbol ? `${text}\u00a0${symbol}` : text;
}
