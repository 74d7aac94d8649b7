import type { MonthlyNormals } from './types.ts';

/** A place that ships with its monthly normals (`data/climates.json`). */
export interface ClimateStation {
  /** Lower case with hyphens, unique: `burlington-vt`. */
  id: string;
  /** As shown: `Burlington, Vermont`. */
  name: string;
  /** ISO 3166-1 alpha-2. */
  country: string;
  /** Degrees, north positive. */
  latitude: number;
  /** Degrees, east positive. */
  longitude: number;
  /** Metres above sea level. */
  elevation: number;
  /** IANA time zone. */
  timeZone: string;
  normals: MonthlyNormals;
  /** Hours of the source's typical year over 25 and over 30 degrees C. */
  hoursAbove25C: number;
  hoursAbove30C: number;
  /** Key in `ClimateData.sources`. */
  source: string;
  /** The station or grid point as its publisher names it. */
  sourceStation: string;
}

/** Where normals come from. */
export interface ClimateSource {
  /** What was computed from what, in one sentence. */
  note: string;
  publisher: string;
  /** Document or data set, with its year. */
  reference: string;
  license: string;
}

/** The shape of `data/climates.json`. */
export interface ClimateData {
  sources: Record<string, ClimateSource>;
  stations: ClimateStation[];
}
