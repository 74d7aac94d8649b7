/** Altitude of what stands on the horizon at an azimuth; straight lines between points. */
export interface HorizonPoint {
  /** Degrees clockwise from north. */
  azimuth: number;
  /** Degrees above the horizontal. */
  altitude: number;
}

/** Profiles in order of azimuth, kept as a profile is asked for every degree of the dial. */
const inOrder = new WeakMap<readonly HorizonPoint[], readonly HorizonPoint[]>();

/**
 * Altitude of the horizon at an azimuth, degrees: straight lines between the points in order of
 * azimuth, closed round the dial; 0 where there are no points.
 */
export function horizonAltitude(points: readonly HorizonPoint[], azimuth: number): number {
  if (points.length === 0) return 0;
  let sorted = inOrder.get(points);
  if (!sorted) {
    sorted = [...points].sort((a, b) => a.azimuth - b.azimuth);
    inOrder.set(points, sorted);
  }
  const at = ((azimuth % 360) + 360) % 360;
  const next = sorted.findIndex((p) => p.azimuth > at);
  const after = sorted[next === -1 ? 0 : next];
  const before = sorted[(next <= 0 ? sorted.length : next) - 1];
  const span = (after.azimuth - before.azimuth + 360) % 360;
  if (span === 0) return before.altitude;
  const t = ((at - before.azimuth + 360) % 360) / span;
  return before.altitude + (after.altitude - before.altitude) * t;
}
