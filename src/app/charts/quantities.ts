import { HOURS, STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import type { HourlyOf, RoomScheme, WeatherSeries } from '../../worker/api.ts';
import type year from '../../../data/words/en/year.json';
import type { Wording } from '../../words/index.ts';
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
  /** Sentence of what it is, for whoever has not met it. */
  about: keyof typeof year.about;
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

function gain(key: 'without' | 'with'): SheetKind {
  return {
    key,
    about: key,
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
    about: 'room',
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
    about: 'over',
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
  gain('without'),
  gain('with'),
  {
    key: 'stopped',
    about: 'stopped',
    of: 'opening',
    measure: 'heat',
    ramp: 'power',
    scaleOf: 'without',
    load: stopped,
  },
  {
    key: 'lowered',
    about: 'lowered',
    of: 'opening',
    measure: 'share',
    ramp: 'share',
    load: loweredShare,
  },
  {
    key: 'sunlit',
    about: 'sunlit',
    of: 'opening',
    measure: 'heat',
    ramp: 'power',
    scaleOf: 'incident',
    load: heat('sunlit'),
  },
  {
    key: 'incident',
    about: 'incident',
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
    about: 'outdoor',
    of: 'site',
    measure: 'temperature',
    ramp: 'temperature',
    middle: () => 20,
    load: async (source) => (await source.weather())?.dryBulb,
  },
];

/** Name of a quantity as it stands in a sentence. */
export function quantityName(words: Wording, key: SheetQuantity): string {
  return words.of('year')(`quantity.${key}`);
}

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
