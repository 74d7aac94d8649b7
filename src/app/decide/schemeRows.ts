import type { SchemeFigures } from '../../../lib/sure/index.ts';

/** A figure that schemes are compared by. */
export const SCHEME_FIGURES = [
  'hours',
  'broken',
  'summerGain',
  'winterGain',
  'heatingKWh',
  'peakGain',
  'viewHoursLost',
  'movesPerDay',
  'blinds',
  'externalBlinds',
] as const;
export type SchemeFigure = (typeof SCHEME_FIGURES)[number];

/** What is shown of one figure: its value in each scheme and the end of its axis. */
export interface SchemeRow {
  figure: SchemeFigure;
  values: number[];
  most: number;
}

/** The rows, all schemes on one axis from 0 in each. */
export function schemeRows(schemes: readonly SchemeFigures[]): SchemeRow[] {
  return SCHEME_FIGURES.map((figure) => {
    const values = schemes.map((scheme) => scheme[figure]);
    // External blinds are some of all blinds, so they stand on the axis of those.
    const axis = figure === 'externalBlinds' ? schemes.map((s) => s.blinds) : values;
    return { figure, values, most: Math.max(...axis, 0) };
  });
}

/** The scheme with the fewest and the one with the most hours over; the first of equals. */
export function extremes(
  schemes: readonly SchemeFigures[],
): { best: SchemeFigures; worst: SchemeFigures } | undefined {
  if (schemes.length === 0) return undefined;
  return {
    best: schemes.reduce((a, b) => (b.hours < a.hours ? b : a)),
    worst: schemes.reduce((a, b) => (b.hours > a.hours ? b : a)),
  };
}
