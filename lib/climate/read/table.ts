import { InputError, problem, verbatim } from '../../problem/index.ts';
import type { Problem, Text } from '../../problem/index.ts';
import { rangeText, say } from '../say.ts';
import { readColumn, unitsOf } from './columns.ts';
import { checkWidths, firstLines, splitRows } from './delimited.ts';
import type { Rows } from './delimited.ts';
import { readClock, readStamp, remembered, stampHours } from './stamps.ts';
import { at, fileProblem } from './text.ts';
import { QUANTITIES } from './types.ts';
import type { Quantity, RawYear, WeatherSite, TableLayout, TimeColumns } from './types.ts';

const stampToStart = { end: -1, middle: -0.5, start: 0 } as const;

/**
 * Reads hourly rows by a layout.
 * @throws InputError for a layout or site out of range, and naming line and column for the rows
 */
export function readTable(
  text: string,
  layout: TableLayout,
  site: WeatherSite | undefined,
  fileName = 'Table of hourly weather',
): RawYear {
  checkLayout(layout);
  const place = checkSite(site);
  const rows = splitRows(text, layout.delimiter, layout.headerLines);
  if (rows.cells.length === 0) {
    throw fileProblem(say('file.noRows'), say('file.noRowsFix'));
  }
  const used = QUANTITIES.flatMap((q) => layout.columns[q]?.column ?? []);
  checkWidths(rows, undefined, [...used, ...timeIndices(layout.time)]);
  const names = columnNames(text, layout, rows.cells[0].length);
  const values: RawYear['values'] = {};
  for (const quantity of QUANTITIES) {
    const use = layout.columns[quantity];
    if (!use) continue;
    const spec = { ...use, quantity, name: names[use.column] };
    values[quantity] = readColumn(rows, spec, layout.decimal);
  }
  const standardOffset = place.standardOffset ?? Math.round(place.longitude / 15);
  const counted = layout.time === undefined;
  return {
    source: { kind: 'table', name: fileName, note: say('source.table') },
    latitude: place.latitude,
    longitude: place.longitude,
    elevation: place.elevation,
    standardOffset,
    utcOffset: layout.utcOffset === 'site' ? standardOffset : layout.utcOffset,
    stampToStart: counted ? 0 : stampToStart[layout.stamp],
    stamps: layout.time && readStamps(rows, layout.time, names),
    lines: Uint32Array.from(rows.lines),
    values,
    names: Object.fromEntries(
      QUANTITIES.flatMap((q) => {
        const use = layout.columns[q];
        return use ? [[q, names[use.column]]] : [];
      }),
    ),
    notes: [],
  };
}

/** Names of a table's columns: its last heading lines joined, or `column 1` and so on. */
export function columnNames(text: string, layout: TableLayout, columns: number): string[] {
  const top = firstLines(text, layout.headerLines).join('\n');
  const heading = splitRows(top, layout.delimiter, 0)
    .cells.slice(-2)
    .filter((cells) => isHeading(cells, columns));
  return Array.from({ length: columns }, (_, i) => {
    const name = heading
      .map((cells) => (cells[i] ?? '').trim())
      .filter(Boolean)
      .join(' ');
    return name || `${i + 1}`;
  });
}

/** A line of words for most of the columns; lines about the place hold numbers or few cells. */
function isHeading(cells: string[], columns: number): boolean {
  const words = cells.filter((cell) => cell.trim() !== '' && !Number.isFinite(Number(cell)));
  return words.length > columns / 2 && cells.length <= columns + 1;
}

/** Reads the time columns, as hours since 1 January in a year of 366 days. */
function readStamps(rows: Rows, time: TimeColumns, names: string[]): Float64Array {
  const hoursOf = rowReader(time);
  return Float64Array.from(rows.cells, (cells, i) => {
    const hours = hoursOf(cells);
    if (hours !== undefined) return hours;
    const indices = timeIndices(time);
    const where = at(rows.lines[i], indices.map((c) => names[c]).join(', '));
    const texts = {
      message: say('cell.notDateTime'),
      allowed: say(`cell.form.${time.kind === 'parts' ? 'parts' : time.order}`),
      fix: say('cell.orderFix'),
    };
    throw new InputError(problem(where, texts, indices.map((c) => cells[c]).join(' ')));
  });
}

/** Reader of a row's time, hours as in stampHours. */
function rowReader(time: TimeColumns): (cells: string[]) => number | undefined {
  const clockOf = remembered(readClock);
  if (time.kind === 'stamp') return (cells) => readStamp(cells[time.column], time.order);
  if (time.kind === 'date-time') {
    const { date, order } = time;
    // A date column of a spreadsheet may carry a midnight of its own.
    const dayOf = remembered((text) => readStamp(`${text.trim().split(/[ T]/)[0]} 0`, order));
    return (cells) => {
      const day = dayOf(cells[date]);
      const hour = clockOf(cells[time.time]);
      return day === undefined || hour === undefined ? undefined : day + hour;
    };
  }
  const { month, day, hour, minute } = time;
  return (cells) => {
    const clock = clockOf(cells[hour]);
    const minutes = minute === undefined ? 0 : Number(cells[minute]);
    if (clock === undefined || !(minutes >= 0 && minutes <= 60)) return undefined;
    return stampHours(Number(cells[month]), Number(cells[day]), clock + minutes / 60);
  };
}

/** Columns that hold the time. */
export function timeIndices(time: TimeColumns | undefined): number[] {
  if (!time) return [];
  if (time.kind === 'stamp') return [time.column];
  if (time.kind === 'date-time') return [time.date, time.time];
  const { month, day, hour, minute } = time;
  return minute === undefined ? [month, day, hour] : [month, day, hour, minute];
}

function checkLayout(layout: TableLayout): void {
  const problems: Problem[] = [];
  const need = (ok: boolean, path: string, value: unknown, allowed: Text) => {
    const texts = { message: say('layout.notPossible'), allowed, fix: say('layout.fix') };
    if (!ok) problems.push(problem(`table.${path}`, texts, value));
  };
  const { headerLines, delimiter, decimal, utcOffset, stamp } = layout;
  const whole = (n: number) => Number.isInteger(n) && n >= 0;
  need(whole(headerLines) && headerLines <= 1000, 'headerLines', headerLines, rangeText(0, 1000));
  need(
    [',', ';', '\t', '|', ' '].includes(delimiter),
    'delimiter',
    delimiter,
    say('layout.delimiters'),
  );
  need(
    decimal === '.' || (decimal === ',' && delimiter !== ','),
    'decimal',
    decimal,
    say('layout.decimals'),
  );
  need(stamp in stampToStart, 'stamp', stamp, say('layout.stamps'));
  const offset = utcOffset === 'site' || (utcOffset >= -12 && utcOffset <= 14);
  need(offset, 'utcOffset', utcOffset, say('layout.offset'));
  for (const column of timeIndices(layout.time)) {
    need(whole(column), 'time', column, say('layout.fromZero'));
  }
  for (const quantity of QUANTITIES) {
    const use = layout.columns[quantity];
    if (!use) continue;
    need(whole(use.column), `columns.${quantity}.column`, use.column, say('layout.fromZero'));
    const units = unitsOf[quantity];
    need(
      units.includes(use.unit),
      `columns.${quantity}.unit`,
      use.unit,
      verbatim(units.join(', ')),
    );
  }
  if (problems.length) throw new InputError(problems);
  if (!layout.columns.dryBulb) refuseMissing('dryBulb');
}

function refuseMissing(quantity: Quantity): never {
  const message = say('column.notChosen', { quantity: say(`quantity.${quantity}`) });
  const fix = say('column.notChosenFix');
  throw new InputError(problem(`table.columns.${quantity}`, { message, fix }));
}

function checkSite(site: WeatherSite | undefined): WeatherSite {
  if (!site) {
    const texts = { message: say('site.none'), fix: say('site.noneFix') };
    throw new InputError(problem('site', texts));
  }
  const limits: [keyof WeatherSite, number, number][] = [
    ['latitude', -90, 90],
    ['longitude', -180, 180],
    ['elevation', -430, 9000],
    ['standardOffset', -12, 14],
  ];
  for (const [key, from, to] of limits) {
    const value = site[key];
    if (key === 'standardOffset' && value === undefined) continue;
    if (typeof value === 'number' && value >= from && value <= to) continue;
    const message = say('site.outOfRange');
    const texts = { message, allowed: rangeText(from, to), fix: say('site.fix') };
    throw new InputError(problem(`site.${key}`, texts, value));
  }
  return site;
}
