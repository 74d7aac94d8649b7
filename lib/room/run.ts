import { HOURS } from '../time/index.ts';
import type { RoomModel } from './compile.ts';
import { AIR, MASS, RADIANT } from './network.ts';
import { createRoom } from './step.ts';
import type { RoomInput, RoomState, RoomStep, SteppingRoom } from './stepping.ts';

/** Weather that acts on the room and what hangs before its sashes; HOURS values each. */
export interface RoomDrivers {
  /** C */
  outdoor: Float64Array;
  /** At 10 m, m/s. */
  wind: Float64Array;
  /** Heat led inwards by sun on the opaque parts, W; absent: none. */
  opaqueSun?: Float64Array;
  /** For each opening what screen and blind leave of its airing flow, 0 to 1; absent: all of it. */
  flowFactors?: readonly Float64Array[];
}

/** A room-year; HOURS values each, hourly means. */
export interface RoomYear {
  /** C */
  air: Float64Array;
  operative: Float64Array;
  /** Mean temperature of all that stores heat, C. */
  mass: Float64Array;
  /** W, both positive. */
  heating: Float64Array;
  cooling: Float64Array;
  /** Flow through opened sashes, m3/s. */
  airFlow: Float64Array;
  /** Heat carried by all the air that comes in per kelvin between outside and inside, W/K. */
  airConductance: Float64Array;
  /** What the room remembered as hour 0 began. */
  start: RoomState;
  /** Most by which any temperature differs between the end and the start of the year, K. */
  closure: number;
}

/** Where a room stands as the warm-up begins, C. */
const BEGIN = 20;
/** Hours run before the year so that it starts as it ends. */
const WARM_UP = 21 * 24;
/** The year's end equals its start within this, K. */
export const CLOSURE_LIMIT = 0.05;
const MOST_PASSES = 8;

/**
 * Takes a room through a typical year that starts as it ends (within CLOSURE_LIMIT): the last three
 * weeks are run first from a room at 20 C, then the year until it closes.
 *
 * @param sun sun that comes in through all openings, W; HOURS values
 */
export function runRoom(model: RoomModel, drivers: RoomDrivers, sun: Float64Array): RoomYear {
  const room = createRoom(model);
  const input = emptyInput(model);
  return runYear([room], (hour) => room.step(hour, hourInput(input, drivers, sun, hour)))[0];
}

/**
 * Takes rooms through a typical year together: `takeHour` steps every one of them. The last three
 * weeks are run first from rooms at 20 C, then the year until all of them close.
 */
export function runYear(
  rooms: readonly SteppingRoom[],
  takeHour: (hour: number) => unknown,
  beginPass: () => void = () => undefined,
): RoomYear[] {
  for (const room of rooms) room.reset(BEGIN);
  for (let hour = HOURS - WARM_UP; hour < HOURS; hour++) takeHour(hour);
  const years = rooms.map(emptyYear);
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    beginPass();
    rooms.forEach((room, i) => (years[i].start = room.state()));
    for (let hour = 0; hour < HOURS; hour++) {
      takeHour(hour);
      for (let i = 0; i < rooms.length; i++) record(years[i], hour, rooms[i].last);
    }
    rooms.forEach((room, i) => {
      years[i].closure = difference(room.model, years[i].start.modes, room.state().modes);
    });
    if (years.every((year) => year.closure <= CLOSURE_LIMIT)) break;
  }
  return years;
}

/** An input for `hourInput` to fill. */
export function emptyInput(model: RoomModel): RoomInput {
  const flowFactor = new Float64Array(model.openings.length).fill(1);
  return { sun: 0, outdoor: 0, wind: 0, opaqueSun: 0, flowFactor };
}

/** Fills an input with one hour of the year's arrays. */
export function hourInput(
  input: RoomInput,
  drivers: RoomDrivers,
  sun: Float64Array,
  hour: number,
): RoomInput {
  input.sun = sun[hour];
  input.outdoor = drivers.outdoor[hour];
  input.wind = drivers.wind[hour];
  input.opaqueSun = drivers.opaqueSun === undefined ? 0 : drivers.opaqueSun[hour];
  const { flowFactors } = drivers;
  if (flowFactors !== undefined) {
    for (let o = 0; o < flowFactors.length; o++) input.flowFactor[o] = flowFactors[o][hour];
  }
  return input;
}

function record(year: RoomYear, hour: number, step: RoomStep): void {
  year.air[hour] = step.air;
  year.operative[hour] = step.operative;
  year.mass[hour] = step.mass;
  year.heating[hour] = step.heating;
  year.cooling[hour] = step.cooling;
  year.airFlow[hour] = step.airing;
  year.airConductance[hour] = step.airConductance;
}

function emptyYear(): RoomYear {
  const hours = () => new Float64Array(HOURS);
  return {
    air: hours(),
    operative: hours(),
    mass: hours(),
    heating: hours(),
    cooling: hours(),
    airFlow: hours(),
    airConductance: hours(),
    start: { modes: new Float64Array(0), open: new Uint8Array(0) },
    closure: Infinity,
  };
}

/** Most by which two memories differ in any temperature read off the room, K. */
function difference(model: RoomModel, a: Float64Array, b: Float64Array): number {
  const { read, count } = model.response;
  let most = 0;
  for (const output of [AIR, RADIANT, MASS]) {
    let sum = 0;
    for (let k = 0; k < count; k++) sum += Math.abs(read[output * count + k] * (a[k] - b[k]));
    most = Math.max(most, sum);
  }
  return most;
}
