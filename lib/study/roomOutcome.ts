import {
  adaptiveHours,
  bedroomNights,
  degreeHours,
  dinDegreeHours,
  hotEpisodes,
  overheatingCauses,
  shareAbove,
  usefulGains,
} from '../room/index.ts';
import type { CauseReport, CriterionResult, HotEpisodes, UsefulGains } from '../room/index.ts';
import type { Project } from '../project/index.ts';
import type { RoomRun } from './roomRun.ts';

type Settings = Project['settings'];

/** How one room fares over the year, with or without shading. */
export interface RoomOutcome {
  /** Hours of the year over the project's limit, and those of them with somebody in. */
  hotHours: number;
  hotHoursOccupied: number;
  /** The criterion the project is judged by. */
  chosen: CriterionResult;
  /** All criteria, the chosen one among them. */
  criteria: CriterionResult[];
  episodes: HotEpisodes;
  /** Heat the room needs in the year, and is relieved of by cooling, kWh. */
  heatingKWh: number;
  coolingKWh: number;
}

/** Judges a room-year by every criterion. */
export function roomOutcome({ model, drivers, year }: RoomRun, settings: Settings): RoomOutcome {
  const { operative } = year;
  const { calendar, occupied } = model;
  const { overheatingLimit: threshold, overheatingShare: limit } = settings;
  const whole = shareAbove(operative, { threshold, limit });
  const present = shareAbove(operative, { threshold, limit, occupied });
  const adaptive = adaptiveHours(operative, drivers.outdoor, calendar, settings.adaptiveCategory);
  const nights = bedroomNights(operative, calendar);
  const din = dinDegreeHours(operative, settings.dinRegion);
  const chosen = { shareAbove: whole, adaptive, bedroomNights: nights, din4108: din };
  return {
    hotHours: whole.hoursOver,
    hotHoursOccupied: present.hoursOver,
    chosen: chosen[settings.criterion],
    criteria: [whole, present, adaptive, nights, din, degreeHours(operative, threshold)],
    episodes: hotEpisodes(operative, calendar, threshold),
    heatingKWh: sum(year.heating) / 1000,
    coolingKWh: sum(year.cooling) / 1000,
  };
}

/** What heats the room when it is too hot, and what its sun saves in heating. */
export interface RoomDetail {
  causes: CauseReport;
  useful: UsefulGains;
}

/** The slower answers about a finished room-year; asked for when they are shown. */
export function roomDetail(run: RoomRun, threshold: number): RoomDetail {
  return {
    causes: overheatingCauses(run.model, run.drivers, run.suns, run.year, threshold),
    useful: usefulGains(run.model, run.drivers, run.sun, run.year),
  };
}

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
