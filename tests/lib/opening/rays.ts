import type { Fin, OpeningGeometry } from '../../../lib/opening/index.ts';

/**
 * An independent model of an opening for the tests: flat rectangles in space and rays against them.
 * Shares nothing with lib/opening but the input.
 */

/** A rectangle square to the x axis (axis 0) or to the y axis (axis 1); `along` is the other one. */
export interface Plate {
  axis: 0 | 1;
  at: number;
  along: [number, number];
  z: [number, number];
}

/** The four reveal faces, in the order head, sill, left, right. */
export function revealPlates(g: OpeningGeometry): Plate[] {
  return [
    { axis: 1, at: g.height, along: [0, g.width], z: [0, g.reveal.head] },
    { axis: 1, at: 0, along: [0, g.width], z: [0, g.reveal.sill] },
    { axis: 0, at: 0, along: [0, g.height], z: [0, g.reveal.left] },
    { axis: 0, at: g.width, along: [0, g.height], z: [0, g.reveal.right] },
  ];
}

export function allPlates(g: OpeningGeometry): Plate[] {
  const plates = revealPlates(g);
  if (g.overhang) {
    plates.push({
      axis: 1,
      at: g.height + g.overhang.aboveHead,
      along: [-g.overhang.left, g.width + g.overhang.right],
      z: [g.setBack, g.setBack + g.overhang.projection],
    });
  }
  const fin = (f: Fin, at: number) =>
    plates.push({
      axis: 0,
      at,
      along: [-f.below, g.height + f.above],
      z: [g.setBack, g.setBack + f.projection],
    });
  if (g.finLeft) fin(g.finLeft, -g.finLeft.offset);
  if (g.finRight) fin(g.finRight, g.width + g.finRight.offset);
  return plates;
}

export type Vector = readonly [number, number, number];

/** Whether a ray from a point meets any plate. */
export function blocked(plates: readonly Plate[], p: Vector, d: Vector): boolean {
  for (const plate of plates) {
    const t = (plate.at - p[plate.axis]) / d[plate.axis];
    if (!(t > 1e-12)) continue;
    const z = p[2] + t * d[2];
    if (z < plate.z[0] || z > plate.z[1]) continue;
    const other = plate.axis === 0 ? 1 : 0;
    const q = p[other] + t * d[other];
    if (q >= plate.along[0] && q <= plate.along[1]) return true;
  }
  return false;
}

/** Share of the glass from which the sun is seen: jittered rays from n x n cells. */
export function sunlitByRays(
  g: OpeningGeometry,
  sun: Vector,
  n: number,
  random: () => number,
  topShare = 1,
): number {
  const plates = allPlates(g);
  const { x0, w, y1, h } = glass(g);
  const point: [number, number, number] = [0, 0, 0];
  let lit = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      point[0] = x0 + ((i + random()) / n) * w;
      point[1] = y1 - ((j + random()) / n) * h * topShare;
      if (!blocked(plates, point, sun)) lit++;
    }
  }
  return (lit / (n * n)) * topShare;
}

/**
 * Sun reflected once by the reveal onto the glass, mean irradiance for 1 W/m2 direct normal: points
 * on each face that see the sun send out one ray each by the cosine law.
 */
export function bounceByRays(
  g: OpeningGeometry,
  sun: Vector,
  n: number,
  random: () => number,
): number {
  const plates = allPlates(g);
  const { x0, w, y0, h, area } = glass(g);
  let sum = 0;
  revealPlates(g).forEach((face, index) => {
    const depth = face.z[1];
    const inward = index === 0 || index === 3 ? -1 : 1;
    const cosine = sun[face.axis] * inward;
    if (cosine <= 0 || depth === 0) return;
    const other = face.axis === 0 ? 1 : 0;
    let hits = 0;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const p: [number, number, number] = [0, 0, ((i + random()) / n) * depth];
        p[face.axis] = face.at;
        p[other] = ((j + random()) / n) * face.along[1];
        if (blocked(plates, p, sun)) continue;
        const turn = 2 * Math.PI * random();
        const s2 = random();
        const flat = Math.sqrt(s2);
        const d: [number, number, number] = [0, 0, flat * Math.cos(turn)];
        d[face.axis] = inward * Math.sqrt(1 - s2);
        d[other] = flat * Math.sin(turn);
        if (d[2] >= 0) continue;
        const t = -p[2] / d[2];
        const x = p[0] + t * d[0];
        const y = p[1] + t * d[1];
        if (x >= x0 && x <= x0 + w && y >= y0 && y <= y0 + h) hits++;
      }
    }
    sum += (hits / (n * n)) * cosine * depth * face.along[1];
  });
  return (g.revealReflectance * sum) / area;
}

export function glass(g: OpeningGeometry) {
  const x0 = g.frame.left;
  const y0 = g.frame.sill;
  const w = g.width - g.frame.left - g.frame.right;
  const h = g.height - g.frame.sill - g.frame.head;
  return { x0, y0, w, h, y1: y0 + h, area: w * h };
}

/** Even random numbers from 0 to 1, the same for a seed (mulberry32). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** An opening with nothing around it: no reveal, no frame, no shades. */
export function bareOpening(width: number, height: number): OpeningGeometry {
  return {
    width,
    height,
    frame: { head: 0, sill: 0, left: 0, right: 0 },
    setBack: 0,
    reveal: { head: 0, sill: 0, left: 0, right: 0 },
    revealReflectance: 0.5,
  };
}

/** A random opening as houses have them; half of them with a plain hole of one depth. */
export function randomOpening(random: () => number): OpeningGeometry {
  const within = (a: number, b: number) => a + random() * (b - a);
  const setBack = random() < 0.2 ? 0 : within(0, 0.6);
  const even = random() < 0.5;
  const depth = () => (even ? setBack : random() < 0.2 ? 0 : within(0, 0.7));
  const fin = (): Fin => ({
    projection: within(0, 2),
    offset: within(0, 0.5),
    above: within(0, 0.8),
    below: within(0, 0.8),
  });
  const g: OpeningGeometry = {
    width: within(0.4, 3),
    height: within(0.4, 2.5),
    frame: {
      head: within(0, 0.15),
      sill: within(0, 0.15),
      left: within(0, 0.15),
      right: within(0, 0.15),
    },
    setBack,
    reveal: { head: depth(), sill: depth(), left: depth(), right: depth() },
    revealReflectance: within(0.1, 0.9),
  };
  if (random() < 0.6) {
    g.overhang = {
      projection: within(0, 2.5),
      aboveHead: within(0, 0.8),
      left: within(0, 1.5),
      right: within(0, 1.5),
    };
  }
  if (random() < 0.5) g.finLeft = fin();
  if (random() < 0.5) g.finRight = fin();
  return g;
}

/** A direction in front of the glass, evenly over the half sphere but not flatter than `leastZ`. */
export function randomSun(random: () => number, leastZ = 0.02): Vector {
  const z = leastZ + (1 - leastZ) * random();
  const turn = 2 * Math.PI * random();
  const flat = Math.sqrt(1 - z * z);
  return [flat * Math.cos(turn), flat * Math.sin(turn), z];
}
