/**
 * Numbers of a pasted row or column of a spreadsheet; undefined where it is a single number or not
 * numbers at all. A leading label is left out; a decimal comma is understood where the cells are
 * parted by tabs, line ends or semicolons.
 */
export function pastedNumbers(text: string): number[] | undefined {
  const byCell = /[\t\n\r;]/.test(text.trim());
  const cells = text
    .trim()
    .split(byCell ? /[\t\n\r;]+/ : /[\s,]+/)
    .map((cell) => cell.trim())
    .filter(Boolean);
  const values = cells.map((cell) => numberOf(cell, byCell));
  if (values.length > 1 && Number.isNaN(values[0])) values.shift();
  if (values.length < 2 || values.some(Number.isNaN)) return undefined;
  return values;
}

/** Pairs of numbers, one a line, as copied from two columns; undefined where it is not that. */
export function pastedPairs(text: string): [number, number][] | undefined {
  const lines = text.trim().split(/[\n\r]+/);
  const pairs = lines.map((line) => {
    const byCell = /[\t;]/.test(line);
    const cells = line.trim().split(byCell ? /[\t;]+/ : /[\s,]+/);
    return cells.map((cell) => numberOf(cell.trim(), byCell));
  });
  if (pairs.length > 1 && pairs[0].some(Number.isNaN)) pairs.shift();
  const sound = pairs.every((pair) => pair.length === 2 && !pair.some(Number.isNaN));
  return sound ? (pairs as [number, number][]) : undefined;
}

function numberOf(cell: string, comma: boolean): number {
  const plain = comma ? cell.replace(',', '.') : cell;
  return /^[-+\u2212]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(plain)
    ? Number(plain.replace('\u2212', '-'))
    : NaN;
}
