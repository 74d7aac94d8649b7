import { InputError, problem, verbatim } from '../../problem/index.ts';
import type { Text } from '../../problem/index.ts';
import { say } from '../say.ts';
import { readNumber } from './columns.ts';
import { decimalOf, firstLines, splitRows } from './delimited.ts';
import { guessTime } from './guessTime.ts';
import { columnNames } from './table.ts';
import { cleanText } from './text.ts';
import { QUANTITIES } from './types.ts';
import type { ColumnUse, Quantity, TableLayout } from './types.ts';

/** A layout found by looking at a table, with what could not be told from it. */
export interface TableGuess {
  layout: TableLayout;
  /** What the text does not say: the sun at the place may. */
  open: { stamp: boolean; zone: boolean };
  /** What was assumed: sentences for the user. */
  notes: Text[];
}

const SAMPLE_LINES = 120;
const delimiters = ['\t', ';', '|', ',', ' '] as const;

/** Usual names of the columns, in English and in the symbols of the trade; lower case. */
const namePatterns: Readonly<Record<Quantity, RegExp>> = {
  ghi: /\bghi\b|\bg\(h\)|glob|\bghr\b|horizontal (solar|irradia|radiation)|^solar (irradia|radiation)/,
  dni: /\bdni\b|\bgb\(n\)|direct|beam/,
  dhi: /\bdhi\b|\bgd\(h\)|diff?use|\bdif\b/,
  dryBulb: /dry.?bulb|\bt2m\b|\btdry\b|\bt_?(air|amb|out|db)\b|\btemp/,
  wind: /wind ?_?(speed|velocity|spd)|\bwspd\b|\bws(10m?)?\b|\bwind\b/,
};
const notThese: Partial<Record<Quantity, RegExp>> = {
  ghi: /illum|\(i\)|tilt|uncert|source/,
  dni: /illum|\(i\)|tilt|uncert|source|wind|horiz/,
  dhi: /illum|\(i\)|tilt|uncert|source/,
  dryBulb: /dew|wet|ground|soil|surface|sky|module|uncert|source/,
  wind: /dir|gust|chill|uncert|source/,
};

/**
 * Finds the layout of a delimited text by its names, units and values.
 * @throws InputError where it is not a table, or columns that are needed cannot be told
 */
export function guessTable(text: string): TableGuess {
  const clean = cleanText(text);
  const shape = guessShape(clean);
  const rows = splitRows(clean, shape.delimiter, shape.headerLines);
  const decimal = decimalOf(rows.cells, shape.delimiter);
  const draft: TableLayout = { ...shape, decimal, columns: {}, stamp: 'end', utcOffset: 'site' };
  const names = columnNames(clean, draft, rows.cells[0].length).map((n) => n.toLowerCase());
  const top = firstLines(clean, shape.headerLines).join('\n');
  const time = guessTime(names, rows.cells, top);

  const columns: Partial<Record<Quantity, ColumnUse>> = {};
  for (const quantity of QUANTITIES) {
    const column = names.findIndex(
      (name) => namePatterns[quantity].test(name) && !notThese[quantity]?.test(name),
    );
    if (column < 0) continue;
    const values = rows.cells.map((cells) => readNumber(cells[column] ?? '', decimal) ?? NaN);
    columns[quantity] = { column, unit: guessUnit(quantity, names[column], values) };
  }
  refuseMissing(columns, names);
  return {
    layout: {
      ...draft,
      time: time.columns,
      columns: columns as TableLayout['columns'],
      stamp: time.stamp ?? 'end',
      utcOffset: time.utcOffset ?? 'site',
    },
    open: {
      stamp: time.columns !== undefined && time.stamp === undefined,
      zone: time.utcOffset === undefined,
    },
    notes: time.notes,
  };
}

/** Delimiter and number of heading lines: the cut that gives most lines the same number of cells. */
function guessShape(text: string): Pick<TableLayout, 'delimiter' | 'headerLines'> {
  const lines = firstLines(text, SAMPLE_LINES).filter((line, i, all) => i < all.length - 1 || line);
  for (const delimiter of delimiters) {
    const counts = lines.map((line) => cellCount(line, delimiter));
    const body = counts.slice(Math.floor(counts.length / 2)).filter((n) => n > 0);
    const usual = body.sort((a, b) => a - b)[Math.floor(body.length / 2)];
    if (usual === undefined || usual < 3) continue;
    const fits = body.filter((n) => n === usual).length;
    if (fits < 0.8 * body.length) continue;
    const first = counts.findIndex((n, i) => n === usual && isDataLine(lines[i], delimiter));
    if (first >= 0) return { delimiter, headerLines: first };
  }
  throw new InputError(
    problem(say('where.file'), {
      message: say('file.noTable'),
      allowed: say('file.noTableAllowed'),
      fix: say('file.noTableFix'),
    }),
  );
}

function cellCount(line: string, delimiter: string): number {
  const plain = line.replace(/"[^"]*"/g, 'q').trim();
  if (plain === '') return 0;
  return delimiter === ' ' ? plain.split(/[ \t]+/).length : plain.split(delimiter).length;
}

/** A row of values: led by a digit, and at least half its cells are numbers or times. */
function isDataLine(line: string, delimiter: string): boolean {
  const cells = line.trim().split(delimiter === ' ' ? /[ \t]+/ : delimiter);
  const numeric = cells.filter((cell) => /^[\s"]*-?[\d.,][\d.,:/TZ eE+-]*["\s]*$/.test(cell));
  return numeric.length >= Math.max(2, cells.length / 2);
}

function guessUnit(quantity: Quantity, name: string, values: number[]): string {
  const there = values.filter((v) => !Number.isNaN(v) && v > -900 && v < 9000);
  const most = there.reduce((a, b) => Math.max(a, b), -Infinity);
  const mean = there.reduce((a, b) => a + b, 0) / Math.max(there.length, 1);
  if (quantity === 'dryBulb') {
    if (/fahrenheit|\bdeg ?f\b|[([_°\uFFFD ]f[)\]]?$/.test(name)) return 'F';
    if (/kelvin|[([_ ]k[)\]]?$/.test(name)) return 'K';
    if (/celsius|\bdeg ?c\b|[([_°\uFFFD ]c[)\]]?$/.test(name)) return 'C';
    if (mean > 150) return 'K';
    return most > 60 ? 'F' : 'C';
  }
  if (quantity === 'wind') {
    if (/km ?\/ ?h|kph|kmh/.test(name)) return 'km/h';
    if (/mph|mi ?\/ ?h/.test(name)) return 'mph';
    return /\bknots?\b|\bkts?\b|[([_ ]kn[)\]]?/.test(name) ? 'kn' : 'm/s';
  }
  if (/btu/.test(name)) return 'Btu/ft2';
  if (/kwh|kw\//.test(name)) return 'kWh/m2';
  if (/wh/.test(name)) return 'Wh/m2';
  if (/kj/.test(name)) return 'kJ/m2';
  if (/mj/.test(name)) return 'MJ/m2';
  if (/\bw ?\/|w m|wm-?2/.test(name)) return 'W/m2';
  if (most <= 1.5) return 'kWh/m2';
  if (most <= 5.4) return 'MJ/m2';
  return most > 1500 ? 'kJ/m2' : 'W/m2';
}

function refuseMissing(columns: Partial<Record<Quantity, ColumnUse>>, names: string[]): void {
  const sun = columns.ghi ?? (columns.dni && columns.dhi);
  if (columns.dryBulb && sun) return;
  const shown = names.slice(0, 8).join(', ');
  throw new InputError(
    problem(say('where.columns'), {
      message: say(columns.dryBulb ? 'column.noIrradiance' : 'column.noTemperature'),
      value: verbatim(shown.length > 120 ? `${shown.slice(0, 117)}...` : shown),
      fix: say('column.byHand'),
    }),
  );
}
