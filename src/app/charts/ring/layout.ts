import { dialRadii, turnFrom } from './dial.ts';
import type { DialRadii } from './dial.ts';

/** What the ring shows of one opening. */
export interface RingOpening {
  id: string;
  name: string;
  wall: string;
  wallName: string;
  /** Of its wall, degrees clockwise from north, and degrees from the horizontal. */
  azimuth: number;
  tilt: number;
  /** Clear width of all its units, m. */
  width: number;
  /** Summer gain of all its units, kWh; undefined until the engine has answered. */
  without?: number;
  with?: number;
}

/** Where an opening stands on the ring. */
export interface RingArc {
  opening: RingOpening;
  /** Azimuths of its ends, clockwise; `to` may be over 360. */
  from: number;
  to: number;
  middle: number;
  inner: number;
  /** Outer edge of what is let in, and of all that would come in without shading, px. */
  letIn: number;
  outer: number;
}

export interface RingLayout {
  radii: DialRadii;
  arcs: RingArc[];
  /** Degrees of the ring for a metre of width. */
  degreesPerMetre: number;
  /** Thickness for a kilowatt hour, px. */
  perKWh: number;
}

const SCALES = [12, 10, 8, 6, 5, 4, 3, 2, 1.5, 1, 0.5, 0.25, 0.1];
/** Most of the ring the openings of one wall may take, degrees. */
const WIDEST = 84;
/** Between openings of one wall, and between walls side by side, degrees. */
const GAP = 1.5;
const WALL_GAP = 3;
/** Between a wall and one outside it, px. */
const LANE_GAP = 9;
const THINNEST = 4;

/**
 * Sets the openings of each wall side by side about its azimuth. A wall that would meet another
 * stands outside it, upright walls nearest to the centre.
 */
export function layoutRing(openings: readonly RingOpening[], size: number): RingLayout {
  const radii = dialRadii(size);
  const walls = byWall(openings);
  const widest = Math.max(0.1, ...walls.map((wall) => wall.width));
  const degreesPerMetre = SCALES.find((scale) => widest * scale <= WIDEST) ?? 0.05;
  const stacked = stack(walls, degreesPerMetre);
  const perKWh = thickest(stacked, radii);
  const inner = innerRadii(stacked, radii.base, perKWh);
  const arcs = stacked.flatMap(({ wall }) =>
    arcsOf(wall, degreesPerMetre, inner.get(wall)!, perKWh),
  );
  const order = new Map(openings.map((o, i) => [o.id, i]));
  arcs.sort((a, b) => order.get(a.opening.id)! - order.get(b.opening.id)!);
  return { radii, arcs, degreesPerMetre, perKWh };
}

interface Wall {
  azimuth: number;
  tilt: number;
  width: number;
  members: RingOpening[];
}

function byWall(openings: readonly RingOpening[]): Wall[] {
  const walls = new Map<string, Wall>();
  for (const opening of openings) {
    const { azimuth, tilt, width } = opening;
    const wall = walls.get(opening.wall) ?? { azimuth, tilt, width: 0, members: [] };
    wall.width += width;
    wall.members.push(opening);
    walls.set(opening.wall, wall);
  }
  return [...walls.values()];
}

function span({ width, members }: Wall, degreesPerMetre: number): number {
  return width * degreesPerMetre + GAP * (members.length - 1);
}

/** A wall with those nearer to the centre that it would meet. */
interface Stacked {
  wall: Wall;
  under: Wall[];
}

function stack(walls: readonly Wall[], degreesPerMetre: number): Stacked[] {
  const upright = (wall: Wall) => Math.abs(wall.tilt - 90) <= 20;
  const sorted = [...walls.filter(upright), ...walls.filter((wall) => !upright(wall))];
  return sorted.map((wall, i) => ({
    wall,
    under: sorted
      .slice(0, i)
      .filter(
        (other) =>
          Math.abs(turnFrom(other.azimuth, wall.azimuth)) <
          (span(other, degreesPerMetre) + span(wall, degreesPerMetre)) / 2 + WALL_GAP,
      ),
  }));
}

/** Thickness of a wall's thickest opening, px. */
function thickness(wall: Wall, perKWh: number): number {
  return Math.max(THINNEST, ...wall.members.map((o) => (o.without ?? 0) * perKWh));
}

function innerRadii(stacked: readonly Stacked[], base: number, perKWh: number): Map<Wall, number> {
  const inner = new Map<Wall, number>();
  for (const { wall, under } of stacked) {
    const tops = under.map((other) => inner.get(other)! + thickness(other, perKWh) + LANE_GAP);
    inner.set(wall, Math.max(base, ...tops));
  }
  return inner;
}

/** The largest scale at which all stay within the ring, px to the kWh; by halving. */
function thickest(stacked: readonly Stacked[], { base, arcs }: DialRadii): number {
  const most = Math.max(
    0,
    ...stacked.flatMap(({ wall }) => wall.members.map((o) => o.without ?? 0)),
  );
  if (most === 0) return 0;
  const fits = (perKWh: number) => {
    const inner = innerRadii(stacked, base, perKWh);
    return stacked.every(({ wall }) => inner.get(wall)! + thickness(wall, perKWh) <= arcs + 1e-6);
  };
  let low = 0;
  let high = (arcs - base) / most;
  if (fits(high)) return high;
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function arcsOf(wall: Wall, degreesPerMetre: number, inner: number, perKWh: number): RingArc[] {
  let from = wall.azimuth - span(wall, degreesPerMetre) / 2;
  return wall.members.map((opening) => {
    const to = from + opening.width * degreesPerMetre;
    const thick = Math.max(THINNEST, (opening.without ?? 0) * perKWh);
    const share = opening.without ? (opening.with ?? opening.without) / opening.without : 1;
    const arc = {
      opening,
      from,
      to,
      middle: (from + to) / 2,
      inner,
      letIn: inner + thick * Math.min(1, Math.max(0, share)),
      outer: inner + thick,
    };
    from = to + GAP;
    return arc;
  });
}

/** Part of the gain that is stopped, 0 to 1; undefined where nothing is known or comes in. */
export function stoppedShare(opening: RingOpening): number | undefined {
  const { without, with: shaded } = opening;
  return without && shaded !== undefined ? 1 - shaded / without : undefined;
}
