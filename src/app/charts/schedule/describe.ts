import type { SunHours } from '../../../worker/sunHours.ts';
import { MONTHS as MONTH_NAMES, capital, measured, percent } from '../words.ts';
import { CELLS, QUARTERS, clockOf, paintedAt } from './cells.ts';
import type { CellBlock, Cells } from './cells.ts';

const PAINTED = { all: 'painted', part: 'partly painted', none: 'not painted' } as const;

/** Months and hours of a block in words: `April to June, 14:30 to 19:45`. */
export function blockWords({ months, quarters }: CellBlock): string {
  const [first, last] = months.map((month) => MONTH_NAMES[month]);
  const span = first === last ? first : `${first} to ${last}`;
  return `${span}, ${clockOf(quarters[0])} to ${clockOf(quarters[1] + 1)}`;
}

/** What holds at the row of a month that a cell is in. */
export function cellWords(
  cell: number,
  cells: Cells,
  quartersPerRow: number,
  sun: SunHours | undefined,
  gain: { digits: number; symbol: string; show(value: number): number },
): string {
  const state = PAINTED[paintedAt(cells, cell, quartersPerRow)];
  if (!sun) return capital(state);
  const start = cell - (cell % quartersPerRow);
  const mean = (values: Float64Array) => {
    let sum = 0;
    for (let i = 0; i < quartersPerRow; i++) sum += values[start + i];
    return sum / quartersPerRow;
  };
  const shown = measured(gain.show(mean(sun.gain)), gain.digits, gain.symbol);
  return `${capital(state)}. Sun on the facade on ${percent(mean(sun.sun))} of days, ${shown} without shading`;
}

/** Share of days from which an hour counts as one of the sun's. */
const OFTEN = 0.5;

/** The hour of the strongest sun, and how much of it is painted. */
export function describeGrid(
  cells: Cells,
  sun: SunHours | undefined,
  gain: { digits: number; symbol: string; show(value: number): number },
): string {
  const painted = cells.reduce((sum, value) => sum + value, 0);
  const share = percent(painted / CELLS);
  const paintedText = painted ? `Painted: ${share} of the year` : 'No hour is painted';
  if (!sun) return `${paintedText}.`;
  let most = 0;
  let brought = 0;
  let covered = 0;
  sun.gain.forEach((value, cell) => {
    if (value > sun.gain[most]) most = cell;
    brought += value;
    covered += cells[cell] * value;
  });
  if (!(brought > 0)) return `No sun gets through. ${paintedText}.`;
  const month = MONTH_NAMES[Math.floor(most / QUARTERS)];
  const top = measured(gain.show(sun.gain[most]), gain.digits, gain.symbol);
  const held = painted ? `, with ${percent(covered / brought)} of its bare gain` : '';
  return (
    `Most comes in ${month} at ${clockOf(most % QUARTERS)}: ${top} on average without shading. ` +
    `${paintedText}${held}.`
  );
}

/** The quarters of each month with the sun on the facade on at least half of the days. */
export function oftenSunny(sun: SunHours): Cells {
  return Uint8Array.from(sun.sun, (share) => (share >= OFTEN ? 1 : 0));
}

/** Those with the sun on it on any day. */
export function sunnyAtAll(sun: SunHours): Cells {
  return Uint8Array.from(sun.sun, (share) => (share > 0 ? 1 : 0));
}
