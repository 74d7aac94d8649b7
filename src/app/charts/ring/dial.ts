const RAD = Math.PI / 180;

export interface Point {
  x: number;
  y: number;
}

/** Radii of the dial from its centre outwards, px. */
export interface DialRadii {
  /** Inner edge of the openings. */
  base: number;
  /** Outer edge of the openings at most. */
  arcs: number;
  /** The sky at the zenith and at the level horizon. */
  zenith: number;
  rim: number;
}

/** The rings of a dial that fits a square of this size with its letters, px. */
export function dialRadii(size: number): DialRadii {
  const rim = size / 2 - 24;
  return { base: rim * 0.36, arcs: rim * 0.68, zenith: rim * 0.7, rim };
}

/** Point of the dial at an azimuth (degrees clockwise from north, which is up) and a radius. */
export function polar(azimuth: number, radius: number): Point {
  return { x: radius * Math.sin(azimuth * RAD), y: -radius * Math.cos(azimuth * RAD) };
}

/** Azimuth of a point of the dial, 0 to 360 degrees. */
export function azimuthOf({ x, y }: Point): number {
  return wrap(Math.atan2(x, -y) / RAD);
}

/** An angle brought to 0 up to but not 360 degrees. */
export function wrap(angle: number): number {
  return ((angle % 360) + 360) % 360;
}

/** The shorter way from one azimuth to another, -180 up to but not 180 degrees. */
export function turnFrom(from: number, to: number): number {
  return wrap(to - from + 180) - 180;
}

/** Whole degrees, 0 to 359. */
export function wholeAzimuth(angle: number): number {
  return wrap(Math.round(angle));
}

/** Radius in the sky: the horizon outside, the zenith inside. */
export function skyRadius({ zenith, rim }: DialRadii, altitude: number): number {
  return rim - ((rim - zenith) * altitude) / 90;
}

/** Path of a ring sector between two radii and two azimuths, clockwise. */
export function sectorPath(from: number, to: number, inner: number, outer: number): string {
  const large = to - from > 180 ? 1 : 0;
  const [a, b, c, d] = [polar(from, outer), polar(to, outer), polar(to, inner), polar(from, inner)];
  return (
    `M${at(a)}A${px(outer)},${px(outer)} 0 ${large} 1 ${at(b)}` +
    `L${at(c)}A${px(inner)},${px(inner)} 0 ${large} 0 ${at(d)}Z`
  );
}

/** Path of an arc, clockwise. */
export function arcPath(from: number, to: number, radius: number): string {
  const large = to - from > 180 ? 1 : 0;
  return `M${at(polar(from, radius))}A${px(radius)},${px(radius)} 0 ${large} 1 ${at(polar(to, radius))}`;
}

/** Path through points. */
export function linePath(points: readonly Point[]): string {
  return points.map((point, i) => `${i ? 'L' : 'M'}${at(point)}`).join('');
}

const px = (value: number) => Number(value.toFixed(2));
const at = ({ x, y }: Point) => `${px(x)},${px(y)}`;
