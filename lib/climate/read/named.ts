import { InputError, problem } from '../../problem/index.ts';
import { say } from '../say.ts';
import { readColumn } from './columns.ts';
import { decimalOf } from './delimited.ts';
import type { Rows } from './delimited.ts';
import { at } from './text.ts';
import { QUANTITIES } from './types.ts';
import type { Quantity, RawYear } from './types.ts';

const units: Readonly<Record<Quantity, string>> = {
  ghi: 'W/m2',
  dni: 'W/m2',
  dhi: 'W/m2',
  dryBulb: 'C',
  wind: 'm/s',
};

/**
 * Places of named columns in a heading.
 * @param line line of the heading, for the message
 * @throws InputError naming the first that is missing
 */
export function findColumns(
  heading: readonly string[],
  wanted: readonly string[],
  line: number,
): Record<string, number> {
  const names = heading.map((name) => name.trim());
  const missing = wanted.find((name) => !names.includes(name));
  if (missing !== undefined) {
    const message = say('file.noSuchColumn', { column: missing });
    const fix = say('file.noSuchColumnFix');
    throw new InputError(problem(at(line), { message, fix }));
  }
  return Object.fromEntries(wanted.map((name) => [name, names.indexOf(name)]));
}

/** Reads the columns of a format with fixed names and the units W/m2, degrees C and m/s. */
export function readNamed(
  rows: Rows,
  delimiter: string,
  names: Readonly<Record<Quantity, string>>,
  columns: Record<string, number>,
): RawYear['values'] {
  const decimal = decimalOf(rows.cells, delimiter);
  const values: RawYear['values'] = {};
  for (const quantity of QUANTITIES) {
    const name = names[quantity];
    const spec = { quantity, name, column: columns[name], unit: units[quantity] };
    values[quantity] = readColumn(rows, spec, decimal);
  }
  return values;
}
