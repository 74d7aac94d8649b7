/**
 * Shadows of flat shades on a rectangle, for one sun direction given by its slopes a = sx / sz and
 * b = sy / sz, both zero or more: a ray rises by a to the right and by b upwards for each metre it
 * comes out.
 *
 * A plate square to the glass throws a parallelogram: two of its sides lie along the plate, the
 * other two along the sun's direction (a, b) on the glass. All shadows share that direction, so the
 * overlap of any of them with a rectangle is a rectangle cut by one strip s0 <= b x - a y <= s1, whose
 * area has a closed form; the union of up to three follows by inclusion and exclusion. Exact but for
 * rounding.
 *
 * Figures go from call to call by the arrays below: arguments of that number would be boxed, which
 * costs more than the sums. A call is over before the next begins, so one set serves all openings.
 */

/** A plate's figures: which way it lies, its place, its ends, and where it starts and stops in z. */
const PLATE = 6;
const LEVEL = 0;
const UPRIGHT = 1;

/** A patch's figures: x0, x1, y0, y1, s0, s1. Three shadows, an overlap of some, and the patch. */
const SIZE = 6;
const OVERLAP = 3 * SIZE;
const PATCH = 4 * SIZE;
const patches = new Float64Array(5 * SIZE);
const areas = new Float64Array(3);

/** Plates above (level) and to the right (upright) of what they shade. */
export class Plates {
  private readonly figures: Float64Array;
  readonly count: number;

  constructor(plates: readonly Plate[]) {
    this.count = plates.length;
    this.figures = Float64Array.from(
      plates.flatMap((p) => [p.upright ? UPRIGHT : LEVEL, p.at, p.from, p.to, p.z0, p.z1]),
    );
  }

  /**
   * Area of the patch in hand (`setRectangle`, `cutToStrip`) that lies in shadow, m2.
   * @param a @param b slopes of the sun's ray, zero or more
   */
  shadedArea(a: number, b: number): number {
    let count = 0;
    for (let i = 0; i < this.count; i++) {
      if (!cast(this.figures, i * PLATE, count * SIZE, a, b)) continue;
      const area = areaOf(count * SIZE, a, b);
      if (area > 0) areas[count++] = area;
    }
    if (count === 0) return 0;
    let shaded = areas[0];
    if (count > 1) shaded += areas[1] - overlap(0, 1, 1, a, b);
    if (count > 2) {
      shaded += areas[2] - overlap(0, 2, 2, a, b) - overlap(1, 2, 2, a, b) + overlap(0, 1, 2, a, b);
    }
    return shaded;
  }
}

/** A flat shade square to the glass. */
export interface Plate {
  /** Stands upright at x = at, from y `from` to y `to`; else lies level at y = at, `from` and `to` in x. */
  upright: boolean;
  at: number;
  from: number;
  to: number;
  /** Where it starts and stops before the glass. */
  z0: number;
  z1: number;
}

/** Sets the patch to a rectangle in the plane of the glass. */
export function setRectangle(x0: number, x1: number, y0: number, y1: number): void {
  patches[PATCH] = x0;
  patches[PATCH + 1] = x1;
  patches[PATCH + 2] = y0;
  patches[PATCH + 3] = y1;
  patches[PATCH + 4] = -Infinity;
  patches[PATCH + 5] = Infinity;
}

/** Keeps of the patch what lies between the lines b x - a y = s0 and s1. */
export function cutToStrip(s0: number, s1: number): void {
  patches[PATCH + 4] = s0;
  patches[PATCH + 5] = s1;
}

/** Area of the patch, m2; 0 where it is empty. */
export function patchArea(a: number, b: number): number {
  return areaOf(PATCH, a, b);
}

/** Writes the shadow of a plate on the patch; false where it cannot have any area. */
function cast(figures: Float64Array, plate: number, to: number, a: number, b: number): boolean {
  const at = figures[plate + 1];
  const from = figures[plate + 2];
  const end = figures[plate + 3];
  const z0 = figures[plate + 4];
  const z1 = figures[plate + 5];
  let x0 = patches[PATCH];
  let x1 = patches[PATCH + 1];
  let y0 = patches[PATCH + 2];
  let y1 = patches[PATCH + 3];
  let s0 = patches[PATCH + 4];
  let s1 = patches[PATCH + 5];
  let near: number;
  let far: number;
  if (figures[plate] === LEVEL) {
    const low = at - b * z1;
    const high = at - b * z0;
    if (low > y0) y0 = low;
    if (high < y1) y1 = high;
    if (!(y1 > y0)) return false;
    near = b * from - a * at;
    far = b * end - a * at;
  } else {
    const low = at - a * z1;
    const high = at - a * z0;
    if (low > x0) x0 = low;
    if (high < x1) x1 = high;
    if (!(x1 > x0)) return false;
    near = b * at - a * end;
    far = b * at - a * from;
  }
  if (near > s0) s0 = near;
  if (far < s1) s1 = far;
  patches[to] = x0;
  patches[to + 1] = x1;
  patches[to + 2] = y0;
  patches[to + 3] = y1;
  patches[to + 4] = s0;
  patches[to + 5] = s1;
  return true;
}

/** Area that shadows i, j and k have in common; the last two may be the same. */
function overlap(i: number, j: number, k: number, a: number, b: number): number {
  for (let n = 0; n < SIZE; n += 2) {
    let low = patches[i * SIZE + n];
    if (patches[j * SIZE + n] > low) low = patches[j * SIZE + n];
    if (patches[k * SIZE + n] > low) low = patches[k * SIZE + n];
    let high = patches[i * SIZE + n + 1];
    if (patches[j * SIZE + n + 1] < high) high = patches[j * SIZE + n + 1];
    if (patches[k * SIZE + n + 1] < high) high = patches[k * SIZE + n + 1];
    if (!(high > low)) return 0;
    patches[OVERLAP + n] = low;
    patches[OVERLAP + n + 1] = high;
  }
  return areaOf(OVERLAP, a, b);
}

/** Area of the patch kept at an index. */
function areaOf(at: number, a: number, b: number): number {
  const x0 = patches[at];
  const y1 = patches[at + 3];
  const w = patches[at + 1] - x0;
  const h = y1 - patches[at + 2];
  if (!(w > 0 && h > 0)) return 0;
  // b x - a y is least in the upper left corner.
  const least = b * x0 - a * y1;
  const t0 = patches[at + 4] - least;
  const t1 = patches[at + 5] - least;
  if (!(t1 > t0)) return 0;
  const u = b * w;
  const v = a * h;
  if (t0 <= 0 && t1 >= u + v) return w * h;
  const wide = u > v ? u : v;
  const narrow = u > v ? v : u;
  return w * h * (shareBelow(t1, wide, narrow) - shareBelow(t0, wide, narrow));
}

/**
 * Share of a rectangle on the near side of a slanting line at distance t from its nearest corner,
 * in the measure where its sides count `wide` and `narrow`: the area swept is a triangle, then a
 * parallelogram, then all but a triangle.
 */
function shareBelow(t: number, wide: number, narrow: number): number {
  if (t <= 0) return 0;
  const left = wide + narrow - t;
  if (left <= 0) return 1;
  if (t < narrow) return (t * t) / (2 * wide * narrow);
  if (t <= wide) return (t - narrow / 2) / wide;
  return 1 - (left * left) / (2 * wide * narrow);
}
