import type { ClearPane } from './types.ts';

/** Surface films of a U-value, EN 673:2011: 25 outside and 7.7 inside, W/m2K. */
const U_FILMS = 1 / 25 + 1 / 7.7;
/** Surface films of a g-value, EN 410:2011: 23 outside, 8 inside (uncoated), W/m2K. */
const OUTSIDE_FILM = 1 / 23;
const INSIDE_FILM = 1 / 8;
/** Thermal conductivity of soda-lime glass, EN 673:2011, W/mK. */
const GLASS_CONDUCTIVITY = 1;

/** Resistance of each gap, m2K/W, all alike, such that films, panes and gaps make up 1/Ug. */
export function gapResistance(panes: readonly ClearPane[], Ug: number): number {
  if (panes.length < 2) return 0;
  const glass = panes.reduce((sum, pane) => sum + pane.thickness / GLASS_CONDUCTIVITY, 0);
  return (1 / Ug - U_FILMS - glass) / (panes.length - 1);
}

/**
 * Share of the heat absorbed in each pane that flows to the room, outside first: the resistance from
 * outdoors to the middle of the pane over the whole (the secondary heat transfer factor of EN 410:2011, with the gap resistances
 * taken back from Ug by EN 673).
 * @param Ug W/m2K @returns one share a pane, 0 to 1
 */
export function inwardFractions(panes: readonly ClearPane[], Ug: number): number[] {
  const gap = gapResistance(panes, Ug);
  let reached = OUTSIDE_FILM;
  const middles = panes.map((pane) => {
    const half = pane.thickness / GLASS_CONDUCTIVITY / 2;
    const middle = reached + half;
    reached = middle + half + gap;
    return middle;
  });
  const whole = reached - gap + INSIDE_FILM;
  return middles.map((middle) => middle / whole);
}
