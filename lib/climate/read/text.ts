import { InputError, figureText, problem } from '../../problem/index.ts';
import type { Text } from '../../problem/index.ts';
import { say } from '../say.ts';

const MOST_CHARACTERS = 40_000_000;
const LONGEST_LINE = 20_000;

/**
 * The text of a weather file made plain: no byte order mark, lines ended by a line feed.
 * @throws InputError for an empty, binary or oversized text, and for a line too long to be a row
 */
export function cleanText(text: string): string {
  if (text.length > MOST_CHARACTERS) {
    const figure = figureText(text.length);
    throw fileProblem(say('file.characters', { figure }), say('file.charactersFix'));
  }
  let clean = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (clean.trim() === '') throw fileProblem(say('file.empty'), say('file.emptyFix'));
  if (looksBinary(clean)) throw fileProblem(say('file.binary'), say('file.binaryFix'));
  if (clean.includes('\r')) clean = clean.replace(/\r\n?/g, '\n');
  refuseLongLines(clean);
  return clean;
}

/** A problem of the file as a whole. */
export function fileProblem(message: Text, fix: Text): InputError {
  return new InputError(problem(say('where.file'), { message, fix }));
}

/** `line 12`, or `line 12, column "DNI"`. */
export function at(line: number, column?: string | Text): Text {
  const place = say('where.line', { line });
  return column === undefined ? place : say('where.cell', { place, column });
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
      throw new InputError(
        problem(at(line), {
          message: say('file.longLine'),
          value: say('range.characters', { figure: figureText(length) }),
          allowed: say('range.upTo', { most: figureText(LONGEST_LINE) }),
          fix: say('file.longLineFix'),
        }),
      );
    }
    if (end < 0) return;
    start = end + 1;
  }
}
