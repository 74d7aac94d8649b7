import type { TypicalYear } from '../../lib/climate/index.ts';
import type { Problem } from '../../lib/problem/index.ts';
import type { OpeningResult, StudyResult } from '../../lib/study/index.ts';

/** An opening's results without its hourly series, which are asked for one by one. */
export type OpeningSummary = Omit<OpeningResult, 'hourly' | 'blind'> & {
  blind?: Omit<NonNullable<OpeningResult['blind']>, 'state'>;
};

/** What a study says without its hourly series. */
export type StudySummary = Omit<StudyResult, 'openings' | 'calendar'> & {
  openings: OpeningSummary[];
};

export type RunReply =
  | { ok: true; summary: StudySummary; warnings: Problem[]; milliseconds: number }
  | { ok: false; problems: Problem[] };

/** The hourly weather of a study, for charts. */
export type WeatherSeries = Pick<TypicalYear, 'ghi' | 'dni' | 'dhi' | 'dryBulb' | 'wind'>;

/** An hourly weather text that the user gave, with its name. */
export interface HourlyFile {
  text: string;
  fileName: string;
}

/** The hourly quantities of an opening. */
export type HourlyOf = keyof OpeningResult['hourly'];
