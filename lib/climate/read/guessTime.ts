import type { Text } from '../../problem/index.ts';
import { say } from '../say.ts';
import { digitGroups, readClock, readStamp } from './stamps.ts';
import type { DateOrder, TableLayout, TimeColumns } from './types.ts';

/** What a table's stamps say about themselves. */
export interface TimeGuess {
  columns: TimeColumns | undefined;
  /** Undefined where the stamps do not tell. */
  stamp: TableLayout['stamp'] | undefined;
  utcOffset: number | undefined;
  notes: Text[];
}

/**
 * Finds the time columns of a table, the moment of the hour they mark and their zone.
 * @param names lower case
 * @param top the lines above the rows
 */
export function guessTime(names: string[], rows: string[][], top: string): TimeGuess {
  const columns = timeColumns(names, rows);
  const notes = columns ? [] : [say('note.noTime')];
  const clocks = columns ? rows.map((cells) => clockOf(cells, columns)) : [];
  const stamp = stampConvention(clocks);
  return { columns, stamp, utcOffset: zoneOf(columns, names, rows, top), notes };
}

function timeColumns(names: string[], rows: string[][]): TimeColumns | undefined {
  const parts = partColumns(names);
  if (parts) return parts;
  const sample = rows.slice(0, 50);
  const every = (test: (text: string) => boolean, column: number) =>
    sample.every((cells) => test(cells[column] ?? ''));
  const candidates = names.map((_, i) => i).slice(0, 12);
  for (const column of candidates) {
    const order = dateOrder(rows.map((cells) => cells[column] ?? ''));
    if (!order) continue;
    if (every((text) => readStamp(text, order) !== undefined, column)) {
      return { kind: 'stamp', column, order };
    }
    const time = [column + 1, ...candidates].find(
      (c) => c !== column && every((text) => text.includes(':') && isClock(text), c),
    );
    const hour = time ?? names.findIndex((name) => /^hours?\b|^time\b|^hr\b/.test(name));
    if (hour >= 0 && hour !== column && every(isClock, hour)) {
      return { kind: 'date-time', date: column, time: hour, order };
    }
  }
  return undefined;
}

function isClock(text: string): boolean {
  const hours = readClock(text);
  return hours !== undefined && hours <= 24;
}

/** Month, day and hour in columns of their own, by name. */
function partColumns(names: string[]): TimeColumns | undefined {
  const find = (pattern: RegExp) => names.findIndex((name) => pattern.test(name));
  const month = find(/^(month|mo|mm)\b/);
  const day = find(/^(day|dd)\b(?!.*(year|week))/);
  const hour = find(/^(hour|hr|hh|time)\b(?!.*year)/);
  const minute = find(/^(minute|min|minutes)\b/);
  if (month < 0 || day < 0 || hour < 0) return undefined;
  return minute < 0
    ? { kind: 'parts', month, day, hour }
    : { kind: 'parts', month, day, hour, minute };
}

/** Order of the date's numbers, by which of them pass 12; undefined where it is not a date. */
function dateOrder(texts: string[]): DateOrder | undefined {
  const first = texts[0].trim();
  if (/^(19|20)\d{6}(\d{2}|\d{4})?\b/.test(first)) return 'ymd';
  if (/^\d{4}\D\d{1,2}\D\d{1,2}/.test(first)) return 'ymd';
  const twoPart = /^\d{1,2}[/.-]\d{1,2}\.?(\s|$)/.test(first);
  if (!twoPart && !/^\d{1,2}[/.-]\d{1,2}[/.-]\d{2,4}/.test(first)) return undefined;
  const groups = texts.map(digitGroups);
  const passes = (at: number) => groups.some((g) => Number(g[at]) > 12);
  const dayFirst = passes(0) && !passes(1);
  if (twoPart) return dayFirst ? 'dm' : 'md';
  return dayFirst ? 'dmy' : 'mdy';
}

function clockOf(cells: string[], columns: TimeColumns): number | undefined {
  if (columns.kind === 'stamp') {
    const hours = readStamp(cells[columns.column] ?? '', columns.order);
    // Midnight at the end of a day and at the start of the next are the same number here.
    return /\b24:00/.test(cells[columns.column] ?? '')
      ? 24
      : hours === undefined
        ? hours
        : hours % 24;
  }
  if (columns.kind === 'date-time') return readClock(cells[columns.time] ?? '');
  const minute = columns.minute === undefined ? 0 : Number(cells[columns.minute]);
  const hour = readClock(cells[columns.hour] ?? '');
  return hour === undefined ? undefined : hour + minute / 60;
}

/** A clock that reaches 24 marks ends of hours; one at half past marks their middles. */
function stampConvention(clocks: (number | undefined)[]): TableLayout['stamp'] | undefined {
  const known = clocks.filter((c) => c !== undefined);
  if (known.length === 0) return undefined;
  if (known.some((c) => c === 24)) return 'end';
  const half = known.filter((c) => Math.abs((c % 1) - 0.5) < 0.01).length;
  return half > 0.9 * known.length ? 'middle' : undefined;
}

/** The zone where the names, the lines above or the stamps themselves say it. */
function zoneOf(
  columns: TimeColumns | undefined,
  names: string[],
  rows: string[][],
  top: string,
): number | undefined {
  const stamp = columns?.kind === 'stamp' ? (rows[0][columns.column] ?? '') : '';
  if (/\d\s*Z$/.test(stamp.trim())) return 0;
  const written = /:\d{2}\s*([+-])(\d{2}):?(\d{2})$/.exec(stamp.trim());
  if (written) {
    const hours = Number(written[2]) + Number(written[3]) / 60;
    return written[1] === '-' ? -hours : hours;
  }
  const said = `${names.join(' ')} ${top}`;
  const offset = /\b(?:utc|gmt)\s*([+-]\s*\d{1,2})(?::(\d{2}))?/i.exec(said);
  if (offset) {
    const hours = Number(offset[1].replace(/\s/g, ''));
    const minutes = Number(offset[2] ?? 0) / 60;
    return hours < 0 ? hours - minutes : hours + minutes;
  }
  return /\b(utc|gmt)\b/i.test(said) ? 0 : undefined;
}
