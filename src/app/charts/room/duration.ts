import { line, scaleLinear } from 'd3';
import { HOURS } from '../../../../lib/time/index.ts';
import type { Wording } from '../../../words/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';
import { hoursText, limitText, plainTemperature } from './describe.ts';
import type { RoomYearData } from './roomYear.ts';

/** Fewest hours shown, so that a cool room has a curve too. */
const LEAST_SHOWN = 500;

/** Hours of the warm end that are shown: a round number well past the hours over the limit. */
export function shownHours(data: RoomYearData): number {
  const over = Math.max(hoursAbove(data.without.ranked, data.limit), LEAST_SHOWN / 2);
  return Math.min(
    HOURS,
    scaleLinear()
      .domain([0, 2 * over])
      .nice(4)
      .domain()[1],
  );
}

/** How many values of a falling series lie over a limit. */
export function hoursAbove(ranked: Float64Array, limit: number): number {
  let low = 0;
  let high = ranked.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ranked[middle] > limit) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Path of a falling series over its first hours, a point a pixel. */
export function durationLine(
  ranked: Float64Array,
  hours: number,
  width: number,
  y: (value: number) => number,
): string {
  const points = Math.min(Math.ceil(width), hours) + 1;
  const path = line<number>()
    .x((i) => (i / (points - 1)) * width)
    .y((i) => y(ranked[Math.min(ranked.length - 1, Math.round((i / (points - 1)) * hours))]));
  return path(Array.from({ length: points }, (_, i) => i)) ?? '';
}

/** What the curves say. */
export function describeDuration(words: Wording, data: RoomYearData, room: string): string {
  const { symbol } = data.temperature;
  const higher = data.limit + (symbol === '°F' ? 5 : 2);
  const over = ({ ranked }: RoomYearData['with'], limit: number) =>
    hoursText(words, hoursAbove(ranked, limit));
  return words.of('rooms')('duration.about', {
    room,
    limit: limitText(words, data),
    bare: over(data.without, data.limit),
    shaded: over(data.with, data.limit),
    higher: plainTemperature(words, higher, symbol),
    bareHigher: over(data.without, higher),
    shadedHigher: over(data.with, higher),
  });
}

/** Temperature at every rank. */
export function durationTable(words: Wording, data: RoomYearData): FigureTable {
  const t = words.of('rooms');
  const { symbol: unit } = data.temperature;
  const series = [data.without.ranked, data.with.ranked];
  return {
    columns: [
      { head: t('duration.head') },
      { head: t('scheme.withoutIn', { unit }), digits: 1 },
      { head: t('scheme.withIn', { unit }), digits: 1 },
    ],
    rowCount: HOURS,
    cell: (row, column) => (column === 0 ? row + 1 : series[column - 1][row]),
  };
}
