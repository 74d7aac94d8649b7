import type { Problem, Text } from '../../problem/index.ts';
import type { YearSource } from '../types.ts';

/** The hourly columns that are read. */
export type Quantity = 'ghi' | 'dni' | 'dhi' | 'dryBulb' | 'wind';

export const QUANTITIES: readonly Quantity[] = ['ghi', 'dni', 'dhi', 'dryBulb', 'wind'];

/** Where the weather was taken, for files that do not say it themselves. */
export interface WeatherSite {
  /** Degrees, north positive. */
  latitude: number;
  /** Degrees, east positive. */
  longitude: number;
  /** Metres above sea level. */
  elevation: number;
  /** Hours east of UTC of the site's standard time; longitude / 15 rounded where absent. */
  standardOffset?: number;
}

/** Order of the numbers in a date; `md` and `dm` have no year. */
export type DateOrder = 'ymd' | 'mdy' | 'dmy' | 'md' | 'dm';

/** Where a table keeps the time of a row; columns counted from 0. */
export type TimeColumns =
  | { kind: 'stamp'; column: number; order: DateOrder }
  | { kind: 'date-time'; date: number; time: number; order: DateOrder }
  | { kind: 'parts'; month: number; day: number; hour: number; minute?: number };

export type IrradianceUnit = 'W/m2' | 'Wh/m2' | 'kWh/m2' | 'kJ/m2' | 'MJ/m2' | 'Btu/ft2';
export type TemperatureUnit = 'C' | 'F' | 'K';
export type WindUnit = 'm/s' | 'km/h' | 'mph' | 'kn';

/** One column in use; `column` counted from 0. Energies are those of one hour. */
export interface ColumnUse<Unit extends string = string> {
  column: number;
  unit: Unit;
}

/** How to read a delimited text of hourly rows. */
export interface TableLayout {
  /** Lines before the first row. */
  headerLines: number;
  /** A blank stands for any run of blanks. */
  delimiter: ',' | ';' | '\t' | '|' | ' ';
  decimal: '.' | ',';
  /** Left out: the rows are the hours of the year in order, from 1 January 00:00 of the file's clock. */
  time?: TimeColumns;
  columns: {
    ghi?: ColumnUse<IrradianceUnit>;
    dni?: ColumnUse<IrradianceUnit>;
    dhi?: ColumnUse<IrradianceUnit>;
    dryBulb?: ColumnUse<TemperatureUnit>;
    /** Left out: 3 m/s all year. */
    wind?: ColumnUse<WindUnit>;
  };
  /** Which moment of its hour a stamp marks; without a time column it does not matter. */
  stamp: 'end' | 'start' | 'middle';
  /**
   * Hours east of UTC of the file's clock, or `site` for the site's standard time. The clock must
   * keep standard time all year; one that changes to summer time is refused.
   */
  utcOffset: number | 'site';
}

/** What a format's own reader hands over: every row of the file, in its order. */
export interface RawYear {
  source: YearSource;
  latitude: number;
  longitude: number;
  elevation: number;
  /** Hours east of UTC of the site's standard time. */
  standardOffset: number;
  /** Hours east of UTC of the stamps. */
  utcOffset: number;
  /** Hours from a stamp to the start of the hour it stands for; -1 where it marks the end. */
  stampToStart: number;
  /**
   * Stamp of each row, hours since 1 January 00:00 in a year of 366 days; undefined where rows are
   * counted instead.
   */
  stamps: Float64Array | undefined;
  /** Line of each row in the file, from 1. */
  lines: Uint32Array;
  /** Values in W/m2, degrees C and m/s; NaN where missing. */
  values: Partial<Record<Quantity, Float64Array>>;
  /** Name of each column as the file has it. */
  names: Partial<Record<Quantity, string>>;
  /** What the reader assumed: sentences for the user. */
  notes: Text[];
}

/** The year's rows put in order: 8,760 values from 1 January on in the file's own clock. */
export interface FileYear {
  values: Partial<Record<Quantity, Float64Array>>;
  /** Line of each hour in the file; 0 where the file has no row for it. */
  lines: Uint32Array;
  /** Start of hour 0, hours since 1 January 00:00 of the file's clock: 0 to under 1. */
  start: number;
  /** Hour of the year of the file's first row. */
  firstHour: number;
  /** 29 February was there and was left out. */
  leapDayCut: boolean;
}

export type CheckId =
  'file' | 'rows' | 'ranges' | 'gaps' | 'irradiance' | 'time' | 'night' | 'balance' | 'clearness';

/** Outcome of one check on a weather file. */
export interface Check {
  id: CheckId;
  level: 'ok' | 'warning' | 'error';
  sentence: Text;
  /** Present for errors: what readTypicalYear throws. */
  problem?: Problem;
}
