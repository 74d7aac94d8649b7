import type { Blind } from '../../lib/blind/index.ts';
import type { MonthlyNormals, TypicalYear } from '../../lib/climate/index.ts';
import type { Decision } from '../../lib/decide/index.ts';
import type { Glazing } from '../../lib/glazing/index.ts';
import type { Project, ProjectOpening, ProjectWall } from '../../lib/project/index.ts';
import type { OpeningResult, StudyResult } from '../../lib/study/index.ts';
import type { YearCalendar } from '../../lib/time/index.ts';
import { coveredShare, houseHourly } from '../worker/houseSeries.ts';
import { summaryOf } from '../worker/summary.ts';
import type { StudySummary } from '../worker/api.ts';

/** A room hour by hour, as far as the page draws it. */
export interface RoomHours {
  id: string;
  /** Operative temperature without and with shading, C; HOURS values. */
  without: Float64Array;
  with: Float64Array;
  /** Sun on the glass of the room's openings, W; HOURS values. */
  sun: Float64Array;
  /** Share of that glass under lowered blinds; STEPS values; absent where there is no blind. */
  covered?: Float32Array;
}

export interface PageHours {
  calendar: YearCalendar;
  /** Dry-bulb temperature outdoors, C; HOURS values. */
  outdoor: Float64Array;
  rooms: RoomHours[];
}

/** Everything the page, its appendix and the order list are made from. */
export interface PageFacts {
  project: Project;
  /** Name of the project's file. */
  fileName: string;
  /** Day the page is made. */
  date: Date;
  /** What ships with the program. */
  glazings: readonly Glazing[];
  blinds: readonly Blind[];
  study: StudySummary;
  hours: PageHours;
  decision: Decision;
  /** Months of the station whose weather is built; absent for a file. */
  normals?: MonthlyNormals;
}

/** The hours of a study as the page needs them. */
export function pageHours(result: StudyResult, outdoor: Float64Array): PageHours {
  return {
    calendar: result.calendar,
    outdoor,
    rooms: result.rooms.map((room): RoomHours => {
      const own = result.openings.filter((o) => o.room === room.id);
      return {
        id: room.id,
        without: room.runs.without.year.operative,
        with: room.runs.with.year.operative,
        ...sunAndCover(own),
      };
    }),
  };
}

/** An opening as far as its sun and its blind go. */
export interface Sunned {
  glassArea: number;
  hourly: Pick<OpeningResult['hourly'], 'sunlit'>;
  blind?: Pick<NonNullable<OpeningResult['blind']>, 'actions' | 'state'>;
}

/** Sun on the glass of some openings together, and the share of it under lowered blinds. */
export function sunAndCover(openings: readonly Sunned[]): Pick<RoomHours, 'sun' | 'covered'> {
  return { sun: houseHourly(openings, 'sunlit'), covered: coveredShare(openings) };
}

/** The facts of a study and a decision made in this process. */
export function pageFacts(
  given: Omit<PageFacts, 'study' | 'hours'>,
  result: StudyResult,
  year: TypicalYear,
): PageFacts {
  return { ...given, study: summaryOf(result), hours: pageHours(result, year.dryBulb) };
}

export function openingOf({ project }: PageFacts, id: string): ProjectOpening {
  return project.openings.find((o) => o.id === id)!;
}

export function wallOf({ project }: PageFacts, id: string): ProjectWall {
  return project.walls.find((w) => w.id === id)!;
}

/** The blind that hangs at an opening; the project's own come before those that ship. */
export function blindOf(facts: PageFacts, id: string): Blind | undefined {
  return [...facts.project.blinds, ...facts.blinds].find((b) => b.id === id);
}

export function glazingOf(facts: PageFacts, id: string): Glazing | undefined {
  return [...facts.project.glazings, ...facts.glazings].find((g) => g.id === id);
}

/** The room that is too hot for longest without shading. */
export function hottestRoom({ study }: PageFacts): StudySummary['rooms'][number] {
  return study.rooms.reduce((a, b) => (b.without.hotHours > a.without.hotHours ? b : a));
}
