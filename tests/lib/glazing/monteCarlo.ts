import type { ClearPane } from '../../../lib/glazing/index.ts';

/** Shares of traced photons by what became of them. */
export interface PhotonTally {
  passed: number;
  reflected: number;
  absorbed: number[];
}

/** Evenly spread numbers from 0 to 1, the same for a seed (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Sends photons one by one through the faces of a stack: each is polarised one way or the other, at
 * a face it turns back or goes on by chance, inside a pane it ends after a random free path. Shares
 * no formula with the library: reflectance by the sine and tangent laws.
 */
export function tracePhotons(
  panes: readonly ClearPane[],
  incidence: number,
  photons: number,
  random: () => number,
): PhotonTally {
  const absorbed = panes.map(() => 0);
  let passed = 0;
  let reflected = 0;
  const inside = panes.map((pane) => Math.asin(Math.sin(incidence) / pane.refractiveIndex));
  const sine = inside.map((r) => (Math.sin(r - incidence) / Math.sin(r + incidence)) ** 2);
  const tangent = inside.map((r) => (Math.tan(r - incidence) / Math.tan(r + incidence)) ** 2);
  for (let n = 0; n < photons; n++) {
    const reflectance = random() < 0.5 ? sine : tangent;
    // Faces are numbered 0, 1 (first pane), 2, 3 (second pane) and so on, from outside in.
    let face = 0;
    let inward = true;
    for (;;) {
      const pane = face >> 1;
      const fromGlass = inward === (face % 2 === 1);
      const turned = random() < reflectance[pane]!;
      if (turned) inward = !inward;
      const inGlass = fromGlass === turned;
      if (inGlass) {
        const path = panes[pane]!.thickness / Math.cos(inside[pane]!);
        if (-Math.log(1 - random()) < path * panes[pane]!.extinction) {
          absorbed[pane]!++;
          break;
        }
      }
      face += inward ? 1 : -1;
      if (face < 0) {
        reflected++;
        break;
      }
      if (face >= 2 * panes.length) {
        passed++;
        break;
      }
    }
  }
  return {
    passed: passed / photons,
    reflected: reflected / photons,
    absorbed: absorbed.map((count) => count / photons),
  };
}
