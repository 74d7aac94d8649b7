import type { Text } from '../problem/index.ts';

/** Where a typical year came from, for the page and the appendix. */
export interface YearSource {
  kind: 'tmy3' | 'pvgis' | 'table' | 'normals';
  /** Station, grid point or file as the user should read it. */
  name: string;
  /** Publisher and years, or the method, in one sentence. */
  note: Text;
}

/**
 * Twelve months of hourly weather. Every array has 8,760 values; value `i` is the mean over the
 * hour that starts `startUtc + i` hours after 1 January 00:00 UTC. Readers turn the rows so that
 * the year starts within half an hour of the site's own 1 January 00:00 standard time.
 */
export interface TypicalYear {
  source: YearSource;
  /** Degrees, north positive. */
  latitude: number;
  /** Degrees, east positive. */
  longitude: number;
  /** Metres above sea level. */
  elevation: number;
  /** Hours from 1 January 00:00 UTC to the start of hour 0; minus 7 for UTC+7, fractions allowed. */
  startUtc: number;
  /** Global horizontal irradiance, W/m2. */
  ghi: Float64Array;
  /** Direct normal irradiance, W/m2. */
  dni: Float64Array;
  /** Diffuse horizontal irradiance, W/m2. */
  dhi: Float64Array;
  /** Outdoor dry-bulb temperature, degrees C. */
  dryBulb: Float64Array;
  /** Wind speed at 10 m, m/s. */
  wind: Float64Array;
  /** What was filled, cut, turned or split on the way in: sentences for the user. */
  messages: Text[];
}

/** Twelve monthly values, January to December, that a typical year is built from. */
export interface MonthlyNormals {
  /** Mean daily global horizontal irradiation, kWh/m2. */
  ghiKWhPerM2Day: number[];
  /** Mean temperature, degrees C. */
  dryBulbMean: number[];
  /** Mean of the daily minima, degrees C. */
  dryBulbDailyMin: number[];
  /** Mean of the daily maxima, degrees C. */
  dryBulbDailyMax: number[];
  /** Mean wind speed, m/s; 3 m/s where absent. */
  wind?: number[];
  /** Mean daily diffuse horizontal irradiation, kWh/m2, where known. */
  dhiKWhPerM2Day?: number[];
  /** Mean daily direct normal irradiation, kWh/m2, where known. */
  dniKWhPerM2Day?: number[];
  /** Standard deviation of the daily mean temperature inside the month, K, where known. */
  dailyMeanTempStd?: number[];
  /** Standard deviation of the daily clearness index inside the month, where known. */
  dailyClearnessStd?: number[];
}
