import type { Wording } from '../../words/index.ts';

const POINTS = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const;

/** The nearest of eight points of the compass to an azimuth in degrees clockwise from north. */
export function compassPoint(azimuth: number): (typeof POINTS)[number] {
  return POINTS[Math.round((((azimuth % 360) + 360) % 360) / 45) % 8];
}

/** Compass word of an azimuth in degrees clockwise from north: `south-west`, `Südwesten`. */
export function compassName(words: Pick<Wording, 'of'>, azimuth: number): string {
  return words.of('common')(`compass.${compassPoint(azimuth)}`);
}
