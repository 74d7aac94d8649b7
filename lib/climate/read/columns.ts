import { InputError, figureText, problem } from '../../problem/index.ts';
import { say } from '../say.ts';
import type { Rows } from './delimited.ts';
import { at } from './text.ts';
import type { IrradianceUnit, Quantity, TemperatureUnit, WindUnit } from './types.ts';

type Convert = (value: number) => number;

/** Mean power over an hour from the energy of that hour; exact by the definition of the units. */
const toIrradiance: Record<IrradianceUnit, Convert> = {
  'W/m2': (v) => v,
  'Wh/m2': (v) => v,
  'kWh/m2': (v) => v * 1000,
  'kJ/m2': (v) => v / 3.6,
  'MJ/m2': (v) => v / 0.0036,
  // 1 Btu (IT) = 1055.056 J, 1 ft2 = 0.09290304 m2 (ISO 31-4 and the international foot).
  'Btu/ft2': (v) => (v * 1055.05585262) / 0.09290304 / 3600,
};

const toTemperature: Record<TemperatureUnit, Convert> = {
  C: (v) => v,
  F: (v) => (v - 32) / 1.8,
  K: (v) => v - 273.15,
};

const toWind: Record<WindUnit, Convert> = {
  'm/s': (v) => v,
  'km/h': (v) => v / 3.6,
  mph: (v) => v * 0.44704,
  kn: (v) => v / 1.943844,
};

/** Units that a quantity may be given in. */
export const unitsOf: Readonly<Record<Quantity, readonly string[]>> = {
  ghi: Object.keys(toIrradiance),
  dni: Object.keys(toIrradiance),
  dhi: Object.keys(toIrradiance),
  dryBulb: Object.keys(toTemperature),
  wind: Object.keys(toWind),
};

/** Converter of a unit to W/m2, degrees C or m/s. */
function converter(quantity: Quantity, unit: string): Convert {
  if (quantity === 'dryBulb') return toTemperature[unit as TemperatureUnit];
  if (quantity === 'wind') return toWind[unit as WindUnit];
  return toIrradiance[unit as IrradianceUnit];
}

const missingWords = new Set([
  '',
  '-',
  '--',
  '?',
  'nan',
  'na',
  'n/a',
  'null',
  'none',
  'missing',
  '*',
]);

/** Numbers that stand for a missing value in any column (common practice in public weather files). */
const missingAnywhere = new Set([-99, -99.9, -999, -999.9, -9999, -9900, -99999, 9999, 99999]);

function isMissingCode(value: number, quantity: Quantity, unit: string): boolean {
  if (missingAnywhere.has(value)) return true;
  // 99.9 is a fair temperature in degrees F and a fair irradiance.
  if (quantity === 'dryBulb') return value === 999 || (value === 99.9 && unit === 'C');
  if (quantity === 'wind') return value === 999 || value === 99.9 || value === 99;
  return false;
}

/** One number as text; NaN where it is missing, undefined where it is not a number. */
export function readNumber(text: string, decimal: '.' | ','): number | undefined {
  const plain = text.trim();
  const value = Number(decimal === ',' ? plain.replace(',', '.') : plain);
  if (plain !== '' && Number.isFinite(value)) return value;
  return missingWords.has(plain.toLowerCase()) ? NaN : undefined;
}

/** What to read as one quantity. */
export interface ColumnSpec {
  quantity: Quantity;
  column: number;
  unit: string;
  /** As the file names it, for messages. */
  name: string;
}

/**
 * One column of the rows in W/m2, degrees C or m/s; NaN where a cell is blank or holds a missing code.
 * @throws InputError naming the first cell that is not a number, and how many there are
 */
export function readColumn(rows: Rows, spec: ColumnSpec, decimal: '.' | ','): Float64Array {
  const { quantity, column, unit } = spec;
  const convert = converter(quantity, unit);
  const result = new Float64Array(rows.cells.length);
  let bad = 0;
  let firstBad = -1;
  for (let i = 0; i < result.length; i++) {
    const value = readNumber(rows.cells[i][column], decimal);
    if (value === undefined) {
      if (bad++ === 0) firstBad = i;
      continue;
    }
    result[i] = isMissingCode(value, quantity, unit) ? NaN : convert(value);
  }
  if (bad > 0) throw notANumber(rows, spec, firstBad, bad);
  return result;
}

function notANumber(rows: Rows, spec: ColumnSpec, row: number, count: number): InputError {
  const text = rows.cells[row][spec.column].trim();
  const message =
    count > 1
      ? say('cell.notNumberMore', { figure: figureText(count - 1) })
      : say('cell.notNumber');
  const fix = say(/^-?\d*,\d+$/.test(text) ? 'cell.commaFix' : 'cell.blankFix');
  return new InputError(problem(at(rows.lines[row], spec.name), { message, fix }, text));
}
