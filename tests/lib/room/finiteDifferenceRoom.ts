/**
 * A room by finite differences, kept apart from lib/ on purpose: walls cut into 20 cells or more,
 * insulation and outer leaf included, stepped implicitly each minute (tridiagonal elimination a
 * wall); grey-body radiation in fourth powers; air as a node of its own; sashes decided each minute.
 */

export interface FdLayer {
  thickness: number;
  conductivity: number;
  density: number;
  specificHeat: number;
}

export interface FdWall {
  area: number;
  /** From the room outwards. */
  layers: FdLayer[];
  boundary: 'outdoor' | 'adiabatic' | 'fixed';
  temperature?: number;
  /** Convection coefficient at the inner face, W/m2K. */
  convection: number;
}

export interface FdRoom {
  walls: FdWall[];
  windows: { area: number; U: number; convection: number };
  floorArea: number;
  /** J/K of air and furniture. */
  airCapacity: number;
  /** W/K of air that always comes in. */
  ventilation: number;
  heatingSetPoint?: number;
  airing?: {
    /** m2 */
    area: number;
    height: number;
    openAbove: number;
    closeBelow: number;
    margin: number;
    /** Allowed in an hour. */
    allowed: (hour: number) => boolean;
  };
}

export interface FdWeather {
  outdoor: ArrayLike<number>;
  wind: ArrayLike<number>;
  sun: ArrayLike<number>;
  internal: ArrayLike<number>;
}

export interface FdResult {
  air: Float64Array;
  operative: Float64Array;
  heating: Float64Array;
  /** m3/s */
  airing: Float64Array;
}

const SIGMA = 5.670374e-8;
const EMISSIVITY = 0.9;
const MINUTE = 60;
const SUN_TO_AIR = 0.1;
const INTERNAL_TO_AIR = 0.5;
const OUTSIDE_RESISTANCE = 0.04;

/** Means of each hour from `first` up to `last`, from a room at 20 C all through. */
export function runFdRoom(room: FdRoom, weather: FdWeather, first: number, last: number): FdResult {
  const walls = room.walls.map((w) => new Wall(w));
  const wallArea = room.walls.reduce((sum, w) => sum + w.area, 0);
  const total = wallArea + room.windows.area;
  const hours = last - first;
  const result: FdResult = {
    air: new Float64Array(hours),
    operative: new Float64Array(hours),
    heating: new Float64Array(hours),
    airing: new Float64Array(hours),
  };
  // Outer face of the glass to outdoors: the window's U less the standard inside resistance.
  const outward = 1 / (1 / room.windows.U - 0.13);
  let glass = 20;
  let air = 20;
  let open = false;
  for (let hour = first; hour < last; hour++) {
    const outdoor = weather.outdoor[hour];
    const sun = weather.sun[hour];
    const internal = weather.internal[hour];
    for (let minute = 0; minute < 60; minute++) {
      // Mean radiant temperature: area-weighted mean of the faces, glass included.
      let radiant = glass * room.windows.area;
      for (const w of walls) radiant += w.face * w.spec.area;
      radiant /= total;

      const gainWall = ((1 - SUN_TO_AIR) * sun) / wallArea;
      const gainAll = ((1 - INTERNAL_TO_AIR) * internal) / total;
      let conductance = room.airCapacity / MINUTE;
      let heat = conductance * air + SUN_TO_AIR * sun + INTERNAL_TO_AIR * internal;
      for (const w of walls) {
        const long = radiation(radiant, w.face);
        w.step(air, long + gainWall + gainAll, outdoor);
        conductance += w.spec.convection * w.spec.area;
        heat += w.spec.convection * w.spec.area * w.face;
      }
      const h = room.windows.convection;
      glass =
        (h * air + outward * outdoor + radiation(radiant, glass) + gainAll + 4 * glass) /
        (h + outward + 4);
      conductance += h * room.windows.area;
      heat += h * room.windows.area * glass;

      let airing = 0;
      if (room.airing) {
        const a = room.airing;
        const d = air - outdoor;
        open =
          a.allowed(hour) &&
          (open ? air > a.closeBelow && d > 0 : air >= a.openAbove && d >= a.margin);
        if (open) {
          airing =
            (a.area / 2) *
            Math.sqrt(0.01 + 0.001 * weather.wind[hour] ** 2 + 0.0035 * a.height * Math.abs(d));
        }
      }
      const fresh = room.ventilation + 1200 * airing;
      conductance += fresh;
      heat += fresh * outdoor;
      air = heat / conductance;
      let heating = 0;
      if (room.heatingSetPoint !== undefined) {
        const wanted = 2 * room.heatingSetPoint - radiant;
        if (air < wanted) {
          heating = (wanted - air) * conductance;
          air = wanted;
        }
      }
      const at = hour - first;
      result.air[at] += air / 60;
      result.operative[at] += (air + radiant) / 120;
      result.heating[at] += heating / 60;
      result.airing[at] += airing / 60;
    }
  }
  return result;
}

/** Long-wave heat to a face in an enclosure of a mean radiant temperature, W/m2. */
function radiation(meanRadiant: number, face: number): number {
  return SIGMA * EMISSIVITY * ((meanRadiant + 273.15) ** 4 - (face + 273.15) ** 4);
}

class Wall {
  readonly spec: FdWall;
  /** Inner face temperature, C. */
  face = 20;
  private readonly T: Float64Array;
  private readonly capacity: Float64Array;
  /** Conductance from cell i to cell i + 1; the last one to the boundary. */
  private readonly link: Float64Array;
  /** From the inner face to the first cell's middle. */
  private readonly toFace: number;
  /** Of Thomas' elimination: one over the pivots, and link over pivot. */
  private readonly inverse: Float64Array;
  private readonly passed: Float64Array;
  private readonly inner: number;
  private readonly scratch: Float64Array;

  constructor(spec: FdWall) {
    this.spec = spec;
    const cells: { capacity: number; half: number }[] = [];
    const thickness = spec.layers.reduce((sum, l) => sum + l.thickness, 0);
    for (const l of spec.layers) {
      const count = Math.max(4, Math.ceil((24 * l.thickness) / thickness));
      const d = l.thickness / count;
      for (let i = 0; i < count; i++) {
        cells.push({ capacity: l.density * l.specificHeat * d, half: d / 2 / l.conductivity });
      }
    }
    const n = cells.length;
    this.T = new Float64Array(n).fill(20);
    this.capacity = Float64Array.from(cells, (c) => c.capacity / MINUTE);
    this.link = new Float64Array(n);
    for (let i = 0; i + 1 < n; i++) this.link[i] = 1 / (cells[i].half + cells[i + 1].half);
    const end = cells[n - 1].half + (spec.boundary === 'outdoor' ? OUTSIDE_RESISTANCE : 0);
    this.link[n - 1] = spec.boundary === 'adiabatic' ? 0 : 1 / end;
    this.toFace = 1 / cells[0].half;
    this.inverse = new Float64Array(n);
    this.passed = new Float64Array(n);
    this.scratch = new Float64Array(n);
    // The face has no mass: convection in series with the half cell.
    this.inner = (spec.convection * this.toFace) / (spec.convection + this.toFace);
    for (let i = 0; i < n; i++) {
      const before = i > 0 ? this.link[i - 1] : this.inner;
      let pivot = this.capacity[i] + before + this.link[i];
      if (i > 0) pivot -= this.link[i - 1] * this.passed[i - 1];
      this.inverse[i] = 1 / pivot;
      this.passed[i] = this.link[i] / pivot;
    }
  }

  /** One minute with steady air temperature and radiant gain (W/m2) at the face. */
  step(air: number, radiantGain: number, outdoor: number): void {
    const { T, capacity, link, inverse, passed, scratch, spec } = this;
    const n = T.length;
    const h = spec.convection;
    const boundary = spec.boundary === 'outdoor' ? outdoor : (spec.temperature ?? 0);
    let carried = this.inner * (air + radiantGain / h);
    for (let i = 0; i < n - 1; i++) {
      const right = capacity[i] * T[i] + carried;
      scratch[i] = right;
      carried = passed[i] * right;
    }
    let next = (capacity[n - 1] * T[n - 1] + carried + link[n - 1] * boundary) * inverse[n - 1];
    T[n - 1] = next;
    for (let i = n - 2; i >= 0; i--) {
      next = scratch[i] * inverse[i] + passed[i] * next;
      T[i] = next;
    }
    this.face = (h * air + radiantGain + this.toFace * T[0]) / (h + this.toFace);
  }
}
