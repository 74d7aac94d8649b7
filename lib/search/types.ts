import type { Text } from '../problem/index.ts';
import type { Schedule } from '../schedule/index.ts';

/** What a schedule is searched for: all openings of a wall, or all blinds of a group. */
export type SearchTarget = { facade: string } | { group: string };

/**
 * Kinds of schedule that are tried:
 * - `timer`: down and up by the clock, in a season;
 * - `irradiance`: down and up by the sun on the facade, in a season;
 * - `tracking`: the same with slats that follow the sun;
 * - `room`: down and up by the temperature of the room, all year;
 * - `roomSun`: down while both sun and room ask for it, all year.
 */
export type FamilyId = 'timer' | 'irradiance' | 'tracking' | 'room' | 'roomSun';

/**
 * What each thing given up is worth, in view hours. A schedule's price is the sum; of schedules that
 * keep the criterion the one with the lowest price is the best.
 */
export interface SearchWeights {
  /** An hour with somebody in, the sun up and the blind down. */
  viewHour: number;
  /** A kWh of heating that the sun kept out would have saved. */
  usefulKWh: number;
  /** One move of the blind. */
  move: number;
  /** An hour over, though the criterion is kept. */
  hourOver: number;
}

/** Values that a search may use; absent: all on its grids. */
export interface AllowedValues {
  /** First and last days of the season, `MM-DD`. */
  from?: readonly string[];
  to?: readonly string[];
  /** Clock times down and up, minutes after midnight on the quarter hour. */
  down?: readonly number[];
  up?: readonly number[];
}

export interface SearchOptions {
  /** Kinds of schedule to try; absent: all that the blinds can do. */
  families?: readonly FamilyId[];
  /** Changes to SEARCH_WEIGHTS. */
  weights?: Partial<SearchWeights>;
  /** Part of the criterion's limit to keep in hand, 0 to under 1; 0 where absent. */
  reserve?: number;
  /** Most studies to run; MOST_RUNS where absent. */
  mostRuns?: number;
  allowed?: AllowedValues;
}

/** What one schedule comes to. */
export interface SearchFigures {
  /** Hours over in the rooms behind the target, by the chosen criterion. */
  hours: number;
  /** Whether each of these rooms keeps its criterion, with the reserve in hand. */
  kept: boolean;
  /** Rooms that break it. */
  broken: number;
  /** How far they are beyond that, hours a year (degree-hours where it counts these). */
  beyond: number;
  /** Sun through the target's openings in summer, kWh. */
  summerGain: number;
  /** Sun in winter that raised blinds would let in and these do not, kWh. */
  winterLost: number;
  /** Heat the rooms need in a year over what they need with the blinds raised, kWh. */
  usefulLost: number;
  /** Hours with somebody in, the sun up and the blind down; mean over the target's glass. */
  viewHoursLost: number;
  /** Moves of the blind that moves most: in the year, and a day over the months it moves in. */
  moves: number;
  movesPerDay: number;
  /** What is given up by the weights, in view hours. */
  price: number;
}

/** The best schedule of one kind. */
export interface FamilyFinding {
  family: FamilyId;
  schedule: Schedule;
  /** The schedule as short lines that can be set at a timer or a control. */
  lines: string[];
  figures: SearchFigures;
  /** Studies run for it. */
  runs: number;
  /** Every schedule of its grid was run, so none of its kind on that grid is better. */
  full: boolean;
}

/** The reference with hindsight. */
export interface IdealFinding {
  figures: SearchFigures;
  /** Days of the year on which it is lowered. */
  days: number;
  /** Whether it is better than every schedule found or planned, or only as good as the best. */
  better: boolean;
  runs: number;
}

/** All that a search found; plain data. */
export interface SearchFindings {
  target: SearchTarget;
  /** Name of the target, as in the lines. */
  name: string;
  openings: string[];
  rooms: string[];
  /** Openings that have no blind in the project and were given a stock external one. */
  stock: string[];
  /** Groups that blinds of the target were taken out of. */
  ungrouped: string[];
  /** In English, as all data of findings. */
  criterion: string;
  weights: SearchWeights;
  reserve: number;
  hemisphere: 'north' | 'south';
  planned: SearchFigures;
  alwaysUp: SearchFigures;
  /** Down day and night in the warm half-year. */
  seasonDown: SearchFigures;
  /** The best of each kind, in the order of FamilyId; none where raised blinds cannot be bettered. */
  families: FamilyFinding[];
  /** The best of all. */
  choice: FamilyId | 'alwaysUp' | 'seasonDown';
  /** Whether what is planned is better than all that was found, by the same order. */
  plannedBetter: boolean;
  /** The choice as a schedule, lines and figures. */
  found: { schedule: Schedule; lines: string[]; figures: SearchFigures };
  ideal: IdealFinding;
  /** Studies run in all. */
  runs: number;
  warnings: Text[];
}

/** Where a search is; given after every study. */
export interface SearchProgress {
  target: SearchTarget;
  stage: 'references' | FamilyId | 'ideal';
  runs: number;
  /** Studies it will run at most. */
  most: number;
  /** The best schedule found so far. */
  best?: { lines: string[]; figures: SearchFigures };
}
