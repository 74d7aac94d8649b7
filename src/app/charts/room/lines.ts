import { extent, line, scaleLinear } from 'd3';
import { DAYS } from '../../../../lib/time/index.ts';

/** Space around the lines of a year of days, px. */
export const LINES_MARGIN = { left: 40, right: 52, top: 12, bottom: 24 };
export const LINES_HEIGHT = 220;

export const xOfDay = (width: number, day: number): number => ((day + 0.5) / DAYS) * width;

/** Day under a point, counted from the left end of the lines. */
export function dayAt(width: number, x: number): number {
  return Math.max(0, Math.min(DAYS - 1, Math.floor((x / width) * DAYS)));
}

/** A round span that takes in all series and the limit. */
export function lineDomain(series: readonly ArrayLike<number>[], limit: number): [number, number] {
  const ends = series.flatMap((values) => extent(Array.from(values)) as [number, number]);
  const [low, high] = scaleLinear()
    .domain([Math.min(limit, ...ends), Math.max(limit, ...ends)])
    .nice(5)
    .domain();
  return [low, high];
}

/** Path through one value a day. */
export function dayLine(
  values: ArrayLike<number>,
  width: number,
  y: (value: number) => number,
): string {
  const path = line<number>()
    .x((_, day) => xOfDay(width, day))
    .y((value) => y(value));
  return path(Array.from(values)) ?? '';
}
