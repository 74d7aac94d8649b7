import type { HorizonPoint, OpeningGeometry, Plane } from '../../../lib/opening/index.ts';
import { allPlates, blocked, glass, revealPlates } from './rays.ts';

const RAD = Math.PI / 180;

/** What an opening sees, by rays: as DiffuseView, each set of directions summed. */
export interface ViewByRays {
  sky: number;
  ground: number;
  horizon: number;
  bounceSky: number;
  bounceGround: number;
}

/**
 * Shoots n x n jittered cosine-distributed rays from random points of the glass, n x n from each
 * reveal face, and n x n along the horizon.
 */
export function viewByRays(
  g: OpeningGeometry,
  plane: Plane,
  horizon: readonly HorizonPoint[],
  n: number,
  random: () => number,
): ViewByRays {
  const plates = allPlates(g);
  const { x0, y0, w, h, area } = glass(g);
  const result = { sky: 0, ground: 0, horizon: 0, bounceSky: 0, bounceGround: 0 };
  const each = 1 / (n * n);

  const count = (
    d: number[],
    share: number,
    sky: 'sky' | 'bounceSky',
    g0: 'ground' | 'bounceGround',
  ) => {
    const { azimuth, altitude } = compass(d, plane);
    if (altitude < 0) result[g0] += share;
    else if (altitude > skyline(horizon, azimuth)) result[sky] += share;
  };

  for (let i = 0; i < n * n; i++) {
    const from = [x0 + w * random(), y0 + h * random(), 0] as const;
    const d = cosineRay(2, 1, cell(i, n, random));
    if (!blocked(plates, from, d)) count(d, each, 'sky', 'ground');

    // Along the horizon: even in the cosine to the plane's level axis means weighted by incidence.
    const across = 2 * ((i + random()) / (n * n)) - 1;
    const ahead = Math.sqrt(1 - across * across);
    const level = fromLevel(across, ahead, plane);
    if (level[2] > 0 && !blocked(plates, from, level)) {
      const altitude = Math.max(0, skyline(horizon, compass(level, plane).azimuth));
      result.horizon += each * Math.max(0, 1 - altitude / 6.5);
    }
  }

  revealPlates(g).forEach((face, index) => {
    const depth = face.z[1];
    const inward = index === 0 || index === 3 ? -1 : 1;
    const other = face.axis === 0 ? 1 : 0;
    const scale = (g.revealReflectance * depth * face.along[1] * each) / area;
    for (let i = 0; i < n * n && depth > 0; i++) {
      const p: [number, number, number] = [0, 0, depth * random()];
      p[face.axis] = face.at;
      p[other] = face.along[1] * random();
      const inbound = cosineRay(face.axis, inward, [random(), random()]);
      if (inbound[2] <= 0) continue;
      const outbound = cosineRay(face.axis, inward, cell(i, n, random));
      if (outbound[2] >= 0) continue;
      const t = -p[2] / outbound[2];
      const x = p[0] + t * outbound[0];
      const y = p[1] + t * outbound[1];
      if (x < x0 || x > x0 + w || y < y0 || y > y0 + h) continue;
      if (!blocked(plates, p, inbound)) count(inbound, scale, 'bounceSky', 'bounceGround');
    }
  });
  return result;
}

function cell(i: number, n: number, random: () => number): [number, number] {
  return [((i % n) + random()) / n, (Math.floor(i / n) + random()) / n];
}

/** A direction about an axis by the cosine law, from two even random numbers. */
function cosineRay(
  axis: number,
  sign: number,
  [u, v]: readonly [number, number],
): [number, number, number] {
  const flat = Math.sqrt(u);
  const d: [number, number, number] = [0, 0, 0];
  d[axis] = sign * Math.sqrt(1 - u);
  d[(axis + 1) % 3] = flat * Math.cos(2 * Math.PI * v);
  d[(axis + 2) % 3] = flat * Math.sin(2 * Math.PI * v);
  return d;
}

/** Azimuth and altitude, degrees, of a direction in plane coordinates. */
function compass(d: readonly number[], plane: Plane): { azimuth: number; altitude: number } {
  const tilt = plane.tilt * RAD;
  const up = d[1] * Math.sin(tilt) + d[2] * Math.cos(tilt);
  const ahead = d[2] * Math.sin(tilt) - d[1] * Math.cos(tilt);
  // Facing the way the plane faces, its right as seen from outside is the left hand.
  const turn = Math.atan2(-d[0], ahead) / RAD;
  return {
    azimuth: (((plane.azimuth + turn) % 360) + 360) % 360,
    altitude: Math.asin(Math.max(-1, Math.min(1, up))) / RAD,
  };
}

/** A level direction, in plane coordinates, by its part along the plane and its part ahead. */
function fromLevel(across: number, ahead: number, plane: Plane): [number, number, number] {
  const tilt = plane.tilt * RAD;
  return [across, -ahead * Math.cos(tilt), ahead * Math.sin(tilt)];
}

/** Altitude of the horizon, straight lines between the points, round the dial. */
function skyline(points: readonly HorizonPoint[], azimuth: number): number {
  // Nearest point on each side, going round either way.
  const way = (from: number, to: number) => (((to - from) % 360) + 360) % 360;
  let before = points[0];
  let after = points[0];
  for (const p of points) {
    if (way(p.azimuth, azimuth) < way(before.azimuth, azimuth)) before = p;
    if (way(azimuth, p.azimuth) < way(azimuth, after.azimuth)) after = p;
  }
  if (!before) return 0;
  const span = way(before.azimuth, after.azimuth);
  const t = span === 0 ? 0 : way(before.azimuth, azimuth) / span;
  return before.altitude + t * (after.altitude - before.altitude);
}
