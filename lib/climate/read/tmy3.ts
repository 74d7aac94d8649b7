import { InputError, problem } from '../../problem/index.ts';
import type { Text } from '../../problem/index.ts';
import { rangeText, say } from '../say.ts';
import { checkWidths, delimiterOf, firstLines, splitRows } from './delimited.ts';
import type { Rows } from './delimited.ts';
import { findColumns, readNamed } from './named.ts';
import { readClock, readStamp, remembered } from './stamps.ts';
import { at } from './text.ts';
import type { Quantity, RawYear } from './types.ts';

const DATE = 'Date (MM/DD/YYYY)';
const TIME = 'Time (HH:MM)';

/** Columns in use, by their names in the format. */
const columnNames: Readonly<Record<Quantity, string>> = {
  ghi: 'GHI (W/m^2)',
  dni: 'DNI (W/m^2)',
  dhi: 'DHI (W/m^2)',
  dryBulb: 'Dry-bulb (C)',
  wind: 'Wspd (m/s)',
};

/** Whether a text has the heading of a TMY3 file. */
export function isTmy3(text: string): boolean {
  return firstLines(text, 5).some((line) => line.includes(DATE) && line.includes('GHI'));
}

/**
 * Reads a TMY3 file: a line about the station, a heading, hourly rows in local standard time with
 * stamps at the end of each hour. Wilcox & Marion (2008), "Users Manual for TMY3 Data Sets",
 * NREL/TP-581-43156, tables 3-1 to 3-3.
 * @throws InputError naming the line and column
 */
export function readTmy3(text: string): RawYear {
  const top = firstLines(text, 5);
  const headingAt = top.findIndex((line) => line.includes(DATE));
  const delimiter = delimiterOf(top[headingAt]);
  const [heading] = splitRows(top.slice(0, headingAt + 1).join('\n'), delimiter, headingAt).cells;
  const rows = splitRows(text, delimiter, headingAt + 1);
  const station = splitRows(top[0], delimiter, 0).cells[0] ?? [];
  const place = readStation(station, headingAt);

  const wanted = [DATE, TIME, ...Object.values(columnNames)];
  const columns = findColumns(heading, wanted, headingAt + 1);
  checkWidths(rows, heading.length, Object.values(columns));
  return {
    source: { kind: 'tmy3', name: place.name, note: sourceNote(rows, columns[DATE]) },
    latitude: place.latitude,
    longitude: place.longitude,
    elevation: place.elevation,
    standardOffset: place.utcOffset,
    utcOffset: place.utcOffset,
    stampToStart: -1,
    stamps: readStamps(rows, columns[DATE], columns[TIME]),
    lines: Uint32Array.from(rows.lines),
    values: readNamed(rows, delimiter, columnNames, columns),
    names: columnNames,
    notes: [],
  };
}

interface Station {
  name: string;
  latitude: number;
  longitude: number;
  elevation: number;
  utcOffset: number;
}

type StationPart = 'offset' | 'latitude' | 'longitude' | 'elevation';

/** The line above the heading: code, name, state, UTC offset, latitude, longitude, elevation. */
function readStation(cells: string[], headingAt: number): Station {
  if (headingAt === 0) {
    throw new InputError(
      problem(at(1), {
        message: say('line.noStation'),
        allowed: say('line.stationForm'),
        fix: say('line.noStationFix'),
      }),
    );
  }
  const number = (index: number, what: StationPart, from: number, to: number): number => {
    const text = (cells[index] ?? '').trim();
    const value = text === '' ? NaN : Number(text.replace(',', '.'));
    if (value >= from && value <= to) return value;
    const where = say('where.part', { line: 1, part: say(`station.${what}`) });
    const message = say('line.notInRange');
    const texts = { message, allowed: rangeText(from, to), fix: say('line.stationFix') };
    throw new InputError(problem(where, texts, text));
  };
  const name = titleCase((cells[1] ?? '').trim());
  const state = (cells[2] ?? '').trim();
  return {
    name: state ? `${name}, ${state}` : name,
    utcOffset: number(3, 'offset', -12, 14),
    latitude: number(4, 'latitude', -90, 90),
    longitude: number(5, 'longitude', -180, 180),
    elevation: number(6, 'elevation', -430, 9000),
  };
}

/** `DENVER INTL AP` to `Denver Intl AP`; the trade's AP and ARP stay. */
function titleCase(name: string): string {
  return name
    .toLowerCase()
    .replace(/(^|[\s-])([a-z])/g, (whole: string) => whole.toUpperCase())
    .replace(/\bA(r?)p\b/, (whole) => whole.toUpperCase());
}

function readStamps(rows: Rows, date: number, time: number): Float64Array {
  const dayOf = remembered((text) => readStamp(`${text} 0`, 'mdy'));
  const clockOf = remembered(readClock);
  return Float64Array.from(rows.cells, (cells, i) => {
    const hours = clockOf(cells[time]);
    const day = dayOf(cells[date]);
    if (hours !== undefined && day !== undefined) return day + hours;
    const noDate = day === undefined;
    const texts = {
      message: say(noDate ? 'cell.notDate' : 'cell.notTime'),
      allowed: say(noDate ? 'cell.dateForm' : 'cell.timeForm'),
      fix: say('cell.stampFix'),
    };
    const where = at(rows.lines[i], noDate ? DATE : TIME);
    throw new InputError(problem(where, texts, cells[noDate ? date : time]));
  });
}

function sourceNote(rows: Rows, date: number): Text {
  const dates = new Set(rows.cells.map((cells) => cells[date]));
  const years = [...dates].map((text) => Number(/\d{4}/.exec(text)?.[0])).filter(Boolean);
  if (years.length === 0) return say('source.tmy3');
  return say('source.tmy3Years', { first: Math.min(...years), last: Math.max(...years) });
}
