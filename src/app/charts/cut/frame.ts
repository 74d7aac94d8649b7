/** A point of a section, m: along it and up it. */
export type Spot = readonly [number, number];

/** How a section lies in its picture. */
export interface CutFrame {
  /** Picture place of a point, px. */
  place(spot: Spot): [number, number];
  /** How far a movement of the pointer goes along a direction of the section, m. */
  along(dx: number, dy: number, direction: Spot): number;
  /** px to the metre. */
  scale: number;
  width: number;
  height: number;
}

interface Box {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

/** Turns points of a section about its origin, degrees clockwise as drawn. */
export function turned([u, v]: Spot, degrees: number): Spot {
  const a = (degrees * Math.PI) / 180;
  return [u * Math.cos(a) + v * Math.sin(a), v * Math.cos(a) - u * Math.sin(a)];
}

function boxOf(corners: readonly Spot[], degrees: number): Box {
  const spots = corners.map((spot) => turned(spot, degrees));
  const us = spots.map(([u]) => u);
  const vs = spots.map(([, v]) => v);
  return {
    left: Math.min(...us),
    right: Math.max(...us),
    bottom: Math.min(...vs),
    top: Math.max(...vs),
  };
}

/** The largest scale at which a section fits a picture, px to the metre. */
export function fitScale(
  corners: readonly Spot[],
  degrees: number,
  width: number,
  height: number,
): number {
  const { left, right, bottom, top } = boxOf(corners, degrees);
  return Math.min(width / (right - left), height / (top - bottom));
}

/** Lays a section into the middle of a picture. */
export function cutFrame(
  corners: readonly Spot[],
  degrees: number,
  scale: number,
  width: number,
  height: number,
): CutFrame {
  const { left, right, bottom, top } = boxOf(corners, degrees);
  const x0 = width / 2 - ((left + right) / 2) * scale;
  const y0 = height / 2 + ((bottom + top) / 2) * scale;
  return {
    scale,
    width,
    height,
    place(spot) {
      const [u, v] = turned(spot, degrees);
      return [x0 + u * scale, y0 - v * scale];
    },
    along(dx, dy, direction) {
      const [u, v] = turned(direction, degrees);
      return (dx * u - dy * v) / scale;
    },
  };
}

/** A round length that draws between 40 and 120 px, m. */
export function scaleBar(scale: number, imperial: boolean): number {
  const foot = 0.3048;
  const lengths = imperial
    ? [foot / 4, foot / 2, foot, 2 * foot, 4 * foot, 8 * foot]
    : [0.05, 0.1, 0.2, 0.5, 1, 2, 5];
  return lengths.find((length) => length * scale >= 40) ?? lengths.at(-1)!;
}

/** Path through points of the picture. */
export function outline(frame: CutFrame, spots: readonly Spot[], closed = true): string {
  const points = spots.map((spot) => {
    const [x, y] = frame.place(spot);
    return `${x.toFixed(1)},${y.toFixed(1)}`;
  });
  return `M${points.join('L')}${closed ? 'Z' : ''}`;
}
