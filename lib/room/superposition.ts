import { HOURS } from '../time/index.ts';
import type { RoomModel } from './compile.ts';
import { AIR, AIR_HEAT, CONSTANT, INTERNAL, OPAQUE_SUN, OUTDOOR, RADIANT, SUN } from './network.ts';
import { endOf, reading, type Reading } from './reading.ts';
import type { RoomYear } from './run.ts';

/** Hours run before the year for each source: a heavy, tight room has forgotten by then. */
const WARM_UP = 90 * 24;

/** One input that acts alone, and how one unit of it reaches modes and mean temperatures. */
export interface Push {
  /** HOURS values. */
  series: Float64Array;
  end: Float64Array;
  air: number;
  operative: number;
  /** Watts given to the air itself. */
  toAir: boolean;
}

/** Runs single sources through a finished year whose air conductances are kept. */
export interface Superposition {
  sun(series: Float64Array): Push;
  internal(series: Float64Array): Push;
  airHeat(series: Float64Array): Push;
  /** What lies behind the envelope: outdoor temperature less the base, boundaries of fixed temperature, sun on it. */
  envelope(outdoor: Float64Array, opaqueSun?: Float64Array): Push[];
  /** What the room remembered as the year began, above a room at the base throughout. */
  memory: Float64Array;
  /**
   * Rise of the hourly operative temperature under some inputs alone (HOURS values) and the memory
   * they had left as the year began. Without a `start` the end of the year is run first.
   */
  run(pushes: readonly Push[], start?: Float64Array): { rise: Float64Array; start: Float64Array };
}

/** @param base temperature the rises are counted from, C */
export function superposition(model: RoomModel, year: RoomYear, base: number): Superposition {
  const r = model.response;
  const n = r.count;
  const air = reading(r, [AIR, 1]);
  const operative = reading(r, [AIR, model.airWeight], [RADIANT, 1 - model.airWeight]);
  const toAirEnd = endOf(r, AIR_HEAT);

  function push(input: number, series: Float64Array): Push {
    return {
      series,
      end: endOf(r, input),
      air: air.part[input],
      operative: operative.part[input],
      toAir: false,
    };
  }

  /**
   * Boundaries of fixed temperature, counted from the base. That a room at 1 C with all boundaries
   * at 1 C stays so tells how much they take part.
   */
  function fixedBoundaries(): Push {
    const outdoorEnd = endOf(r, OUTDOOR);
    const constantEnd = endOf(r, CONSTANT);
    const counted = (o: Reading) => o.part[CONSTANT] - base * (1 - warmth(o) - o.part[OUTDOOR]);
    return {
      series: new Float64Array(HOURS).fill(1),
      end: constantEnd.map((c, k) => c - base * ((1 - r.keep[k]) * r.heat[k] - outdoorEnd[k])),
      air: counted(air),
      operative: counted(operative),
      toAir: false,
    };
  }

  /** What an output takes from the memory of a room at 1 C. */
  function warmth(o: Reading): number {
    return o.memory.reduce((sum, m, k) => sum + m * r.heat[k], 0);
  }

  function run(pushes: readonly Push[], given?: Float64Array) {
    const x = given ? given.slice() : new Float64Array(n);
    const rise = new Float64Array(HOURS);
    if (!given) for (let hour = HOURS - WARM_UP; hour < HOURS; hour++) step(x, pushes, hour);
    const start = x.slice();
    for (let hour = 0; hour < HOURS; hour++) rise[hour] = step(x, pushes, hour);
    return { rise, start };
  }

  /** Takes the modes through an hour; gives the rise of its mean operative temperature. */
  function step(x: Float64Array, pushes: readonly Push[], hour: number): number {
    let freeAir = 0;
    let free = 0;
    let given = 0;
    for (let k = 0; k < n; k++) {
      freeAir += air.memory[k] * x[k];
      free += operative.memory[k] * x[k];
      x[k] *= r.keep[k];
    }
    for (const p of pushes) {
      const value = p.series[hour];
      if (p.toAir) given += value;
      freeAir += p.air * value;
      free += p.operative * value;
      for (let k = 0; k < n; k++) x[k] += p.end[k] * value;
    }
    const conductance = year.airConductance[hour];
    const toAir = (given - conductance * freeAir) / (1 + conductance * air.part[AIR_HEAT]);
    for (let k = 0; k < n; k++) x[k] += toAirEnd[k] * toAir;
    return free + operative.part[AIR_HEAT] * toAir;
  }

  return {
    sun: (series) => push(SUN, series),
    internal: (series) => push(INTERNAL, series),
    airHeat: (series) => ({
      series,
      end: new Float64Array(n),
      air: 0,
      operative: 0,
      toAir: true,
    }),
    envelope: (outdoor, opaqueSun) => [
      push(OUTDOOR, outdoor),
      fixedBoundaries(),
      ...(opaqueSun ? [push(OPAQUE_SUN, opaqueSun)] : []),
    ],
    memory: year.start.modes.map((x, k) => x - r.heat[k] * base),
    run,
  };
}
