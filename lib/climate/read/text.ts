import { InputError } from '../../problem/index.ts';

const MOST_CHARACTERS = 40_000_000;
const LONGEST_LINE = 20_000;

/**
 * The text of a weather file made plain: no byte order mark, lines ended by a line feed.
 * @throws InputError for an empty, binary or oversized text, and for a line too long to be a row
 */
export function cleanText(text: string): string {
  if (text.length > MOST_CHARACTERS) {
    throw fileProblem(`has ${thousands(text.length)} characters`, 'Give one year of hourly rows.');
  }
  let clean = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (clean.trim() === '') throw fileProblem('is empty', 'Choose a file with hourly rows.');
  if (looksBinary(clean)) {
    throw fileProblem(
      'is not plain text',
      'Unpack it or export it as a delimited text in UTF-8 first.',
    );
  }
  if (clean.includes('\r')) clean = clean.replace(/\r\n?/g, '\n');
  refuseLongLines(clean);
  return clean;
}

/** A problem of the file as a whole. */
export function fileProblem(message: string, fix: string): InputError {
  return new InputError({ path: 'weather file', message, fix });
}

/** A whole number with commas between the thousands. */
export function thousands(n: number): string {
  return String(Math.round(n)).replace(/\B(?=(\d{3})+$)/g, ',');
}

/** `line 12`, or `line 12, column "DNI"`. */
export function at(line: number, column?: string): string {
  return column === undefined ? `line ${line}` : `line ${line}, column "${column}"`;
}

/** Control and undecodable characters in more than one place in fifty, or any NUL. */
function looksBinary(text: string): boolean {
  if (text.includes('\0')) return true;
  const sample = text.slice(0, 4000);
  let odd = 0;
  for (let i = 0; i < sample.length; i++) {
    const code = sample.charCodeAt(i);
    if (code === 0xfffd || (code < 32 && code !== 9 && code !== 10 && code !== 13)) odd++;
  }
  return odd > sample.length / 50;
}

function refuseLongLines(text: string): void {
  let start = 0;
  for (let line = 1; start <= text.length; line++) {
    const end = text.indexOf('\n', start);
    const length = (end < 0 ? text.length : end) - start;
    if (length > LONGEST_LINE) {
      throw new InputError({
        path: at(line),
        message: 'is too long to be a row',
        value: `${thousands(length)} characters`,
        allowed: `up to ${thousands(LONGEST_LINE)}`,
        fix: 'Put each hour on a line of its own.',
      });
    }
    if (end < 0) return;
    start = end + 1;
  }
}
