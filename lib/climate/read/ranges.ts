import { InputError, figureText, problem } from '../../problem/index.ts';
import type { ProblemTexts, Text } from '../../problem/index.ts';
import { rangeText, say, valueText } from '../say.ts';
import type { RangeUnit } from '../say.ts';
import { at } from './text.ts';
import { QUANTITIES } from './types.ts';
import type { FileYear, Quantity } from './types.ts';

/**
 * Least and greatest plausible hourly means. Irradiance: physically possible limits of the surface
 * radiation network's checks (Long & Dutton 2002, from memory) rounded for hourly means at any
 * place; temperature and wind: beyond the records of inhabited places (common practice).
 */
export const plausible: Readonly<Record<Quantity, { from: number; to: number; unit: RangeUnit }>> =
  {
    ghi: { from: 0, to: 1500, unit: 'irradiance' },
    dni: { from: 0, to: 1400, unit: 'irradiance' },
    dhi: { from: 0, to: 900, unit: 'irradiance' },
    dryBulb: { from: -70, to: 60, unit: 'celsius' },
    wind: { from: 0, to: 75, unit: 'speed' },
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
export function checkRanges(year: FileYear, names: Partial<Record<Quantity, string>>): Text[] {
  let raised = 0;
  for (const quantity of QUANTITIES) {
    const values = year.values[quantity];
    if (!values) continue;
    const name = names[quantity] ?? say(`quantity.${quantity}`);
    if (plausible[quantity].unit === 'irradiance') raised += raiseNightOffset(values);
    refuseOutliers(values, quantity, name, year.lines);
    refuseFlat(values, quantity, name);
  }
  return raised > 0 ? [say('note.raised', { figure: figureText(raised) })] : [];
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
  name: string | Text,
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
  const said = { quantity: say(`quantity.${quantity}`), figure: figureText(count - 1) };
  throw new InputError(
    problem(at(lines[first], name), {
      message: say(count > 1 ? 'cell.impossibleMore' : 'cell.impossible', said),
      value: valueText(tidy(values[first]), unit),
      allowed: rangeText(from, to, unit),
      fix: say(outlierFix(values, quantity, count)),
    }),
  );
}

function outlierFix(
  values: Float64Array,
  quantity: Quantity,
  count: number,
): Parameters<typeof say>[0] {
  const { least, most, mean } = spread(values);
  const { to } = plausible[quantity];
  if (quantity === 'dryBulb') {
    if (mean > 150) return 'cell.kelvinFix';
    // Any mild day passes 60 degrees F; nowhere do many hours pass 60 degrees C.
    if (count > 100 && most <= 140) return 'cell.fahrenheitFix';
  } else if (quantity === 'wind') {
    if (count > 100) return 'cell.windFix';
  } else if (least >= 0 && count > 100) {
    return most > 2 * to && most / 3.6 <= to ? 'cell.kilojouleFix' : 'cell.swappedFix';
  }
  return 'cell.blankFix';
}

/** Refuses columns that hardly change or are far too weak over a year. */
function refuseFlat(values: Float64Array, quantity: Quantity, name: string | Text): void {
  if (quantity === 'ghi') refuseWeakGlobal(values, name);
  if (quantity !== 'dryBulb') return;
  const { least, most } = spread(values);
  if (most - least < 1) {
    const texts = { message: say('column.sameAllYear'), fix: say('column.sameAllYearFix') };
    throw columnProblem(name, { ...texts, value: valueText(tidy(most), 'celsius') });
  }
}

/**
 * Refuses a year of global irradiance whose strongest hour is too weak for sunlight anywhere.
 * @throws InputError naming the column
 */
export function refuseWeakGlobal(values: Float64Array, name: string | Text): void {
  const { most } = spread(values);
  if (most >= WEAKEST_PEAK || most < 0) return; // below zero: no values at all, told as a gap
  throw columnProblem(name, {
    message: say(most === 0 ? 'column.zero' : 'column.weak'),
    value: valueText(tidy(most), 'irradiance'),
    fix: say(most > 0 && most < 1.6 ? 'column.kilowattFix' : 'column.globalFix'),
  });
}

function columnProblem(column: string | Text, texts: ProblemTexts): InputError {
  return new InputError(problem(say('where.column', { column }), texts));
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

function tidy(value: number): number {
  return Number(value.toPrecision(6));
}
