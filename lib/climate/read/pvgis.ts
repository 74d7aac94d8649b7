import { InputError, problem, verbatim } from '../../problem/index.ts';
import type { Text } from '../../problem/index.ts';
import { rangeText, say } from '../say.ts';
import { checkWidths, delimiterOf, firstLines, splitRows } from './delimited.ts';
import type { Rows } from './delimited.ts';
import { findColumns, readNamed } from './named.ts';
import { readStamp } from './stamps.ts';
import { at } from './text.ts';
import type { Quantity, RawYear, WeatherSite } from './types.ts';

/** Lines that the part above the heading may have. */
const MOST_TOP_LINES = 60;
const STAMP = 'time(UTC)';

/** Columns in use, by their names in the format. */
const columnNames: Readonly<Record<Quantity, string>> = {
  ghi: 'G(h)',
  dni: 'Gb(n)',
  dhi: 'Gd(h)',
  dryBulb: 'T2m',
  wind: 'WS10m',
};

/** Whether a text has the heading of a PVGIS typical year. */
export function isPvgis(text: string): boolean {
  return headingLine(firstLines(text, MOST_TOP_LINES)) >= 0;
}

function headingLine(lines: string[]): number {
  return lines.findIndex((line) => /^"?time ?\(UTC\)/i.test(line) && line.includes('G(h)'));
}

/**
 * Reads a typical year of the European Commission's PVGIS (versions 5.1 to 5.3): lines about the
 * place, a table of month and year, hourly rows in UTC, a legend.
 *
 * A value holds for the instant of its stamp plus the file's irradiance time offset (0 where the
 * file has none, as in older versions); it is taken as the mean of the hour centred on it.
 * @throws InputError naming the line and column
 * @see "PVGIS user manual", Joint Research Centre: typical meteorological year
 */
export function readPvgis(text: string, site?: WeatherSite): RawYear {
  const top = firstLines(text, MOST_TOP_LINES);
  const headingAt = headingLine(top);
  const delimiter = delimiterOf(top[headingAt]);
  const heading = splitRows(top.slice(0, headingAt + 1).join('\n'), delimiter, headingAt).cells[0];
  const notes: Text[] = [];
  const place = readPlace(top.slice(0, headingAt), notes);

  const columns = findColumns(heading, Object.values(columnNames), headingAt + 1);
  const rows = dropLegend(splitRows(text, delimiter, headingAt + 1), heading.length);
  checkWidths(rows, heading.length, Object.values(columns));
  const { latitude, longitude, elevation, timeOffset } = place;
  return {
    source: {
      kind: 'pvgis',
      name: `PVGIS ${Math.abs(latitude)} ${latitude < 0 ? 'S' : 'N'}, ${Math.abs(longitude)} ${longitude < 0 ? 'W' : 'E'}`,
      note: sourceNote(top),
    },
    latitude,
    longitude,
    elevation,
    standardOffset: site?.standardOffset ?? Math.round(longitude / 15),
    utcOffset: 0,
    stampToStart: timeOffset - 0.5,
    stamps: readStamps(rows),
    lines: Uint32Array.from(rows.lines),
    values: readNamed(rows, delimiter, columnNames, columns),
    names: columnNames,
    notes,
  };
}

interface Place {
  latitude: number;
  longitude: number;
  elevation: number;
  /** Hours from a stamp to the instant its irradiance holds for. */
  timeOffset: number;
}

function readPlace(lines: string[], notes: Text[]): Place {
  const read = (what: string, from: number, to: number): number | undefined => {
    const index = lines.findIndex((l) => l.trim().toLowerCase().startsWith(what.toLowerCase()));
    if (index < 0) return undefined;
    const text = lines[index].slice(lines[index].indexOf(':') + 1).trim();
    const value = Number(/^[-+\d.]+/.exec(text)?.[0] ?? NaN);
    if (value >= from && value <= to) return value;
    const message = say('line.notInRange');
    const texts = { message, allowed: rangeText(from, to), fix: say('line.fix') };
    throw new InputError(problem(say('where.part', { line: index + 1, part: what }), texts, text));
  };
  const needed = (what: string, from: number, to: number): number => {
    const value = read(what, from, to);
    if (value !== undefined) return value;
    const message = say('line.absent', { name: what });
    const fix = say('line.absentFix');
    throw new InputError(problem(say('where.aboveHeading'), { message, fix }));
  };
  const elevation = read('Elevation', -430, 9000);
  if (elevation === undefined) notes.push(say('note.noElevation'));
  return {
    latitude: needed('Latitude', -90, 90),
    longitude: needed('Longitude', -180, 180),
    elevation: elevation ?? 0,
    timeOffset: read('Irradiance Time Offset', -1, 1) ?? 0,
  };
}

/** Cuts the lines of explanation at the end: fewer cells than the heading and not led by a digit. */
function dropLegend(rows: Rows, columns: number): Rows {
  const legend = rows.cells.findIndex((c) => c.length < columns && !/^\s*\d/.test(c[0]));
  if (legend < 0) return rows;
  return { cells: rows.cells.slice(0, legend), lines: rows.lines.slice(0, legend) };
}

function readStamps(rows: Rows): Float64Array {
  return Float64Array.from(rows.cells, (cells, i) => {
    const hours = readStamp(cells[0], 'ymd');
    if (hours !== undefined) return hours;
    const message = say('cell.notDateTime');
    const texts = { message, allowed: verbatim('YYYYMMDD:HHMM'), fix: say('cell.stampFix') };
    throw new InputError(problem(at(rows.lines[i], STAMP), texts, cells[0]));
  });
}

/** The publisher, with the years of the months from the table above the heading. */
function sourceNote(lines: string[]): Text {
  const years = lines
    .flatMap((line) => /^\d{1,2}[,;\t](\d{4})\b/.exec(line)?.[1] ?? [])
    .map(Number);
  if (years.length === 0) return say('source.pvgis');
  return say('source.pvgisYears', { first: Math.min(...years), last: Math.max(...years) });
}
