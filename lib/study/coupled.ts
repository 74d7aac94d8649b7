import { createRoom, emptyInput, runYear } from '../room/index.ts';
import type { RoomInput, RoomModel, RoomYear, SteppingRoom } from '../room/index.ts';
import { createStepper, leadIn } from '../schedule/index.ts';
import type { Stepper } from '../schedule/index.ts';
import { HOURS, STEPS } from '../time/index.ts';
import { flowInHour, flowOfYear, flowPastBlind } from './airflow.ts';
import { blindYear } from './blindYear.ts';
import type { BlindYear } from './blindYear.ts';
import type { ReadyController, ReadyOpening } from './blindStages.ts';
import type { SiteLight } from './lightStages.ts';
import type { HourGain } from './shadedGain.ts';

/** Room temperature that blinds look back on as the first hour begins, C. */
const BEGIN = 20;

/** One opening of a room in the common loop of rooms and blinds. */
export interface CoupledOpening {
  opening: ReadyOpening;
  /** Gain W/m2 of glass and positions where they are known; absent where the loop finds them. */
  known?: { gain: Float64Array; state?: Uint8Array };
  /** Airing flow past the insect screen; HOURS values. */
  screened: Float64Array;
}

export interface CoupledRoom {
  model: RoomModel;
  /** Heat that sun on its opaque parts leads inwards, W; HOURS values. */
  opaqueSun?: Float64Array;
  openings: readonly CoupledOpening[];
}

/** A controller in the loop. */
interface Loop {
  stepper: Stepper;
  state: Uint8Array;
  /** Number of the room it answers to, -1 for none. */
  room: number;
}

/** An opening whose blind the loop moves. */
interface LoopOpening {
  number: number;
  area: number;
  hourGain: HourGain;
  state: Uint8Array;
  /** Gain found, W/m2 of glass; HOURS values. */
  gain: Float64Array;
  airs: boolean;
  /** Airing flow past the insect screen; HOURS values. */
  screened: Float64Array;
  /** What the lowered blind leaves of it. */
  past: number;
  id: string;
}

interface LoopRoom {
  room: SteppingRoom;
  input: RoomInput;
  opaqueSun?: Float64Array;
  /** Sun through the openings whose gain is known, W; HOURS values. */
  knownSun: Float64Array;
  /** What is left of the airing flow at those that air, by opening number; HOURS values each. */
  knownFlows: { number: number; flow: Float64Array }[];
  moving: LoopOpening[];
  /** Operative temperature of the hour before, C. */
  operative: number;
}

/** What rooms and blinds did together. */
export interface CoupledYear {
  blinds: BlindYear[];
  /** Gain of the openings whose blinds were moved here, by id; W/m2 of glass. */
  gains: Map<string, Float64Array>;
  /** In the order of the rooms. */
  rooms: RoomYear[];
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
): CoupledYear {
  const loops = controllers.map((ready): Loop => {
    const stepper = createStepper(ready.schedule.value, ready.sensors.value, ready.options);
    leadIn(stepper, BEGIN);
    return { stepper, state: new Uint8Array(STEPS), room: roomOf(ready, rooms) };
  });
  const states = new Map(controllers.map((c, i) => [c.controller.id, loops[i].state]));
  const loopRooms = rooms.map((room) => loopRoom(room, states));
  const { dryBulb } = site.year;
  const wind = site.wind.value;

  const takeHour = (hour: number) => {
    for (const { stepper, state, room } of loops) {
      const temperature = room < 0 ? NaN : loopRooms[room].operative;
      stepper.stepHour(hour, temperature, state);
    }
    for (const room of loopRooms) stepRoom(room, hour, dryBulb[hour], wind[hour]);
  };
  const years = runYear(
    loopRooms.map((loop) => loop.room),
    takeHour,
    () => loops.forEach(({ stepper }) => stepper.clearCounts()),
  );

  return {
    blinds: controllers.map(({ controller, schedule }, i) => {
      const { stepper, state } = loops[i];
      return blindYear(controller.id, schedule.value, state, stepper.counts, site.sunUp.value);
    }),
    gains: new Map(loopRooms.flatMap(({ moving }) => moving.map((o) => [o.id, o.gain] as const))),
    rooms: years,
  };
}

function stepRoom(loop: LoopRoom, hour: number, outdoor: number, wind: number): void {
  const { input, moving } = loop;
  let sun = loop.knownSun[hour];
  for (const opening of moving) {
    const gain = opening.hourGain(hour, opening.state);
    opening.gain[hour] = gain;
    sun += opening.area * gain;
    if (opening.airs) {
      const { number, screened, past, state } = opening;
      input.flowFactor[number] = flowInHour(screened, past, state, hour);
    }
  }
  for (const { number, flow } of loop.knownFlows) input.flowFactor[number] = flow[hour];
  input.sun = sun;
  if (loop.opaqueSun) input.opaqueSun = loop.opaqueSun[hour];
  input.outdoor = outdoor;
  input.wind = wind;
  loop.operative = loop.room.step(hour, input).operative;
}

function loopRoom(source: CoupledRoom, states: ReadonlyMap<string, Uint8Array>): LoopRoom {
  const loop: LoopRoom = {
    room: createRoom(source.model),
    input: emptyInput(source.model),
    opaqueSun: source.opaqueSun,
    knownSun: new Float64Array(HOURS),
    knownFlows: [],
    moving: [],
    operative: BEGIN,
  };
  source.openings.forEach((o, number) => {
    const { opening, known, screened } = o;
    const area = opening.shade.value.glassArea * opening.opening.count;
    const airs = opening.opening.inRoom.airing.kind !== 'none';
    if (!known) {
      const state = states.get(opening.ready!.controller.id)!;
      const hourGain = opening.hourGain.value;
      const gain = new Float64Array(HOURS);
      const past = flowPastBlind(opening.opening);
      const { id } = opening.opening;
      loop.moving.push({ number, area, hourGain, state, gain, airs, screened, past, id });
      return;
    }
    for (let hour = 0; hour < HOURS; hour++) loop.knownSun[hour] += area * known.gain[hour];
    if (airs) {
      loop.knownFlows.push({ number, flow: flowOfYear(opening.opening, screened, known.state) });
    }
  });
  return loop;
}

/** Number of the room a controller answers to; -1 where its openings are in none of them. */
function roomOf({ controller }: ReadyController, rooms: readonly CoupledRoom[]): number {
  const lead = controller.members.includes(controller.lead)
    ? controller.lead
    : controller.members[0];
  return rooms.findIndex((r) => r.openings.some((o) => o.opening.opening.id === lead));
}
