import { InputError } from '../../problem/index.ts';
import type { TypicalYear } from '../types.ts';
import { asCheck, assemble } from './assemble.ts';
import type { SplitGlobal } from './finish.ts';
import { firstLines, splitRows } from './delimited.ts';
import { guessTable } from './guess.ts';
import { readGuessed } from './read.ts';
import { columnNames, readTable, timeIndices } from './table.ts';
import { cleanText } from './text.ts';
import { QUANTITIES } from './types.ts';
import type { Check, Quantity, WeatherSite, TableLayout } from './types.ts';

const SHOWN_ROWS = 12;

/** A column of a table as an import screen shows it. */
export interface TableColumn {
  /** Counted from 0. */
  index: number;
  name: string;
  /** What the layout takes it for. */
  use?: Quantity | 'time';
}

/** What a table gives when it is read by a layout. */
export interface TablePreview {
  /** The layout used; undefined where none was given and none could be guessed. */
  layout: TableLayout | undefined;
  columns: TableColumn[];
  /** The first rows, as text. */
  rows: string[][];
  /** Present where no check failed. */
  year?: TypicalYear;
  checks: Check[];
}

/**
 * Reads a table as far as it can be read; a failed check takes the place of an InputError.
 * @param layout guessed where undefined
 */
export function previewTable(
  text: string,
  layout: TableLayout | undefined,
  site: WeatherSite | undefined,
  options: { split?: SplitGlobal; fileName?: string } = {},
): TablePreview {
  let used = layout;
  let clean = '';
  try {
    clean = cleanText(text);
    if (used) {
      const assembly = assemble(readTable(clean, used, site, options.fileName), options.split);
      return { layout: used, ...firstRows(clean, used), ...assembly };
    }
    const guess = guessTable(clean);
    used = guess.layout;
    const read = readGuessed(clean, guess, { site, ...options });
    return { layout: read.layout, ...firstRows(clean, read.layout), ...read.assembly };
  } catch (error) {
    const checks = [asCheck('file', error)];
    const shown = used && clean ? tryFirstRows(clean, used) : { columns: [], rows: [] };
    return { layout: used, ...shown, checks };
  }
}

function firstRows(text: string, layout: TableLayout): Pick<TablePreview, 'columns' | 'rows'> {
  const top = firstLines(text, layout.headerLines + 4 * SHOWN_ROWS).join('\n');
  const rows = splitRows(top, layout.delimiter, layout.headerLines).cells.slice(0, SHOWN_ROWS);
  const count = Math.max(0, ...rows.map((cells) => cells.length));
  const times = timeIndices(layout.time);
  const columns = columnNames(text, layout, count).map((name, index): TableColumn => {
    const quantity = QUANTITIES.find((q) => layout.columns[q]?.column === index);
    const use = quantity ?? (times.includes(index) ? 'time' : undefined);
    return use ? { index, name, use } : { index, name };
  });
  return { columns, rows };
}

/** The first rows where they can be cut at all. */
function tryFirstRows(text: string, layout: TableLayout): Pick<TablePreview, 'columns' | 'rows'> {
  try {
    return firstRows(text, layout);
  } catch (error) {
    if (error instanceof InputError) return { columns: [], rows: [] };
    throw error;
  }
}
