import Papa from 'papaparse';
import { InputError, figureText, problem } from '../../problem/index.ts';
import { say } from '../say.ts';
import { at, fileProblem } from './text.ts';

/** The rows of a delimited text, blank lines left out. */
export interface Rows {
  cells: string[][];
  /** Line of each row in the file, from 1. */
  lines: number[];
}

/**
 * Cuts a clean text into rows and cells from a line on.
 * @param skip lines to leave out at the top
 * @throws InputError for quotes that are not closed
 */
export function splitRows(text: string, delimiter: string, skip: number): Rows {
  let body = text.slice(lineOffset(text, skip));
  if (delimiter === ' ') body = body.replace(/^[ \t]+|[ \t]+$/gm, '').replace(/[ \t]+/g, '\t');
  const parsed = Papa.parse<string[]>(body, {
    delimiter: delimiter === ' ' ? '\t' : delimiter,
    newline: '\n',
  });
  const quote = parsed.errors.find((e) => e.type === 'Quotes');
  if (quote) {
    const texts = { message: say('file.quote'), fix: say('file.quoteFix') };
    throw new InputError(problem(at(skip + (quote.row ?? 0) + 1), texts));
  }
  const rows: Rows = { cells: [], lines: [] };
  parsed.data.forEach((cells, i) => {
    if (cells.every((cell) => cell.trim() === '')) return;
    rows.cells.push(cells);
    rows.lines.push(skip + i + 1);
  });
  return rows;
}

/** First lines of a text, at most `count` of them. */
export function firstLines(text: string, count: number): string[] {
  return text.slice(0, lineOffset(text, count)).split('\n', count);
}

/** The delimiter that stands most often in a heading. */
export function delimiterOf(heading: string): ',' | ';' | '\t' {
  const count = (mark: string) => heading.split(mark).length;
  if (count(';') > count(',') && count(';') >= count('\t')) return ';';
  return count('\t') > count(',') ? '\t' : ',';
}

/** Whether numbers are written with a decimal comma: only possible where the delimiter is not one. */
export function decimalOf(rows: readonly string[][], delimiter: string): '.' | ',' {
  if (delimiter === ',') return '.';
  const comma = /^\s*-?\d*,\d+\s*$/;
  return rows.slice(0, 500).some((cells) => cells.some((cell) => comma.test(cell))) ? ',' : '.';
}

/**
 * Refuses rows with more cells than the heading (or, where `headingWidth` is undefined, than the
 * first row), and rows that end before the last column in use.
 * @throws InputError naming the first such line
 */
export function checkWidths(rows: Rows, headingWidth: number | undefined, columns: number[]): void {
  if (rows.cells.length === 0) {
    throw fileProblem(say('file.onlyHeading'), say('file.onlyHeadingFix'));
  }
  const most = headingWidth ?? rows.cells[0].length;
  const least = Math.max(...columns) + 1;
  const odd = rows.cells.findIndex((cells) => cells.length < least || width(cells) > most);
  if (odd < 0) return;
  const has = width(rows.cells[odd]);
  const many = has > most;
  throw new InputError(
    problem(at(rows.lines[odd]), {
      message: say(many ? 'file.tooMany' : 'file.tooFew'),
      value: figureText(has),
      allowed: figureText(Math.max(most, least)),
      fix: say(many ? 'file.tooManyFix' : 'file.tooFewFix'),
    }),
  );
}

/** Cells up to the last that is not blank. */
export function width(cells: readonly string[]): number {
  let n = cells.length;
  while (n > 0 && cells[n - 1].trim() === '') n--;
  return n;
}

function lineOffset(text: string, lines: number): number {
  let offset = 0;
  for (let i = 0; i < lines; i++) {
    const end = text.indexOf('\n', offset);
    if (end < 0) return text.length;
    offset = end + 1;
  }
  return offset;
}
