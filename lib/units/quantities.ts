import * as factor from './factors.ts';

export type UnitSystem = 'metric' | 'imperial';

/** One unit with its pair of conversions from and to the unit the engine keeps. */
export interface Unit {
  /** As shown behind a figure. */
  symbol: string;
  /** Decimals shown where nothing else is asked for. */
  digits: number;
  /** Other ways people write it; compared without case, spaces, points, signs of power and degree. */
  aliases: readonly string[];
  toSI(value: number): number;
  fromSI(value: number): number;
}

/** One quantity: its unit in each system, and further units understood on entry. */
export interface Quantity {
  metric: Unit;
  imperial: Unit;
  also: readonly Unit[];
}

function unit(
  symbol: string,
  digits: number,
  size: number,
  aliases: readonly string[] = [],
  zero = 0,
): Unit {
  return {
    symbol,
    digits,
    aliases,
    toSI: (value) => (value - zero) * size,
    fromSI: (value) => value / size + zero,
  };
}

const perMetre = unit('1/m', 0, 1, ['/m', 'm-1']);

/**
 * The quantities of the project. The engine keeps the metric unit of each; factors from NIST SP 811
 * (2008), see factors.ts.
 */
export const quantities = {
  length: {
    metric: unit('m', 3, 1, ['metre', 'meter', 'metres', 'meters']),
    imperial: unit('ft', 2, factor.FOOT, ['foot', 'feet', "'"]),
    also: [
      unit('mm', 0, 0.001, ['millimetre', 'millimeter', 'millimetres', 'millimeters']),
      unit('cm', 1, 0.01, ['centimetre', 'centimeter', 'centimetres', 'centimeters']),
      unit('in', 2, factor.INCH, ['inch', 'inches', '"']),
    ],
  },
  area: {
    metric: unit('m²', 2, 1, ['sqm']),
    imperial: unit('ft²', 1, factor.SQUARE_FOOT, ['sqft', 'sf']),
    also: [],
  },
  temperature: {
    metric: unit('°C', 1, 1, ['celsius']),
    imperial: unit('°F', 1, factor.FAHRENHEIT_DEGREE, ['fahrenheit'], 32),
    also: [],
  },
  temperatureDifference: {
    metric: unit('K', 1, 1, ['c', 'kelvin']),
    imperial: unit('°F', 1, factor.FAHRENHEIT_DEGREE),
    also: [],
  },
  uValue: {
    metric: unit('W/m²K', 2, 1, ['w/(m²k)', 'w/m²/k']),
    imperial: unit('Btu/h ft² °F', 3, factor.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT, [
      'btu/(h ft² f)',
      'btu/hr ft² f',
      'btu/(hr ft² f)',
    ]),
    also: [],
  },
  resistance: {
    metric: unit('m²K/W', 2, 1),
    imperial: unit('ft² °F h/Btu', 1, 1 / factor.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT, [
      'ft² f hr/btu',
      'h ft² f/btu',
      'hr ft² f/btu',
    ]),
    also: [],
  },
  psi: {
    metric: unit('W/mK', 3, 1, ['w/(m k)', 'w/m/k']),
    imperial: unit('Btu/h ft °F', 3, factor.BTU_PER_HOUR_FOOT_FAHRENHEIT, [
      'btu/(h ft f)',
      'btu/hr ft f',
      'btu/(hr ft f)',
    ]),
    also: [],
  },
  irradiance: {
    metric: unit('W/m²', 0, 1),
    imperial: unit('Btu/h ft²', 0, factor.BTU_PER_HOUR_SQUARE_FOOT, [
      'btu/(h ft²)',
      'btu/hr ft²',
      'btu/(hr ft²)',
    ]),
    also: [],
  },
  irradiation: {
    metric: unit('kWh/m²', 0, 1),
    imperial: unit('kBtu/ft²', 0, factor.KILO_BTU_PER_SQUARE_FOOT),
    also: [],
  },
  energy: {
    metric: unit('kWh', 0, 1),
    imperial: unit('kBtu', 0, factor.KILO_BTU),
    also: [],
  },
  power: {
    metric: unit('W', 0, 1, ['watt', 'watts']),
    imperial: unit('Btu/h', 0, factor.BTU_PER_HOUR, ['btu/hr', 'btuh']),
    also: [],
  },
  windSpeed: {
    metric: unit('m/s', 1, 1),
    imperial: unit('mph', 0, factor.MILE_PER_HOUR, ['mi/h']),
    also: [unit('km/h', 0, factor.KILOMETRE_PER_HOUR, ['kph', 'kmh'])],
  },
  airFlow: {
    metric: unit('m³/h', 0, 1, ['m³/hr']),
    imperial: unit('cfm', 0, factor.CUBIC_FOOT_PER_MINUTE, ['ft³/min']),
    also: [],
  },
  degreeHours: {
    metric: unit('K h', 0, 1, ['c h']),
    imperial: unit('°F h', 0, factor.FAHRENHEIT_DEGREE),
    also: [],
  },
  /** The same in both systems: glass data give it in 1/m only. */
  extinction: { metric: perMetre, imperial: perMetre, also: [] },
} as const satisfies Record<string, Quantity>;

export type QuantityName = keyof typeof quantities;

/** The unit of a quantity by any way of writing it; undefined where it has no such unit. */
export function findUnit(quantity: QuantityName, text: string): Unit | undefined {
  const { metric, imperial, also }: Quantity = quantities[quantity];
  const wanted = bareSymbol(text);
  return [metric, imperial, ...also].find((unit) =>
    [unit.symbol, ...unit.aliases].some((name) => bareSymbol(name) === wanted),
  );
}

function bareSymbol(symbol: string): string {
  return symbol
    .toLowerCase()
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[\s.·*°^()]/g, '');
}

/** The unit a quantity is shown in. */
export function unitOf(quantity: QuantityName, system: UnitSystem): Unit {
  return quantities[quantity][system];
}

/** From the engine's unit to the shown one. */
export function fromSI(quantity: QuantityName, system: UnitSystem, value: number): number {
  return unitOf(quantity, system).fromSI(value);
}

/** From the shown unit to the engine's. */
export function toSI(quantity: QuantityName, system: UnitSystem, value: number): number {
  return unitOf(quantity, system).toSI(value);
}

/** R in ft2 F h/Btu of a U-value in W/m2K: 0.6 W/m2K is R 9.46. */
export function rFromU(u: number): number {
  return factor.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT / u;
}

/** U-value in W/m2K of an R in ft2 F h/Btu. */
export function uFromR(r: number): number {
  return factor.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT / r;
}
