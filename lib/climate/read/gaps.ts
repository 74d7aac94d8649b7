import { InputError, figureText, problem } from '../../problem/index.ts';
import type { Text } from '../../problem/index.ts';
import { listed, say } from '../say.ts';
import { at } from './text.ts';
import { QUANTITIES } from './types.ts';
import type { FileYear, Quantity } from './types.ts';

/** Longest gap that is filled, hours: the sun's course bends sooner than the air's temperature. */
const longestFilled: Readonly<Record<Quantity, number>> = {
  ghi: 3,
  dni: 3,
  dhi: 3,
  dryBulb: 6,
  wind: 6,
};

/** Hours without a value from `first` on; the year is a circle. */
interface Gap {
  first: number;
  length: number;
}

/**
 * Fills short gaps by straight lines between their neighbours, in place.
 * @returns what was filled, as sentences
 * @throws InputError naming the lines of the first gap that is too long
 */
export function fillGaps(year: FileYear, names: Partial<Record<Quantity, string>>): Text[] {
  const messages: Text[] = [];
  for (const quantity of QUANTITIES) {
    const values = year.values[quantity];
    if (!values) continue;
    const gaps = findGaps(values);
    if (gaps.length === 0) continue;
    const name = names[quantity] ?? say(`quantity.${quantity}`);
    refuseLong(gaps, quantity, name, year.lines);
    for (const gap of gaps) fill(values, gap);
    messages.push(filledSentence(gaps, quantity, year.lines));
  }
  return messages;
}

/** Runs of NaN; a run over the end of the array goes on at its start. */
export function findGaps(values: Float64Array): Gap[] {
  const n = values.length;
  const anchor = values.findIndex((v) => !Number.isNaN(v));
  if (anchor < 0) return [{ first: 0, length: n }];
  const gaps: Gap[] = [];
  for (let k = 1; k < n; k++) {
    const i = (anchor + k) % n;
    if (!Number.isNaN(values[i])) continue;
    const open = gaps.at(-1);
    if (open && (open.first + open.length) % n === i) open.length++;
    else gaps.push({ first: i, length: 1 });
  }
  return gaps;
}

function refuseLong(
  gaps: Gap[],
  quantity: Quantity,
  column: string | Text,
  lines: Uint32Array,
): void {
  const limit = longestFilled[quantity];
  const long = gaps.filter((gap) => gap.length > limit);
  if (long.length === 0) return;
  const allowed = say('gap.allowed', { limit });
  const fix = say('gap.fix');
  if (long[0].length === lines.length) {
    const texts = { message: say('column.noValues'), allowed, fix };
    throw new InputError(problem(say('where.column', { column }), texts));
  }
  const figure = figureText(long[0].length);
  const message =
    long.length > 1
      ? say('gap.longMore', { figure, more: figureText(long.length - 1) })
      : say('gap.long', { figure });
  const where = say('where.cell', { place: lineSpan(long[0], lines), column });
  throw new InputError(problem(where, { message, allowed, fix }));
}

function fill(values: Float64Array, gap: Gap): void {
  const n = values.length;
  const before = values[(gap.first + n - 1) % n];
  const after = values[(gap.first + gap.length) % n];
  for (let k = 0; k < gap.length; k++) {
    const t = (k + 1) / (gap.length + 1);
    values[(gap.first + k) % n] = before + (after - before) * t;
  }
}

function filledSentence(gaps: Gap[], quantity: Quantity, lines: Uint32Array): Text {
  const count = gaps.reduce((sum, gap) => sum + gap.length, 0);
  const first = listed(gaps.slice(0, 3).map((gap) => lineSpan(gap, lines)));
  const places =
    gaps.length > 3
      ? say('gap.andMore', { places: first, more: figureText(gaps.length - 3) })
      : first;
  const filled = { count, figure: figureText(count), quantity: say(`quantity.${quantity}`) };
  return say('gap.filled', { ...filled, places });
}

/** Lines of a gap in the file, or the line it follows where the file has no rows for it. */
function lineSpan(gap: Gap, lines: Uint32Array): Text {
  const n = lines.length;
  const first = lines[gap.first];
  const last = lines[(gap.first + gap.length - 1) % n];
  if (first > 0 && last > 0) {
    return first === last ? at(first) : say('where.lines', { first, last });
  }
  let before = (gap.first + n - 1) % n;
  for (let k = 0; k < n && lines[before] === 0; k++) before = (before + n - 1) % n;
  return say('where.afterLine', { line: lines[before] });
}
