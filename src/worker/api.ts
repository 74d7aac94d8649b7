import type { FilePreview, TableLayout, TypicalYear } from '../../lib/climate/index.ts';
import type { Problem, Text } from '../../lib/problem/index.ts';
import type { OpeningResult, RoomResult, StudyResult } from '../../lib/study/index.ts';

/** An opening's results without its hourly series, which are asked for one by one. */
export type OpeningSummary = Omit<OpeningResult, 'hourly' | 'blind'> & {
  blind?: Omit<NonNullable<OpeningResult['blind']>, 'state'>;
};

/** What a study says without its hourly series. */
export type StudySummary = Omit<StudyResult, 'openings' | 'rooms' | 'calendar' | 'sunny'> & {
  openings: OpeningSummary[];
  rooms: RoomSummary[];
};

/** A room's results without the hours they come from. */
export type RoomSummary = Omit<RoomResult, 'runs'>;

/** A room's year without or with its shading. */
export type RoomScheme = keyof RoomResult['runs'];

/** What is known of a room hour by hour: C, W and m3/s. */
export type RoomQuantity = 'operative' | 'air' | 'heating' | 'cooling' | 'airFlow';

export type RunReply =
  | { ok: true; summary: StudySummary; warnings: Problem[]; milliseconds: number }
  | { ok: false; problems: Problem[] };

/** The hourly weather of a study, for charts. */
export type WeatherSeries = Pick<TypicalYear, 'ghi' | 'dni' | 'dhi' | 'dryBulb' | 'wind'>;

/** An hourly weather text that the user gave, with its name. */
export interface HourlyFile {
  text: string;
  fileName: string;
  /** How to read it as a table; found from the text where absent. */
  table?: TableLayout;
}

/** What an hourly weather text gives, before it is taken. */
export type WeatherPreview = Omit<FilePreview, 'year'> & { year?: WeatherFacts };

/** A year of weather in a few figures. */
export interface WeatherFacts {
  name: string;
  note: Text;
  latitude: number;
  longitude: number;
  elevation: number;
  /** Sums of the year, kWh/m2. */
  ghi: number;
  dni: number;
  dhi: number;
  /** Degrees C. */
  coldest: number;
  mean: number;
  warmest: number;
  /** m/s. */
  wind: number;
  messages: Text[];
}

/** The hourly quantities of an opening. */
export type HourlyOf = keyof OpeningResult['hourly'];
