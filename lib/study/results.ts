import type { BlindYear } from './blindYear.ts';
import type { Plane } from '../opening/index.ts';
import type { YearSource } from '../climate/index.ts';
import type { Text } from '../problem/index.ts';
import type { YearCalendar } from '../time/index.ts';
import type { StudyPlace } from './place.ts';
import type { RoomOutcome } from './roomOutcome.ts';
import type { RoomRun } from './roomRun.ts';
import type { EnergySums, Peak } from './summary.ts';

/** The four quantities followed from the sky to the room. */
export interface GainSums {
  /** On the plane of the glass, with nothing near it to shade it. */
  incident: EnergySums;
  /** On the glass in its reveal, under its overhang and between its fins. */
  sunlit: EnergySums;
  /** Solar gain of the bare glass. */
  without: EnergySums;
  /** Solar gain with insect screen and blind. */
  with: EnergySums;
}

/** Hourly means in W per m2 of glass; HOURS values each. */
export interface HourlyGains {
  incident: Float64Array;
  sunlit: Float64Array;
  without: Float64Array;
  with: Float64Array;
}

export interface OpeningResult {
  id: string;
  name: string;
  wall: string;
  room: string;
  plane: Plane;
  count: number;
  /** Glass of all units, m2. */
  glassArea: number;
  /** kWh of all units. */
  sums: GainSums;
  /** Strongest hours, W/m2 of glass. */
  peakWithout: Peak;
  peakWith: Peak;
  hourly: HourlyGains;
  blind?: BlindYear;
}

/** All openings of one wall together. */
export interface FacadeResult {
  id: string;
  name: string;
  plane: Plane;
  glassArea: number;
  sums: GainSums;
  /** Strongest hours of the facade's glass taken together, W/m2 of glass. */
  peakWithout: Peak;
  peakWith: Peak;
  openings: string[];
}

/** One room without and with its shading. */
export interface RoomResult {
  id: string;
  name: string;
  floorArea: number;
  openings: string[];
  without: RoomOutcome;
  with: RoomOutcome;
  /** Hourly temperatures and powers, and what `roomDetail` needs. */
  runs: { without: RoomRun; with: RoomRun };
}

export interface StudyResult {
  place: StudyPlace;
  calendar: YearCalendar;
  weather: YearSource;
  openings: OpeningResult[];
  facades: FacadeResult[];
  rooms: RoomResult[];
  total: GainSums;
  /** By wall id: 1 at the steps with the sun on the open facade, as its sensor tells; STEPS values. */
  sunny: ReadonlyMap<string, Uint8Array>;
  /** Sentences about the input that the user should read. */
  warnings: Text[];
}
