import { InputError } from '../../problem/index.ts';
import { at, thousands } from './text.ts';
import { QUANTITIES, quantityName } from './types.ts';
import type { FileYear, Quantity } from './types.ts';

/**
 * Least and greatest plausible hourly means. Irradiance: physically possible limits of the surface
 * radiation network's checks (Long & Dutton 2002, from memory) rounded for hourly means at any
 * place; temperature and wind: beyond the records of inhabited places (common practice).
 */
export const plausible: Readonly<Record<Quantity, { from: number; to: number; unit: string }>> = {
  ghi: { from: 0, to: 1500, unit: 'W/m2' },
  dni: { from: 0, to: 1400, unit: 'W/m2' },
  dhi: { from: 0, to: 900, unit: 'W/m2' },
  dryBulb: { from: -70, to: 60, unit: 'C' },
  wind: { from: 0, to: 75, unit: 'm/s' },
};

/** Radiometers read a little below zero at night; so much is taken as zero. */
const NIGHT_OFFSET = -20;
/** Any place has an hour stronger than this in its year. */
const WEAKEST_PEAK = 200;

/**
 * Refuses values that cannot be and columns that look like another unit or quantity; takes small
 * negative irradiances as zero, in place.
 * @returns what was changed, as sentences
 * @throws InputError naming the line and the column
 */
export function checkRanges(year: FileYear, names: Partial<Record<Quantity, string>>): string[] {
  let raised = 0;
  for (const quantity of QUANTITIES) {
    const values = year.values[quantity];
    if (!values) continue;
    const name = names[quantity] ?? quantityName[quantity];
    if (plausible[quantity].unit === 'W/m2') raised += raiseNightOffset(values);
    refuseOutliers(values, quantity, name, year.lines);
    refuseFlat(values, quantity, name);
  }
  return raised > 0
    ? [`${thousands(raised)} irradiances a little below zero were taken as zero.`]
    : [];
}

function raiseNightOffset(values: Float64Array): number {
  let raised = 0;
  for (let i = 0; i < values.length; i++) {
    if (values[i] <= 0 && values[i] >= NIGHT_OFFSET) {
      if (values[i] < 0) raised++;
      values[i] = 0; // minus zero too
    }
  }
  return raised;
}

function refuseOutliers(
  values: Float64Array,
  quantity: Quantity,
  name: string,
  lines: Uint32Array,
): void {
  const { from, to, unit } = plausible[quantity];
  let count = 0;
  let first = -1;
  for (let i = 0; i < values.length; i++) {
    if (values[i] >= from && values[i] <= to) continue;
    if (Number.isNaN(values[i])) continue;
    if (count++ === 0) first = i;
  }
  if (count === 0) return;
  const more = count > 1 ? `; so are ${thousands(count - 1)} more in this column` : '';
  throw new InputError({
    path: at(lines[first], name),
    message: `is not a possible ${quantityName[quantity]}${more}`,
    value: `${tidy(values[first])} ${unit}`,
    allowed: `${from} to ${to} ${unit}`,
    fix: outlierFix(values, quantity, count),
  });
}

function outlierFix(values: Float64Array, quantity: Quantity, count: number): string {
  const { least, most, mean } = spread(values);
  const { to } = plausible[quantity];
  if (quantity === 'dryBulb') {
    if (mean > 150) return 'The column looks like kelvin: convert it, or name its unit.';
    // Any mild day passes 60 degrees F; nowhere do many hours pass 60 degrees C.
    if (count > 100 && most <= 140) {
      return 'The column looks like degrees Fahrenheit: convert it, or name its unit.';
    }
  } else if (quantity === 'wind') {
    if (count > 100) return 'Look whether this is the wind speed and not another column.';
  } else if (least >= 0 && count > 100) {
    return most > 2 * to && most / 3.6 <= to
      ? 'The column looks like kJ/m2: convert it to W/m2, or name its unit.'
      : 'Look whether columns are swapped, or the unit is not W/m2.';
  }
  return 'Correct it, or leave the cell blank where the value is missing.';
}

/** Refuses columns that hardly change or are far too weak over a year. */
function refuseFlat(values: Float64Array, quantity: Quantity, name: string): void {
  if (quantity === 'ghi') refuseWeakGlobal(values, name);
  if (quantity !== 'dryBulb') return;
  const { least, most } = spread(values);
  if (most - least < 1) {
    throw columnProblem(name, 'is the same all year', most, 'C', 'Choose the right column.');
  }
}

/**
 * Refuses a year of global irradiance whose strongest hour is too weak for sunlight anywhere.
 * @throws InputError naming the column
 */
export function refuseWeakGlobal(values: Float64Array, name: string): void {
  const { most } = spread(values);
  if (most >= WEAKEST_PEAK || most < 0) return; // below zero: no values at all, told as a gap
  throw columnProblem(
    name,
    most === 0 ? 'is zero all year' : 'is far too weak for sunlight: this is its strongest hour',
    most,
    'W/m2',
    most > 0 && most < 1.6
      ? 'The column looks like kWh/m2: convert it to W/m2, or name its unit.'
      : 'Choose the column of global horizontal irradiance, and its unit.',
  );
}

function columnProblem(
  name: string,
  message: string,
  value: number,
  unit: string,
  fix: string,
): InputError {
  return new InputError({
    path: `column "${name}"`,
    message,
    value: `${tidy(value)} ${unit}`,
    fix,
  });
}

interface Spread {
  least: number;
  most: number;
  mean: number;
}

/** Least, greatest and mean of the values that are there; infinite where none is. */
function spread(values: Float64Array): Spread {
  let least = Infinity;
  let most = -Infinity;
  let sum = 0;
  let count = 0;
  for (const v of values) {
    if (Number.isNaN(v)) continue;
    if (v < least) least = v;
    if (v > most) most = v;
    sum += v;
    count++;
  }
  return { least, most, mean: sum / Math.max(count, 1) };
}

function tidy(value: number): string {
  return String(Number(value.toPrecision(6)));
}
