/**
 * Numbers of a pasted row or column of a spreadsheet; undefined where it is a single number or not
 * numbers at all. A leading label is left out; a decimal comma is understood where the cells are
 * parted by tabs, line ends, semicolons or blanks.
 */
export function pastedNumbers(text: string): number[] | undefined {
  const values = numbersOf(text.trim(), /[\t\n\r;]+/);
  if (values.length > 1 && Number.isNaN(values[0])) values.shift();
  if (values.length < 2 || values.some(Number.isNaN)) return undefined;
  return values;
}

/** Pairs of numbers, one a line, as copied from two columns; undefined where it is not that. */
export function pastedPairs(text: string): [number, number][] | undefined {
  const lines = text.trim().split(/[\n\r]+/);
  const pairs = lines.map((line) => numbersOf(line.trim(), /[\t;]+/));
  if (pairs.length > 1 && pairs[0].some(Number.isNaN)) pairs.shift();
  const sound = pairs.every((pair) => pair.length === 2 && !pair.some(Number.isNaN));
  return sound ? (pairs as [number, number][]) : undefined;
}

/** Numbers of cells; where no mark parts them, a comma does so unless blanks alone will do. */
function numbersOf(text: string, mark: RegExp): number[] {
  if (mark.test(text)) return text.split(mark).filter(Boolean).map(numberOf);
  const byBlank = text.split(/\s+/).map(numberOf);
  if (byBlank.length > 1 && byBlank.slice(1).every(Number.isFinite)) return byBlank;
  return text
    .split(/[\s,]+/)
    .filter(Boolean)
    .map(numberOf);
}

function numberOf(cell: string): number {
  const plain = cell.trim().replace(',', '.').replace('\u2212', '-');
  return /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(plain) ? Number(plain) : NaN;
}
