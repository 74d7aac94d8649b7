import { InputError } from '../../problem/index.ts';
import type { TypicalYear } from '../types.ts';
import { assemble } from './assemble.ts';
import type { Assembly } from './assemble.ts';
import type { SplitGlobal } from './finish.ts';
import { guessTable } from './guess.ts';
import type { TableGuess } from './guess.ts';
import { isPvgis, readPvgis } from './pvgis.ts';
import { settleClock } from './settle.ts';
import { readTable } from './table.ts';
import { cleanText } from './text.ts';
import { findTimeShift } from './timeShift.ts';
import { isTmy3, readTmy3 } from './tmy3.ts';
import type { RawYear, WeatherSite, TableLayout } from './types.ts';

export interface ReadOptions {
  /** Shown as the name of a table. */
  fileName?: string;
  /** How to read the text; found from the text where absent. */
  table?: TableLayout;
  /** The place; needed for tables, and for the time zone of a PVGIS file. */
  site?: WeatherSite;
  /** Makes direct and diffuse irradiance where the file has global alone; refused where absent. */
  split?: SplitGlobal;
}

/**
 * Reads a year of hourly weather: a TMY3 file, a PVGIS typical year, or another delimited text by
 * `options.table` or by its names, units and values. What was filled, cut, turned or doubted is
 * told in `messages`.
 * @throws InputError with one problem, naming line or column and the remedy
 */
export function readTypicalYear(text: string, options: ReadOptions = {}): TypicalYear {
  const { year, checks } = read(cleanText(text), options);
  const failure = checks.find((check) => check.level === 'error');
  if (failure?.problem) throw new InputError(failure.problem);
  return year!;
}

/** Format of a text by its content. */
export function formatOf(clean: string): 'tmy3' | 'pvgis' | 'table' {
  if (isTmy3(clean)) return 'tmy3';
  return isPvgis(clean) ? 'pvgis' : 'table';
}

function read(clean: string, options: ReadOptions): Assembly {
  const { table, site, split, fileName } = options;
  if (table) return assemble(readTable(clean, table, site, fileName), split);
  const format = formatOf(clean);
  if (format === 'tmy3') return assemble(readTmy3(clean), split);
  if (format === 'pvgis') return assemble(readPvgis(clean, site), split);
  return readGuessed(clean, guessTable(clean), options).assembly;
}

/** A table read by a guess, with the layout that was used in the end. */
export interface GuessedTable {
  layout: TableLayout;
  assembly: Assembly;
}

/** Reads by a guess, and lets the sun settle what the text leaves open about its clock. */
export function readGuessed(clean: string, guess: TableGuess, options: ReadOptions): GuessedTable {
  const { site, split, fileName } = options;
  const raw = readTable(clean, guess.layout, site, fileName);
  raw.notes.push(...guess.notes);
  const first = { layout: guess.layout, assembly: assemble(raw, split) };
  if (!first.assembly.year) return first;
  const settled = settleClock(guess, raw.standardOffset, findTimeShift(first.assembly.year));
  if (!settled) return first;
  const better: RawYear = readTable(clean, settled.layout, site, fileName);
  better.notes.push(...guess.notes, settled.note);
  return { layout: settled.layout, assembly: assemble(better, split) };
}
