import type { RoomModel } from './compile.ts';

/** What reaches the room in one hour: means over the hour. */
export interface RoomInput {
  /** Sun that comes in through all openings, W. */
  sun: number;
  /** Outdoor temperature, C. */
  outdoor: number;
  /** Wind speed at 10 m, m/s. */
  wind: number;
  /** Heat led inwards by sun on the opaque parts, W. */
  opaqueSun: number;
  /** What screens and blinds leave of the airing flow at each opening, 0 to 1. */
  flowFactor: Float64Array;
}

/** The room in one hour: means over the hour. The same object is filled again at each step. */
export interface RoomStep {
  /** C */
  air: number;
  operative: number;
  /** Mean temperature of all that stores heat, C. */
  mass: number;
  /** W, both positive. */
  heating: number;
  cooling: number;
  /** Flow through opened sashes, m3/s. */
  airing: number;
  /** Heat carried by all the air that comes in per kelvin between outside and inside, W/K. */
  airConductance: number;
}

/** Heat to the room in one hour, W; inwards positive. `storage` is what it takes up. */
export interface HeatBalance {
  sun: number;
  internal: number;
  heating: number;
  cooling: number;
  /** By air from outside: leaks, ventilation, airing. */
  air: number;
  /** Through windows, opaque parts and thermal bridges. */
  transmission: number;
  storage: number;
}

/** Memory of a room between hours. */
export interface RoomState {
  modes: Float64Array;
  /** 1 for each airing rule that stands open. */
  open: Uint8Array;
}

export interface SteppingRoom {
  readonly model: RoomModel;
  /** The hour last stepped; filled again at each step. */
  readonly last: RoomStep;
  /** Starts afresh: from a state, or from a room that is as warm as `temperature` all through. */
  reset(start: RoomState | number): void;
  /** A copy of the memory. */
  state(): RoomState;
  /** Takes the room through hour `hour` of the year (0 to 8,759). No allocation. */
  step(hour: number, input: RoomInput): RoomStep;
  /** Heat balance of the last step, written to `target`. */
  balance(target: HeatBalance): HeatBalance;
}
