import { extent, scaleLinear, ticks } from 'd3';
import type { RampKind } from './ramp.ts';

/** How values become places on a colour ramp. */
export interface SheetScale {
  low: number;
  high: number;
  /** Value in the middle of the ramp where it has two arms; the legend stays even in values. */
  middle?: number;
  ticks: number[];
}

/**
 * A scale that takes in all values. Shares are in percent; power starts at 0.
 * @param middle value that divides the arms of a temperature ramp, in shown units
 */
export function sheetScale(kind: RampKind, values: ArrayLike<number>, middle?: number): SheetScale {
  if (kind === 'share') return { low: 0, high: 100, ticks: [0, 25, 50, 75, 100] };
  const [least = 0, most = 0] = extent(values as Iterable<number> & ArrayLike<number>);
  if (kind === 'power') return niceScale(0, Math.max(most, 1));
  const centre = middle ?? (least + most) / 2;
  return { ...niceScale(...withMiddle(least, most, centre)), middle: centre };
}

function niceScale(from: number, to: number): SheetScale {
  const [low, high] = scaleLinear().domain([from, to]).nice(5).domain();
  return { low, high, ticks: ticks(low, high, 4) };
}

/** A span with room on both sides of the middle, so that either arm of the ramp is in use. */
function withMiddle(least: number, most: number, middle: number): [number, number] {
  return [Math.min(least, middle - 5), Math.max(most, middle + 5)];
}

/** Place of a value on the ramp, 0 to 1; values outside the scale take the end. */
export function placeOf(scale: SheetScale, value: number): number {
  const { low, high, middle } = scale;
  const place =
    middle === undefined
      ? (value - low) / (high - low)
      : value < middle
        ? (0.5 * (value - low)) / (middle - low)
        : 0.5 + (0.5 * (value - middle)) / (high - middle);
  return Math.max(0, Math.min(1, place));
}
