import type { OpeningSun, RoomDrivers, RoomModel, RoomYear } from '../room/index.ts';
import type { Stage } from './cache.ts';

/** A room-year with all that went into it, so that causes can be asked for afterwards. */
export interface RoomRun {
  model: RoomModel;
  drivers: RoomDrivers;
  /** W through each opening; HOURS values. */
  readonly suns: OpeningSun[];
  /** W through all of them; HOURS values. */
  sun: Float64Array;
  year: RoomYear;
}

/** A room's year without any screen or blind, and with them. */
export interface RoomRuns {
  id: string;
  without: Stage<RoomRun>;
  with: Stage<RoomRun>;
}
