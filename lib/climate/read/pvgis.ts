import { InputError, showValue } from '../../problem/index.ts';
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
  const notes: string[] = [];
  const place = readPlace(top.slice(0, headingAt), notes);

  const columns = findColumns(heading, Object.values(columnNames), headingAt + 1);
  const rows = dropLegend(splitRows(text, delimiter, headingAt + 1), heading.length);
  checkWidths(rows, heading.length, Object.values(columns));
  const { latitude, longitude, elevation, timeOffset } = place;
  return {
    source: {
      kind: 'pvgis',
      name: `PVGIS ${Math.abs(latitude)} ${latitude < 0 ? 'S' : 'N'}, ${Math.abs(longitude)} ${longitude < 0 ? 'W' : 'E'}`,
      note: `Typical meteorological year of PVGIS, European Commission${monthYears(top)}.`,
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

function readPlace(lines: string[], notes: string[]): Place {
  const read = (what: string, from: number, to: number): number | undefined => {
    const index = lines.findIndex((l) => l.trim().toLowerCase().startsWith(what.toLowerCase()));
    if (index < 0) return undefined;
    const text = lines[index].slice(lines[index].indexOf(':') + 1).trim();
    const value = Number(/^[-+\d.]+/.exec(text)?.[0] ?? NaN);
    if (value >= from && value <= to) return value;
    throw new InputError({
      path: `line ${index + 1}, ${what}`,
      message: 'is not a number in range',
      value: showValue(text),
      allowed: `${from} to ${to}`,
      fix: 'Correct the line.',
    });
  };
  const needed = (what: string, from: number, to: number): number => {
    const value = read(what, from, to);
    if (value !== undefined) return value;
    throw new InputError({
      path: 'lines above the heading',
      message: `there is no line "${what} (decimal degrees):"`,
      fix: 'Put it back as it was published.',
    });
  };
  const elevation = read('Elevation', -430, 9000);
  if (elevation === undefined) notes.push('The file has no elevation: 0 m was taken.');
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
    throw new InputError({
      path: at(rows.lines[i], STAMP),
      message: 'is not a date and time',
      value: showValue(cells[0]),
      allowed: 'YYYYMMDD:HHMM',
      fix: 'Correct it, or remove the line if it is not an hourly row.',
    });
  });
}

/** `, months of 2006 to 2020` from the table above the heading. */
function monthYears(lines: string[]): string {
  const years = lines
    .flatMap((line) => /^\d{1,2}[,;\t](\d{4})\b/.exec(line)?.[1] ?? [])
    .map(Number);
  return years.length ? `, months of ${Math.min(...years)} to ${Math.max(...years)}` : '';
}
