import { createRoom, emptyInput } from '../room/index.ts';
import type { RoomInput, RoomModel, SteppingRoom } from '../room/index.ts';
import { createStepper, leadIn } from '../schedule/index.ts';
import type { Stepper } from '../schedule/index.ts';
import { HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import { flowInHour } from './airflow.ts';
import { blindYear } from './blindYear.ts';
import type { BlindYear } from './blindYear.ts';
import type { ReadyController, ReadyOpening } from './blindStages.ts';
import type { SiteLight } from './lightStages.ts';

/** Hours at the end of the year that are run first, so that its start has a past. */
const WARM_UP = 21 * 24;
/** Where rooms stand as the warm-up begins, C. */
const BEGIN = 20;

/** A room with the openings it has, for the common loop of rooms and blinds. */
export interface CoupledRoom {
  model: RoomModel;
  openings: readonly {
    opening: ReadyOpening;
    /** Positions already known; absent where the loop moves the blind. */
    state?: Uint8Array;
    /** Gain already known, W/m2 of glass; absent where the loop moves the blind. */
    gain?: Float64Array;
    /** Airing flow past the insect screen; HOURS values. */
    screened: Float64Array;
  }[];
}

interface Loop {
  stepper: Stepper;
  state: Uint8Array;
  room: number;
}

interface RoomLoop {
  room: SteppingRoom;
  input: RoomInput;
  source: CoupledRoom;
  /** Operative temperature of the hour before, C. */
  operative: number;
}

/**
 * Moves blinds whose rules ask for the room's temperature: rooms and blinds go through the year
 * together, hour by hour. A blind answers to the operative temperature of the hour before, that of
 * its lead opening's room (the first member's where no opening leads).
 */
export function moveWithRooms(
  site: SiteLight,
  rooms: readonly CoupledRoom[],
  controllers: readonly ReadyController[],
): BlindYear[] {
  const roomLoops = rooms.map((source): RoomLoop => ({
    room: createRoom(source.model),
    input: emptyInput(source.model),
    source,
    operative: BEGIN,
  }));
  const loops = controllers.map((ready): Loop => {
    const stepper = createStepper(ready.schedule.value, ready.sensors.value, ready.options);
    leadIn(stepper, BEGIN);
    return { stepper, state: new Uint8Array(STEPS), room: roomOf(ready, rooms) };
  });
  const states = new Map(controllers.map((c, i) => [c.controller.id, loops[i].state]));

  const { dryBulb } = site.year;
  const wind = site.wind.value;
  const hour = (h: number) => {
    for (const { stepper, state, room } of loops) {
      const temperature = roomLoops[room]?.operative ?? NaN;
      for (let i = h * STEPS_PER_HOUR; i < (h + 1) * STEPS_PER_HOUR; i++) {
        state[i] = stepper.step(i, temperature);
      }
    }
    for (const loop of roomLoops) {
      const { room, input, source } = loop;
      input.outdoor = dryBulb[h];
      input.wind = wind[h];
      input.sun = 0;
      source.openings.forEach(({ opening, state, gain, screened }, o) => {
        const known = state ?? states.get(opening.ready?.controller.id ?? '');
        const perArea = gain ? gain[h] : opening.hourGain.value(h, known!);
        const { count } = opening.opening;
        input.sun += perArea * opening.shade.value.glassArea * count;
        input.flowFactor[o] = flowInHour(opening.opening, screened, known, h);
      });
      loop.operative = room.step(h, input).operative;
    }
  };
  for (const { room } of roomLoops) room.reset(BEGIN);
  for (let h = HOURS - WARM_UP; h < HOURS; h++) hour(h);
  for (const { stepper } of loops) stepper.clearCounts();
  for (let h = 0; h < HOURS; h++) hour(h);

  return controllers.map((ready, i) => {
    const { stepper, state } = loops[i];
    const { counts } = stepper;
    return blindYear(ready.controller.id, ready.schedule.value, state, counts, site.sunUp.value);
  });
}

/** Number of the room a controller answers to; -1 where its openings are in none of them. */
function roomOf({ controller }: ReadyController, rooms: readonly CoupledRoom[]): number {
  const lead = controller.members.includes(controller.lead)
    ? controller.lead
    : controller.members[0];
  return rooms.findIndex((r) => r.openings.some((o) => o.opening.opening.id === lead));
}
