import type { Wording } from '../../words/index.ts';

const POINTS = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const;

/** Compass word of an azimuth in degrees clockwise from north: `south-west`, `Südwesten`. */
export function compassName(words: Pick<Wording, 'of'>, azimuth: number): string {
  const point = POINTS[Math.round((((azimuth % 360) + 360) % 360) / 45) % 8];
  return words.of('common')(`compass.${point}`);
}
