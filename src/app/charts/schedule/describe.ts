import type { SunHours } from '../../../worker/sunHours.ts';
import type { Wording } from '../../../words/index.ts';
import { CELLS, QUARTERS, clockOf, paintedAt } from './cells.ts';
import type { CellBlock, Cells } from './cells.ts';

/** The unit of the gain on the grid. */
interface GainUnit {
  digits: number;
  symbol: string;
  show(value: number): number;
}

/** Months and hours of a block in words: `April to June, 14:30 to 19:45`. */
export function blockWords(words: Wording, { months, quarters }: CellBlock): string {
  const t = words.of('schedules');
  const names = words.months('long');
  const [first, last] = months.map((month) => names[month]);
  const hours = { from: clockOf(quarters[0]), to: clockOf(quarters[1] + 1) };
  return first === last
    ? t('grid.month', { month: first, ...hours })
    : t('grid.months', { first, last, ...hours });
}

/** What holds at the row of a month that a cell is in. */
export function cellWords(
  words: Wording,
  cell: number,
  cells: Cells,
  quartersPerRow: number,
  sun: SunHours | undefined,
  gain: GainUnit,
): string {
  const t = words.of('schedules');
  const state = t(`grid.state.${paintedAt(cells, cell, quartersPerRow)}`);
  if (!sun) return state;
  const start = cell - (cell % quartersPerRow);
  const mean = (values: Float64Array) => {
    let sum = 0;
    for (let i = 0; i < quartersPerRow; i++) sum += values[start + i];
    return sum / quartersPerRow;
  };
  return t('grid.reading', {
    state,
    share: words.share(mean(sun.sun)),
    gain: words.measured(gain.show(mean(sun.gain)), gain.digits, gain.symbol),
  });
}

/** Share of days from which an hour counts as one of the sun's. */
const OFTEN = 0.5;

/** The hour of the strongest sun, and how much of it is painted. */
export function describeGrid(
  words: Wording,
  cells: Cells,
  sun: SunHours | undefined,
  gain: GainUnit,
): string {
  const t = words.of('schedules');
  const painted = cells.reduce((sum, value) => sum + value, 0);
  const share = words.share(painted / CELLS);
  const paintedText = painted ? t('grid.about.share', { share }) : t('grid.about.nothing');
  if (!sun) return paintedText;
  let most = 0;
  let brought = 0;
  let covered = 0;
  sun.gain.forEach((value, cell) => {
    if (value > sun.gain[most]) most = cell;
    brought += value;
    covered += cells[cell] * value;
  });
  if (!(brought > 0)) return `${t('grid.about.noSun')} ${paintedText}`;
  const strongest = t('grid.about.most', {
    month: words.months('long')[Math.floor(most / QUARTERS)],
    time: clockOf(most % QUARTERS),
    gain: words.measured(gain.show(sun.gain[most]), gain.digits, gain.symbol),
  });
  if (!painted) return `${strongest} ${paintedText}`;
  const held = words.share(covered / brought);
  return `${strongest} ${t('grid.about.shareGain', { share, gain: held })}`;
}

/** The quarters of each month with the sun on the facade on at least half of the days. */
export function oftenSunny(sun: SunHours): Cells {
  return Uint8Array.from(sun.sun, (share) => (share >= OFTEN ? 1 : 0));
}

/** Those with the sun on it on any day. */
export function sunnyAtAll(sun: SunHours): Cells {
  return Uint8Array.from(sun.sun, (share) => (share > 0 ? 1 : 0));
}
