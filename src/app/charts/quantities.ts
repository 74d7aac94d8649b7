import { HOURS, STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import type { HourlyOf, RoomScheme, WeatherSeries } from '../../worker/api.ts';
import type { SheetQuantity } from '../state/selection.svelte.ts';
import type { RampKind } from './ramp.ts';
import type { Measure } from './shownUnit.ts';

/** Where hourly series come from: the engine in its worker. An empty id is the house. */
export interface SeriesSource {
  hourly(opening: string, quantity: HourlyOf): Promise<Float64Array | undefined>;
  houseHourly(quantity: HourlyOf): Promise<Float64Array | undefined>;
  covered(opening: string): Promise<Float32Array | undefined>;
  roomHourly(
    room: string,
    scheme: RoomScheme,
    quantity: 'operative',
  ): Promise<Float64Array | undefined>;
  weather(): Promise<WeatherSeries | undefined>;
}

/** What series are asked for. */
export interface Target {
  /** Id of an opening; empty: the house. */
  opening: string;
  /** Id of the room whose temperatures are shown; empty: none. */
  room: string;
  /** Operative temperature over which the room counts as too hot, C. */
  limit: number;
}

/** One row of the table of quantities that a year sheet can show. */
export interface SheetKind {
  key: SheetQuantity;
  /** In lower case, as it stands in a sentence. */
  name: string;
  /** What it is, for whoever has not met it. */
  about: string;
  /** What it belongs to. */
  of: 'opening' | 'room' | 'site';
  measure: Measure;
  ramp: RampKind;
  /** Quantities that are read against each other share the scale of this one. */
  scaleOf?: SheetQuantity;
  /** Where the two arms of a temperature ramp meet, C. */
  middle?: (target: Target) => number;
  /** In SI, HOURS values: W/m2 of glass, or W for the house; 0 to 1; degrees C; K. */
  load(source: SeriesSource, target: Target): Promise<Float64Array | undefined>;
}

function heat(quantity: HourlyOf): SheetKind['load'] {
  return (source, { opening }) =>
    opening ? source.hourly(opening, quantity) : source.houseHourly(quantity);
}

function gain(key: 'without' | 'with', name: string, about: string): SheetKind {
  return {
    key,
    name,
    about,
    of: 'opening',
    measure: 'heat',
    ramp: 'power',
    scaleOf: 'without',
    load: heat(key),
  };
}

function room(key: SheetQuantity, scheme: RoomScheme): SheetKind {
  return {
    key,
    name: `room temperature ${scheme} shading`,
    about: 'Operative: the mean of air and surfaces. The colours part at the limit of the project.',
    of: 'room',
    measure: 'temperature',
    ramp: 'temperature',
    scaleOf: 'roomWithout',
    middle: ({ limit }) => limit,
    load: (source, target) => source.roomHourly(target.room, scheme, 'operative'),
  };
}

function over(key: SheetQuantity, scheme: RoomScheme): SheetKind {
  return {
    key,
    name: `overheating ${scheme} shading`,
    about: 'By how much the operative temperature of the room is over the limit of the project.',
    of: 'room',
    measure: 'excess',
    ramp: 'power',
    scaleOf: 'overWithout',
    load: async (source, { room: id, limit }) =>
      (await source.roomHourly(id, scheme, 'operative'))?.map((t) => Math.max(0, t - limit)),
  };
}

/** Everything a year sheet can show; a new quantity is a new row. */
export const sheetKinds: readonly SheetKind[] = [
  gain('without', 'solar gain without shading', 'Heat of the sun that bare glass would let in.'),
  gain(
    'with',
    'solar gain with shading',
    'Heat of the sun that is left behind insect screen and blind as scheduled.',
  ),
  {
    key: 'stopped',
    name: 'solar gain stopped',
    about: 'What insect screen and blind keep out: gain without less gain with.',
    of: 'opening',
    measure: 'heat',
    ramp: 'power',
    scaleOf: 'without',
    load: stopped,
  },
  {
    key: 'lowered',
    name: 'glass covered by the blind',
    about: 'Share of the glass under a lowered blind, mean of the hour.',
    of: 'opening',
    measure: 'share',
    ramp: 'share',
    load: loweredShare,
  },
  {
    key: 'sunlit',
    name: 'irradiance on the glass',
    about: 'Sun and sky on the glass in its reveal, under its overhang and between its fins.',
    of: 'opening',
    measure: 'heat',
    ramp: 'power',
    scaleOf: 'incident',
    load: heat('sunlit'),
  },
  {
    key: 'incident',
    name: 'irradiance on the open facade',
    about: 'Sun and sky on the plane of the glass with nothing near it to shade it.',
    of: 'opening',
    measure: 'heat',
    ramp: 'power',
    load: heat('incident'),
  },
  room('roomWithout', 'without'),
  room('roomWith', 'with'),
  over('overWithout', 'without'),
  over('overWith', 'with'),
  {
    key: 'outdoor',
    name: 'outdoor temperature',
    about: 'Dry-bulb temperature of the air outside.',
    of: 'site',
    measure: 'temperature',
    ramp: 'temperature',
    middle: () => 20,
    load: async (source) => (await source.weather())?.dryBulb,
  },
];

/** The row of a quantity. */
export function sheetKind(key: SheetQuantity): SheetKind {
  return sheetKinds.find((kind) => kind.key === key)!;
}

async function stopped(source: SeriesSource, target: Target): Promise<Float64Array | undefined> {
  const [without, left] = await Promise.all([
    heat('without')(source, target),
    heat('with')(source, target),
  ]);
  return without && left && without.map((bare, hour) => bare - left[hour]);
}

async function loweredShare(
  source: SeriesSource,
  { opening }: Target,
): Promise<Float64Array | undefined> {
  const covered = await source.covered(opening);
  if (!covered) return undefined;
  const hours = new Float64Array(HOURS);
  covered.forEach((share, step) => {
    hours[Math.floor(step / STEPS_PER_HOUR)] += share / STEPS_PER_HOUR;
  });
  return hours;
}
