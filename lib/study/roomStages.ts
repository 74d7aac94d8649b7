import { compileRoom, opaqueSunHeat, runRoom } from '../room/index.ts';
import type { OpeningSun, RoomDrivers, RoomModel, RoomYear } from '../room/index.ts';
import { HOURS } from '../time/index.ts';
import { flowOfYear, screenFlow } from './airflow.ts';
import type { MovedOpening, ReadyController, ReadyOpening } from './blindStages.ts';
import { gainOf, moveAlone } from './blindStages.ts';
import type { Stage, StageCache } from './cache.ts';
import { moveWithRooms } from './coupled.ts';
import type { CoupledRoom } from './coupled.ts';
import type { SiteLight } from './lightStages.ts';
import type { StudyPlace } from './place.ts';
import type { House } from './resolve.ts';
import type { BlindYear } from './blindYear.ts';
import type { RoomRun, RoomRuns } from './roomRun.ts';

/** A room ready to be stepped. */
export interface ReadyRoom {
  model: Stage<RoomModel>;
  /** Heat that sun on its opaque parts leads inwards, W; HOURS values; undefined: none. */
  opaqueSun: Stage<Float64Array | undefined>;
}

/** Stage 6 made ready: one model a room. */
export function readyRooms(
  cache: StageCache,
  site: SiteLight,
  house: House,
  place: StudyPlace,
): Map<string, ReadyRoom> {
  const { calendar, year } = site;
  const ground = cache.get('mean outdoors', [cache.idOf(year)], () => {
    const sum = year.dryBulb.reduce((total, t) => total + t, 0);
    return sum / HOURS;
  });
  return new Map(
    house.rooms.map((room) => {
      const openings = house.openings.filter((o) => o.room === room.id).map((o) => o.inRoom);
      const inputs = [room, openings, calendar.id, ground.id, place.elevation];
      const model = cache.get('room model', inputs, () =>
        compileRoom(room, openings, calendar.value, {
          groundTemperature: ground.value,
          elevation: place.elevation,
        }),
      );
      const facadeIds = [...site.facades.values()].map((f) => f.id);
      const heated = cache.get('opaque sun', [model.id, facadeIds], () =>
        opaqueSun(site, model.value),
      );
      return [room.id, { model, opaqueSun: heated }];
    }),
  );
}

/** All openings with their blinds moved. */
export interface Moved {
  openings: MovedOpening[];
  /** Room-years already found while blinds and rooms were stepped together, by room id. */
  years?: ReadonlyMap<string, RoomYear>;
}

/**
 * Stages 5 and 6 for the blinds: those that ask for no room are moved by themselves, the others
 * together with their rooms.
 */
export function moveAll(
  cache: StageCache,
  site: SiteLight,
  controllers: ReadonlyMap<string, ReadyController>,
  openings: readonly ReadyOpening[],
  rooms: ReadonlyMap<string, ReadyRoom>,
): Moved {
  const all = [...controllers.values()];
  const alone = all.filter((c) => !c.schedule.value.usesRoom);
  const coupled = all.filter((c) => c.schedule.value.usesRoom);
  const years = new Map<string, Stage<BlindYear>>(
    alone.map((c) => [c.controller.id, moveAlone(cache, site, c)]),
  );
  const moved = (opening: ReadyOpening) => {
    const id = opening.ready?.controller.id;
    return gainOf(cache, opening, id === undefined ? undefined : years.get(id));
  };
  if (coupled.length === 0) return { openings: openings.map(moved) };

  const isCoupled = (o: ReadyOpening) => o.ready?.schedule.value.usesRoom === true;
  const known = new Map(
    openings.filter((o) => !isCoupled(o)).map((o) => [o.opening.id, moved(o)] as const),
  );
  const inputs = [
    coupled.map((c) => [c.schedule.id, c.sensors.id, c.options, c.controller.id]),
    openings.map((o) => [o.hourGain.id, known.get(o.opening.id)?.gain.id, o.opening.screen]),
    [...rooms.values()].map((r) => [r.model.id, r.opaqueSun.id]),
    site.wind.id,
    site.sunUp.id,
  ];
  const together = cache.get('moves with rooms', inputs, () =>
    moveWithRooms(
      site,
      [...rooms].map(([id, room]): CoupledRoom => ({
        model: room.model.value,
        opaqueSun: room.opaqueSun.value,
        openings: openings
          .filter((o) => o.opening.room === id)
          .map((opening) => {
            const done = known.get(opening.opening.id);
            const screened = screenFlow(opening.opening, site.calendar.value);
            const gain = done?.gain.value;
            return {
              opening,
              screened,
              known: gain && { gain, state: done.blind?.value.state },
            };
          }),
      })),
      coupled,
    ),
  );
  together.value.blinds.forEach((year, i) => {
    years.set(
      year.controller,
      cache.get('moves', [together.id, i], () => year),
    );
  });
  return {
    openings: openings.map((o): MovedOpening => {
      const done = known.get(o.opening.id);
      if (done) return done;
      const { id } = o.opening;
      // An opening outside all rooms has no part in the loop.
      const found = together.value.gains.get(id);
      if (!found) return moved(o);
      const gain = cache.get('blind', [together.id, id], () => found);
      return { ...o, gain, blind: years.get(o.ready!.controller.id) };
    }),
    years: new Map([...rooms.keys()].map((id, i) => [id, together.value.rooms[i]])),
  };
}

/** Stage 6: every room's year without and with its shading. */
export function runRooms(
  cache: StageCache,
  site: SiteLight,
  rooms: ReadonlyMap<string, ReadyRoom>,
  { openings: moved, years }: Moved,
): RoomRuns[] {
  return [...rooms].map(([id, room]) => {
    const openings = moved.filter((m) => m.opening.room === id);
    const run = (name: string, inputs: unknown[], make: () => RoomRun) =>
      cache.get('room', [name, ...readyIds(room), areasOf(openings), site.wind.id, inputs], make);
    const without = run(
      'without',
      openings.map((o) => o.bare.id),
      () => roomRun(site, room, openings, 'without'),
    );
    const withShading = run(
      'with',
      openings.map((o) => [o.gain.id, o.blind?.id, o.opening.screen]),
      () => roomRun(site, room, openings, 'with', years?.get(id)),
    );
    return { id, without, with: withShading };
  });
}

function readyIds({ model, opaqueSun }: ReadyRoom): number[] {
  return [model.id, opaqueSun.id];
}

function areasOf(openings: readonly MovedOpening[]): number[] {
  return openings.map((o) => o.shade.value.glassArea * o.opening.count);
}

function roomRun(
  site: SiteLight,
  room: ReadyRoom,
  openings: readonly MovedOpening[],
  shading: 'without' | 'with',
  known?: RoomYear,
): RoomRun {
  const model = room.model.value;
  const areas = areasOf(openings);
  const perArea = openings.map((o) => (shading === 'with' ? o.gain.value : o.bare.value.gain));
  const sun = new Float64Array(HOURS);
  perArea.forEach((gain, o) => addTimes(sun, gain, areas[o]));
  // Only causes, and a loop that is yet to run, ask for these.
  const suns = lazy(() =>
    perArea.map((gain, o): OpeningSun => {
      const through = addTimes(new Float64Array(HOURS), gain, areas[o]);
      return { id: openings[o].opening.id, sun: through };
    }),
  );
  const flowFactors = lazy(() =>
    shading === 'with' ? openings.map((o) => shadedFlow(site, o)) : undefined,
  );
  const drivers: RoomDrivers = {
    outdoor: site.year.dryBulb,
    wind: site.wind.value,
    opaqueSun: room.opaqueSun.value,
    get flowFactors() {
      return flowFactors();
    },
  };
  const year = known ?? runRoom(model, drivers, sun);
  return {
    model,
    drivers,
    sun,
    year,
    get suns() {
      return suns();
    },
  };
}

/** Adds `factor` times the hours of `values` to `sum`, and gives it. */
function addTimes(sum: Float64Array, values: Float64Array, factor: number): Float64Array {
  for (let hour = 0; hour < HOURS; hour++) sum[hour] += factor * values[hour];
  return sum;
}

/** Made when it is first asked for, once. */
function lazy<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}

/**
 * Heat that sun on a room's opaque parts leads inwards, W; HOURS values. Parts do not say which way
 * they face, so each gets the mean of the walls and roof slopes that the project names, an estimate
 * that only parts with a solar absorptance take part in.
 */
function opaqueSun(site: SiteLight, { room }: RoomModel): Float64Array | undefined {
  if (room.envelope.kind !== 'parts') return undefined;
  const perIrradiance = room.envelope.parts.reduce((sum, p) => sum + opaqueSunHeat(p, 1), 0);
  const facades = [...site.facades.values()];
  if (perIrradiance === 0 || facades.length === 0) return undefined;
  const heat = new Float64Array(HOURS);
  for (const { value } of facades) {
    const { incident } = value;
    const weight = perIrradiance / facades.length;
    for (let hour = 0; hour < HOURS; hour++) heat[hour] += weight * incident[hour];
  }
  return heat;
}

/** Airing flow past screen and blind at one opening; HOURS values. */
function shadedFlow(site: SiteLight, { opening, blind }: MovedOpening): Float64Array {
  const screened = screenFlow(opening, site.calendar.value);
  const airs = opening.inRoom.airing.kind !== 'none';
  return airs ? flowOfYear(opening, screened, blind?.value.state) : screened;
}
