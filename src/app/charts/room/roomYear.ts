import type { YearCalendar } from '../../../../lib/time/index.ts';
import type { UnitSystem } from '../../../../lib/units/index.ts';
import type { RoomQuantity, RoomScheme, WeatherSeries } from '../../../worker/api.ts';
import { sheetGrid } from '../sheetGrid.ts';
import type { SheetGrid } from '../sheetGrid.ts';
import { temperatureUnit } from '../shownUnit.ts';
import type { ShownUnit } from '../shownUnit.ts';
import { dayMaxima, hoursOver } from './dayHeat.ts';

/** The engine, as far as the charts of a room ask it. */
export interface RoomSource {
  calendar(): Promise<YearCalendar | undefined>;
  weather(): Promise<WeatherSeries | undefined>;
  roomHourly(
    room: string,
    scheme: RoomScheme,
    quantity: RoomQuantity,
  ): Promise<Float64Array | undefined>;
}

/** A room's year without or with its shading; DAYS values each where not said otherwise. */
export interface RoomDaysOf {
  /** Hours over the limit. */
  hours: Uint8Array;
  /** Warmest hour, in shown units. */
  warmest: Float64Array;
  /** All hours of the year, warmest first, in shown units; HOURS values. */
  ranked: Float64Array;
}

/** Everything the day charts of a room draw. */
export interface RoomYearData {
  calendar: YearCalendar;
  grid: SheetGrid;
  temperature: ShownUnit;
  /** Operative temperature over which an hour is too hot, in shown units. */
  limit: number;
  without: RoomDaysOf;
  with: RoomDaysOf;
  /** Warmest hour outdoors of each day, in shown units. */
  outdoor: Float64Array;
}

/** Asks the engine for all of it. Undefined where the engine has no such room any more. */
export async function loadRoomYear(
  source: RoomSource,
  room: string,
  limit: number,
  system: UnitSystem,
): Promise<RoomYearData | undefined> {
  const [calendar, weather, without, shaded] = await Promise.all([
    source.calendar(),
    source.weather(),
    source.roomHourly(room, 'without', 'operative'),
    source.roomHourly(room, 'with', 'operative'),
  ]);
  if (!calendar || !weather || !without || !shaded) return undefined;
  const temperature = temperatureUnit(system);
  const daysOf = (operative: Float64Array): RoomDaysOf => ({
    hours: hoursOver(operative, calendar, limit),
    warmest: dayMaxima(operative, calendar).map(temperature.show),
    ranked: operative.map(temperature.show).sort().reverse(),
  });
  return {
    calendar,
    grid: sheetGrid(calendar),
    temperature,
    limit: temperature.show(limit),
    without: daysOf(without),
    with: daysOf(shaded),
    outdoor: dayMaxima(weather.dryBulb, calendar).map(temperature.show),
  };
}
