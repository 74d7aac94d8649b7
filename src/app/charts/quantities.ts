import { fromSI, unitOf } from '../../../lib/units/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import { HOURS, STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import type { HourlyOf, WeatherSeries } from '../../worker/api.ts';
import type { SheetQuantity } from '../state/selection.svelte.ts';
import type { RampKind } from './ramp.ts';

/** Where hourly series come from: the engine in its worker. An empty id is the house. */
export interface SeriesSource {
  hourly(opening: string, quantity: HourlyOf): Promise<Float64Array | undefined>;
  houseHourly(quantity: HourlyOf): Promise<Float64Array | undefined>;
  covered(opening: string): Promise<Float32Array | undefined>;
  weather(): Promise<WeatherSeries | undefined>;
}

/** How values of a quantity are measured: which unit they are shown in and how they add up. */
export type Measure = 'heat' | 'share' | 'temperature';

/** One row of the table of quantities that a year sheet can show. */
export interface SheetKind {
  key: SheetQuantity;
  /** In lower case, as it stands in a sentence. */
  name: string;
  /** What it is, for whoever has not met it. */
  about: string;
  measure: Measure;
  ramp: RampKind;
  /** Quantities that are read against each other share the scale of this one. */
  scaleOf?: SheetQuantity;
  /** Where the two arms of a temperature ramp meet, C. */
  middle?: number;
  /** The same for every opening. */
  ofSite?: boolean;
  /** In SI, HOURS values: W/m2 of glass, or W for the house; 0 to 1; degrees C. */
  load(source: SeriesSource, opening: string): Promise<Float64Array | undefined>;
}

function heat(quantity: HourlyOf): SheetKind['load'] {
  return (source, opening) =>
    opening ? source.hourly(opening, quantity) : source.houseHourly(quantity);
}

/** Everything a year sheet can show; a new quantity is a new row. */
export const sheetKinds: readonly SheetKind[] = [
  {
    key: 'without',
    name: 'solar gain without shading',
    about: 'Heat of the sun that the bare glass would let in.',
    measure: 'heat',
    ramp: 'power',
    load: heat('without'),
  },
  {
    key: 'with',
    name: 'solar gain with shading',
    about: 'Heat of the sun that is left behind insect screen and blind as scheduled.',
    measure: 'heat',
    ramp: 'power',
    scaleOf: 'without',
    load: heat('with'),
  },
  {
    key: 'stopped',
    name: 'solar gain stopped',
    about: 'What insect screen and blind keep out: gain without less gain with.',
    measure: 'heat',
    ramp: 'power',
    scaleOf: 'without',
    load: stopped,
  },
  {
    key: 'lowered',
    name: 'glass covered by the blind',
    about: 'Share of the glass under a lowered blind, mean of the hour.',
    measure: 'share',
    ramp: 'share',
    load: loweredShare,
  },
  {
    key: 'sunlit',
    name: 'irradiance on the glass',
    about: 'Sun and sky on the glass in its reveal, under its overhang and between its fins.',
    measure: 'heat',
    ramp: 'power',
    scaleOf: 'incident',
    load: heat('sunlit'),
  },
  {
    key: 'incident',
    name: 'irradiance on the open facade',
    about: 'Sun and sky on the plane of the glass with nothing near it to shade it.',
    measure: 'heat',
    ramp: 'power',
    load: heat('incident'),
  },
  {
    key: 'outdoor',
    name: 'outdoor temperature',
    about: 'Dry-bulb temperature of the air outside.',
    measure: 'temperature',
    ramp: 'temperature',
    middle: 20,
    ofSite: true,
    load: async (source) => (await source.weather())?.dryBulb,
  },
];

/** The row of a quantity. */
export function sheetKind(key: SheetQuantity): SheetKind {
  return sheetKinds.find((kind) => kind.key === key)!;
}

async function stopped(source: SeriesSource, opening: string): Promise<Float64Array | undefined> {
  const [without, left] = await Promise.all([
    heat('without')(source, opening),
    heat('with')(source, opening),
  ]);
  return without && left && without.map((gain, hour) => gain - left[hour]);
}

async function loweredShare(
  source: SeriesSource,
  opening: string,
): Promise<Float64Array | undefined> {
  const covered = await source.covered(opening);
  if (!covered) return undefined;
  const hours = new Float64Array(HOURS);
  covered.forEach((share, step) => {
    hours[Math.floor(step / STEPS_PER_HOUR)] += share / STEPS_PER_HOUR;
  });
  return hours;
}

/** A measure in the units of the page: of an opening per area of its glass, of a house in all. */
export interface ShownUnit {
  symbol: string;
  digits: number;
  /** From the engine's unit to the shown one. */
  show(value: number): number;
  /** Unit of the sum of hourly values, where that means something, and its size in it. */
  sum?: { symbol: string; digits: number; size: number };
}

/** The unit a measure is shown in. Energy is in thousands of power-hours in both systems. */
export function shownUnit(measure: Measure, house: boolean, system: UnitSystem): ShownUnit {
  if (measure === 'share') {
    const sum = { symbol: 'h', digits: 0, size: 0.01 };
    return { symbol: '%', digits: 0, show: (value) => value * 100, sum };
  }
  if (measure === 'temperature') {
    const { symbol, digits } = unitOf('temperature', system);
    return { symbol, digits, show: (value) => fromSI('temperature', system, value) };
  }
  const { symbol, digits } = unitOf(house ? 'power' : 'irradiance', system);
  const energy = unitOf(house ? 'energy' : 'irradiation', system).symbol;
  return {
    symbol: house ? symbol : `${symbol} of glass`,
    digits,
    show: (value) => fromSI(house ? 'power' : 'irradiance', system, value),
    sum: { symbol: house ? energy : `${energy} of glass`, digits: house ? 0 : 1, size: 0.001 },
  };
}

/** A series in shown units; the same array where nothing changes. */
export function shownSeries(values: Float64Array, unit: ShownUnit): Float64Array {
  return unit.show(1) === 1 && unit.show(0) === 0 ? values : values.map(unit.show);
}
