import { DAYS, HOURS, STEPS_PER_HOUR } from '../time/index.ts';
import type { RoomModel } from './compile.ts';
import { runRoom, type RoomDrivers, type RoomYear } from './run.ts';

/** What sun does to the heating of a room. */
export interface UsefulGains {
  /** Heat the room needs in the year with the sun and without the sun in question, Wh. */
  heating: number;
  heatingWithout: number;
  /** Sun in question that comes in on heating days, Wh. */
  sunOnHeatingDays: number;
  /** Heating days: local days on which the room without that sun calls for heat. */
  heatingDays: number;
  /** Heat saved per sun that came in on heating days; 0 without heating days. */
  usefulShare: number;
}

/**
 * The part of the sun that lowers the heating: the year is run once more without it, and the heat
 * saved is set against the sun that came in on the days on which that second room is heated. With
 * `part` the sun of one opening is taken away and all the other stays (its share as the last one
 * in); the parts of several openings need not add up.
 *
 * @param sun sun that comes in through all openings, W; HOURS values
 * @param withSun the year already run with all the sun, to save a run
 */
export function usefulGains(
  model: RoomModel,
  drivers: RoomDrivers,
  sun: Float64Array,
  withSun: RoomYear = runRoom(model, drivers, sun),
  part: Float64Array = sun,
): UsefulGains {
  const without = runRoom(
    model,
    drivers,
    sun.map((w, hour) => Math.max(w - part[hour], 0)),
  );
  const day = (hour: number) => model.calendar.day[hour * STEPS_PER_HOUR];
  const heated = new Uint8Array(DAYS);
  for (let hour = 0; hour < HOURS; hour++) if (without.heating[hour] > 0) heated[day(hour)] = 1;
  let sunOnHeatingDays = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    if (heated[day(hour)] === 1) sunOnHeatingDays += part[hour];
  }
  const heating = yearSum(withSun.heating);
  const heatingWithout = yearSum(without.heating);
  return {
    heating,
    heatingWithout,
    sunOnHeatingDays,
    heatingDays: yearSum(heated),
    usefulShare: sunOnHeatingDays > 0 ? (heatingWithout - heating) / sunOnHeatingDays : 0,
  };
}

function yearSum(values: Float64Array | Uint8Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}
