import type { YearCalendar } from '../../../lib/time/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import type { WeatherSeries } from '../../worker/api.ts';
import type { SunDays } from '../../worker/sunDays.ts';
import type { Wording } from '../../words/index.ts';
import type { SheetQuantity } from '../state/selection.svelte.ts';
import { sheetKind } from './quantities.ts';
import type { SeriesSource, SheetKind, Target } from './quantities.ts';
import { sheetGrid } from './sheetGrid.ts';
import type { SheetGrid } from './sheetGrid.ts';
import { sheetScale } from './sheetScale.ts';
import type { SheetScale } from './sheetScale.ts';
import { shownSeries, shownUnit, temperatureUnit } from './shownUnit.ts';
import type { ShownUnit } from './shownUnit.ts';

/** The engine, as far as the charts of the year ask it. */
export interface YearSource extends SeriesSource {
  calendar(): Promise<YearCalendar | undefined>;
  sunDays(): Promise<SunDays | undefined>;
  blindState(opening: string): Promise<Uint8Array | undefined>;
}

/** Everything the year sheet and the day strip draw, of one opening or the house. */
export interface YearData {
  calendar: YearCalendar;
  grid: SheetGrid;
  sun: SunDays;
  weather: WeatherSeries;
  heat: ShownUnit;
  temperature: ShownUnit;
  /** In shown units; HOURS values each. */
  without: Float64Array;
  with: Float64Array;
  outdoor: Float64Array;
  /** Scale of gain without shading over the year. */
  gainScale: SheetScale;
  covered?: Float32Array;
  /** Number of the blind's action at each step; of one opening only. */
  state?: Uint8Array;
  /** Operative temperatures of the room and the limit they are held against, in shown units. */
  room?: { without: Float64Array; with: Float64Array; limit: number };
  sheet: SheetData;
}

/** The chosen quantity; without values where there is none such. */
export interface SheetData {
  kind: SheetKind;
  unit: ShownUnit;
  values?: Float64Array;
  scale?: SheetScale;
}

/** Asks the engine for all of it. Undefined where the engine has no such opening any more. */
export async function loadYear(
  words: Wording,
  source: YearSource,
  target: Target,
  quantity: SheetQuantity,
  system: UnitSystem,
): Promise<YearData | undefined> {
  const { opening } = target;
  const heat = shownUnit(words, 'heat', !opening, system);
  const temperature = temperatureUnit(system);
  const series = (key: SheetQuantity) => sheetKind(key).load(source, target);
  const [calendar, sun, weather] = await Promise.all([
    source.calendar(),
    source.sunDays(),
    source.weather(),
  ]);
  const [without, shaded, roomWithout, roomWith] = await Promise.all([
    series('without'),
    series('with'),
    series('roomWithout'),
    series('roomWith'),
  ]);
  const [covered, state, sheet] = await Promise.all([
    source.covered(opening),
    opening ? source.blindState(opening) : undefined,
    loadSheet(words, source, target, quantity, system),
  ]);
  if (!calendar || !sun || !weather || !without || !shaded) return undefined;
  const bare = shownSeries(without, heat);
  return {
    calendar,
    grid: sheetGrid(calendar),
    sun,
    weather,
    heat,
    temperature,
    without: bare,
    with: shownSeries(shaded, heat),
    outdoor: shownSeries(weather.dryBulb, temperature),
    gainScale: sheetScale('power', bare),
    covered,
    state,
    room: roomWithout &&
      roomWith && {
        without: shownSeries(roomWithout, temperature),
        with: shownSeries(roomWith, temperature),
        limit: temperature.show(target.limit),
      },
    sheet,
  };
}

async function loadSheet(
  words: Wording,
  source: SeriesSource,
  target: Target,
  quantity: SheetQuantity,
  system: UnitSystem,
): Promise<SheetData> {
  const kind = sheetKind(quantity);
  const unit = shownUnit(words, kind.measure, !target.opening, system);
  const [values, measure] = await Promise.all(
    [kind, kind.scaleOf ? sheetKind(kind.scaleOf) : kind].map((k) => k.load(source, target)),
  );
  if (!values || !measure) return { kind, unit };
  const middle = kind.middle && unit.show(kind.middle(target));
  const scale = sheetScale(kind.ramp, shownSeries(measure, unit), middle);
  return { kind, unit, values: shownSeries(values, unit), scale };
}
