import { HOURS } from '../time/index.ts';
import type { RoomModel } from './compile.ts';
import { emptyInput, hourInput, type RoomDrivers, type RoomYear } from './run.ts';
import { createRoom } from './step.ts';
import type { HeatBalance } from './stepping.ts';

/** Heat to the room in each hour, W; HOURS values a term. */
export type YearBalance = Record<keyof HeatBalance, Float64Array>;

/** Heat that a balance leaves unexplained in an hour, W: nothing but rounding. */
export function unbalanced(b: HeatBalance): number {
  return b.sun + b.internal + b.heating - b.cooling + b.air + b.transmission - b.storage;
}

/** Runs a finished year once more from its start and keeps the terms of its heat balance. */
export function yearBalance(
  model: RoomModel,
  drivers: RoomDrivers,
  sun: Float64Array,
  year: RoomYear,
): YearBalance {
  const room = createRoom(model);
  const input = emptyInput(model);
  const hour0: HeatBalance = {
    sun: 0,
    internal: 0,
    heating: 0,
    cooling: 0,
    air: 0,
    transmission: 0,
    storage: 0,
  };
  const terms = Object.keys(hour0) as (keyof HeatBalance)[];
  const result = Object.fromEntries(
    terms.map((term) => [term, new Float64Array(HOURS)]),
  ) as YearBalance;
  room.reset(year.start);
  for (let hour = 0; hour < HOURS; hour++) {
    room.step(hour, hourInput(input, drivers, sun, hour));
    room.balance(hour0);
    for (const term of terms) result[term][hour] = hour0[term];
  }
  return result;
}
