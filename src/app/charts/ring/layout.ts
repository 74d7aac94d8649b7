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
/** Between openings of one wall, and between walls in one lane, degrees. */
const GAP = 1.5;
const WALL_GAP = 3;
/** Between lanes, px. */
const LANE_GAP = 9;
const THINNEST = 4;

/**
 * Sets the openings of each wall side by side about its azimuth. Walls that would meet stand in
 * lanes one outside the other, upright walls nearest to the centre.
 */
export function layoutRing(openings: readonly RingOpening[], size: number): RingLayout {
  const radii = dialRadii(size);
  const walls = byWall(openings);
  const widest = Math.max(0.1, ...walls.map((wall) => wall.width));
  const degreesPerMetre = SCALES.find((scale) => widest * scale <= WIDEST) ?? 0.05;
  const lanes = lanesOf(walls, degreesPerMetre);
  const most = lanes.map((lane) =>
    Math.max(...lane.flatMap((wall) => wall.members.map((o) => o.without ?? 0))),
  );
  const sum = most.reduce((total, value) => total + value, 0);
  const room = radii.arcs - radii.base - LANE_GAP * Math.max(0, lanes.length - 1);
  const perKWh = sum > 0 ? room / sum : 0;

  let inner = radii.base;
  const arcs = lanes.flatMap((lane, i) => {
    const placed = lane.flatMap((wall) => arcsOf(wall, degreesPerMetre, inner, perKWh));
    inner += Math.max(THINNEST, most[i] * perKWh) + LANE_GAP;
    return placed;
  });
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

function lanesOf(walls: readonly Wall[], degreesPerMetre: number): Wall[][] {
  const lanes: Wall[][] = [];
  const upright = (wall: Wall) => Math.abs(wall.tilt - 90) <= 20;
  const sorted = [...walls.filter(upright), ...walls.filter((wall) => !upright(wall))];
  for (const wall of sorted) {
    const free = lanes.find((lane) =>
      lane.every(
        (other) =>
          Math.abs(turnFrom(other.azimuth, wall.azimuth)) >=
          (span(other, degreesPerMetre) + span(wall, degreesPerMetre)) / 2 + WALL_GAP,
      ),
    );
    if (free) free.push(wall);
    else lanes.push([wall]);
  }
  return lanes;
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
