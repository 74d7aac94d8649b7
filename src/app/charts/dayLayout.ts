import { area, curveStepAfter, extent, line, scaleLinear } from 'd3';
import { STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';

/** Bands of a day strip, px from its top; each has its caption above it. */
export const BANDS = {
  gain: { top: 24, height: 168 },
  blind: { top: 222, height: 38 },
  temperature: { top: 290, height: 112 },
} as const;
export const STRIP_MARGIN = { left: 44, right: 22 };
export const STRIP_HEIGHT = 428;

/** Steps of a day in the order they pass. */
export function stepsOfHours(hours: readonly number[]): number[] {
  return hours.flatMap((hour) =>
    Array.from({ length: STEPS_PER_HOUR }, (_, i) => hour * STEPS_PER_HOUR + i),
  );
}

/** Places of clock marks every so many hours, by step of the day; the last is its end. */
export function clockMarks(
  calendar: YearCalendar,
  steps: readonly number[],
  everyHours: number,
): { index: number; text: string }[] {
  const marks = steps.flatMap((step, index) => {
    const quarter = calendar.quarter[step];
    return quarter % (everyHours * 4) === 0 ? [{ index, text: `${quarter / 4}:00` }] : [];
  });
  return [...marks, { index: steps.length, text: '24:00' }];
}

/** Path of hourly means as steps: an area down to `floor`, or a line. */
export function stepArea(
  values: readonly number[],
  floor: readonly number[],
  x: (hour: number) => number,
  y: (value: number) => number,
): string {
  const path = area<number>()
    .curve(curveStepAfter)
    .x((i) => x(i))
    .y0((i) => y(floor[Math.min(i, values.length - 1)]))
    .y1((i) => y(values[Math.min(i, values.length - 1)]));
  return path(Array.from({ length: values.length + 1 }, (_, i) => i)) ?? '';
}

export function stepLine(
  values: readonly number[],
  x: (hour: number) => number,
  y: (value: number) => number,
): string {
  const path = line<number>()
    .curve(curveStepAfter)
    .x((i) => x(i))
    .y((i) => y(values[Math.min(i, values.length - 1)]));
  return path(Array.from({ length: values.length + 1 }, (_, i) => i)) ?? '';
}

/** Path through hourly means at the middle of their hours. */
export function middleLine(
  values: readonly number[],
  x: (hour: number) => number,
  y: (value: number) => number,
): string {
  const path = line<number>()
    .x((_, i) => x(i + 0.5))
    .y((value) => y(value));
  return path(values) ?? '';
}

/** Even ends for the temperatures of a day, at least six units apart so that noise stays small. */
export function temperatureDomain(values: readonly number[]): [number, number] {
  const [least = 0, most = 0] = extent(values);
  const spare = Math.max(0, (6 - (most - least)) / 2);
  const [low, high] = scaleLinear([least - spare, most + spare], [0, 1])
    .nice(4)
    .domain();
  return [low, high];
}

/** Quarter hours in a row with the blind as it is. */
export interface BlindRun {
  /** Steps of the day, first and one after the last. */
  from: number;
  to: number;
  /** Share of the glass covered, 0 to 1. */
  share: number;
  name: string;
}

/** Cuts a day into runs of one blind position. */
export function blindRuns(
  steps: readonly number[],
  covered: Float32Array,
  nameOf: (step: number) => string,
): BlindRun[] {
  const runs: BlindRun[] = [];
  steps.forEach((step, index) => {
    const share = covered[step];
    const name = nameOf(step);
    const last = runs.at(-1);
    if (last && last.name === name && Math.abs(last.share - share) < 1e-6) last.to = index + 1;
    else runs.push({ from: index, to: index + 1, share, name });
  });
  return runs;
}
