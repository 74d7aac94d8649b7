import type { Sash } from './types.ts';

/** Coefficients of de Gids & Phaff (1982): turbulence, wind and stack. */
const TURBULENCE = 0.01;
const WIND = 0.001;
export const STACK = 0.0035;

/**
 * Speed in the opening of a room aired from one side, m/s: sqrt(0.001 w^2 + 0.0035 h dT + 0.01).
 * de Gids & Phaff, Air Infiltration Review 4(1), 1982; EN 15242:2007, 6.7.2.
 *
 * @param wind speed at 10 m in the open, m/s
 * @param height of the opening, m
 * @param difference between inside and outside, K; its size counts
 */
export function airingSpeed(wind: number, height: number, difference: number): number {
  return Math.sqrt(WIND * wind * wind + STACK * height * Math.abs(difference) + TURBULENCE);
}

/** Flow through an opening aired from one side, m3/s: half of its area takes air in. */
export function airingFlow(area: number, wind: number, height: number, difference: number): number {
  return 0.5 * area * airingSpeed(wind, height, difference);
}

/**
 * Share of a sash's clear area that lets air through when it is opened by an angle:
 * 2.6e-7 a^3 - 1.19e-4 a^2 + 1.86e-2 a. EN 15242:2007, 6.7.2, for bottom-hung sashes about as high
 * as wide or higher.
 *
 * @param angle degrees, 0 to 180
 */
export function openingRatio(angle: number): number {
  return Math.max(0, ((2.6e-7 * angle - 1.19e-4) * angle + 1.86e-2) * angle);
}

/** How far a turned sash stands open, degrees: common practice. */
export const TURNED_ANGLE = 90;

/** Area a sash opens in a position, m2; 0 where it cannot take that position. */
export function sashArea(sash: Sash, position: 'tilt' | 'turn'): number {
  if (sash.kind === 'none') return 0;
  const clear = sash.width * sash.height;
  if (position === 'turn' && sash.kind === 'turn') return clear * openingRatio(TURNED_ANGLE);
  return clear * openingRatio(sash.tiltAngle);
}
