import {
  compileRoom,
  createRoom,
  type Room,
  type RoomDrivers,
  type RoomModelKind,
} from '../../../lib/room/index.ts';
import { buildCalendar } from '../../../lib/time/index.ts';
import { opening } from './rooms.ts';

/** A zone without summer time whose year starts at local midnight, so that hour % 24 is the clock. */
export const calendar = buildCalendar('Etc/GMT+5', 2023, 5);

/** Hourly operative temperatures from `first` up to `last`, from a room at 20 C all through. */
export function operativeFrom(
  room: Room,
  drivers: RoomDrivers & { sun: Float64Array },
  first: number,
  last: number,
  kind: RoomModelKind = 'layered',
): Float64Array {
  const stepping = createRoom(
    compileRoom(room, [opening], calendar, { groundTemperature: 10, kind }),
  );
  const input = { sun: 0, outdoor: 0, wind: 0, opaqueSun: 0, flowFactor: new Float64Array([1]) };
  stepping.reset(20);
  const operative = new Float64Array(last - first);
  for (let hour = first; hour < last; hour++) {
    input.sun = drivers.sun[hour];
    input.outdoor = drivers.outdoor[hour];
    input.wind = drivers.wind[hour];
    operative[hour - first] = stepping.step(hour, input).operative;
  }
  return operative;
}

export interface Agreement {
  /** Share of the hours within 1 K. */
  within: number;
  /** Root mean square and largest difference, K. */
  rms: number;
  most: number;
  /** Hours over the threshold in the reference and in the model. */
  hoursReference: number;
  hoursModel: number;
}

export function agreement(
  reference: Float64Array,
  model: Float64Array,
  threshold: number,
): Agreement {
  let within = 0;
  let squares = 0;
  let most = 0;
  for (let i = 0; i < reference.length; i++) {
    const off = Math.abs(model[i] - reference[i]);
    if (off <= 1) within++;
    squares += off * off;
    most = Math.max(most, off);
  }
  const over = (t: Float64Array) => t.filter((x) => x > threshold).length;
  return {
    within: within / reference.length,
    rms: Math.sqrt(squares / reference.length),
    most,
    hoursReference: over(reference),
    hoursModel: over(model),
  };
}
