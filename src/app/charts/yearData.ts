import type { YearCalendar } from '../../../lib/time/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import type { WeatherSeries } from '../../worker/api.ts';
import type { SunDays } from '../../worker/sunDays.ts';
import type { SheetQuantity } from '../state/selection.svelte.ts';
import { sheetKind, shownSeries, shownUnit } from './quantities.ts';
import type { SeriesSource, SheetKind, ShownUnit } from './quantities.ts';
import { sheetGrid } from './sheetGrid.ts';
import type { SheetGrid } from './sheetGrid.ts';
import { sheetScale } from './sheetScale.ts';
import type { SheetScale } from './sheetScale.ts';

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
  sheet: SheetData;
}

/** The chosen quantity; without values where the opening has none such. */
export interface SheetData {
  kind: SheetKind;
  unit: ShownUnit;
  values?: Float64Array;
  scale?: SheetScale;
}

/**
 * Asks the engine for all of it. Undefined where the engine has no such opening any more.
 * @param opening id, or empty for the house
 */
export async function loadYear(
  source: YearSource,
  opening: string,
  quantity: SheetQuantity,
  system: UnitSystem,
): Promise<YearData | undefined> {
  const house = !opening;
  const heat = shownUnit('heat', house, system);
  const temperature = shownUnit('temperature', house, system);
  const [calendar, sun, weather, without, shaded, covered, state, sheet] = await Promise.all([
    source.calendar(),
    source.sunDays(),
    source.weather(),
    sheetKind('without').load(source, opening),
    sheetKind('with').load(source, opening),
    source.covered(opening),
    opening ? source.blindState(opening) : undefined,
    loadSheet(source, opening, quantity, system),
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
    sheet,
  };
}

async function loadSheet(
  source: SeriesSource,
  opening: string,
  quantity: SheetQuantity,
  system: UnitSystem,
): Promise<SheetData> {
  const kind = sheetKind(quantity);
  const unit = shownUnit(kind.measure, !opening, system);
  const [values, measure] = await Promise.all(
    [kind, kind.scaleOf ? sheetKind(kind.scaleOf) : kind].map((k) => k.load(source, opening)),
  );
  if (!values || !measure) return { kind, unit };
  const middle = kind.middle === undefined ? undefined : unit.show(kind.middle);
  const scale = sheetScale(kind.ramp, shownSeries(measure, unit), middle);
  return { kind, unit, values: shownSeries(values, unit), scale };
}
