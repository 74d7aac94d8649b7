import { InputError } from '../../lib/problem/index.ts';
import type { FieldHint, Project } from '../../lib/project/index.ts';
import { checkProject, fieldHints } from '../../lib/project/index.ts';
import { createEngine, roomDetail } from '../../lib/study/index.ts';
import type { RoomDetail, RoomRun, StudyResult } from '../../lib/study/index.ts';
import type { ClimateStation, TypicalYear, WeatherSite } from '../../lib/climate/index.ts';
import { builtYear } from '../library/builtYear.ts';
import type { hourlyYear } from '../library/hourlyYear.ts';
import { blinds, glazings } from '../library/index.ts';
import type { YearCalendar } from '../../lib/time/index.ts';
import type {
  HourlyFile,
  HourlyOf,
  RoomQuantity,
  RoomScheme,
  RunReply,
  WeatherPreview,
  WeatherSeries,
} from './api.ts';
import { coveredShare, houseHourly } from './houseSeries.ts';
import { sunDays } from './sunDays.ts';
import type { SunDays } from './sunDays.ts';
import { sunHours } from './sunHours.ts';
import type { SunHours } from './sunHours.ts';
import { summaryOf } from './summary.ts';

/** What ships with the program; the climates are the longest part and come by themselves. */
const shipped = import('../library/climates.ts').then(({ stations }) => ({
  glazings,
  blinds,
  stations,
}));

/**
 * The engine as the app sees it. It keeps the last result, so that a chart can ask for the one
 * hourly series it shows and the rest need not cross to the page.
 */
export class EngineHost {
  private readonly engine = createEngine();
  private weather?: { key: string; file?: HourlyFile; year: TypicalYear };
  private file?: HourlyFile;
  /** Reads hourly files; loaded with the first of them. */
  private readHourly?: typeof hourlyYear;
  private result?: StudyResult;
  /** Temperature over which the last run counts a room as too hot, C. */
  private limit = 0;
  private readonly details = new WeakMap<RoomRun, RoomDetail>();
  private sun?: { calendar: YearCalendar; key: string; days: SunDays };

  /** Takes the hourly file of the runs to come; kept here, as it is long and seldom changes. */
  async takeHourly(file: HourlyFile | undefined): Promise<void> {
    if (file) this.readHourly ??= (await import('../library/hourlyYear.ts')).hourlyYear;
    this.file = file;
  }

  /** What an hourly text would give at a site. */
  async preview(file: HourlyFile, site: WeatherSite): Promise<WeatherPreview> {
    const { previewWeather } = await import('./weatherPreview.ts');
    return previewWeather(file, site);
  }

  /** Range, unit and where to find every field of the project file, by path. */
  fieldHints(): ReadonlyMap<string, FieldHint> {
    return fieldHints();
  }

  /** Checks a project and runs its year; problems come back as data. */
  async run(data: unknown): Promise<RunReply> {
    const library = await shipped;
    const start = performance.now();
    try {
      const { project, problems, warnings } = checkProject(data, library);
      if (!project) return { ok: false, problems };
      const year = this.yearFor(project, library.stations);
      this.result = this.engine.run({ project, library, year });
      this.limit = project.settings.overheatingLimit;
      const milliseconds = performance.now() - start;
      return { ok: true, summary: summaryOf(this.result), warnings, milliseconds };
    } catch (error) {
      if (error instanceof InputError) return { ok: false, problems: [...error.problems] };
      throw error;
    }
  }

  /** One hourly series of an opening of the last run; undefined where there is none such. */
  hourly(opening: string, quantity: HourlyOf): Float64Array | undefined {
    return this.result?.openings.find((o) => o.id === opening)?.hourly[quantity];
  }

  /** The action number of an opening's blind at each quarter hour of the last run. */
  blindState(opening: string): Uint8Array | undefined {
    return this.result?.openings.find((o) => o.id === opening)?.blind?.state;
  }

  /** Hourly sum of a quantity over all openings of the last run, W. */
  houseHourly(quantity: HourlyOf): Float64Array | undefined {
    return this.result && houseHourly(this.result.openings, quantity);
  }

  /**
   * Share of the glass under a lowered blind at each quarter hour of the last run, of one opening
   * or, with an empty id, of the house; undefined where there is no blind.
   */
  covered(opening: string): Float32Array | undefined {
    const openings = this.result?.openings.filter((o) => !opening || o.id === opening);
    return openings && coveredShare(openings);
  }

  /** One hourly series of a room of the last run, without or with its shading. */
  roomHourly(room: string, scheme: RoomScheme, quantity: RoomQuantity): Float64Array | undefined {
    return this.runOf(room, scheme)?.year[quantity];
  }

  /**
   * What heats a room of the last run when it is too hot, and what its sun saves in heating. Takes
   * longer than a run, so it is worked out when asked for, and kept while the room's year stays.
   */
  roomDetail(room: string, scheme: RoomScheme): RoomDetail | undefined {
    const run = this.runOf(room, scheme);
    if (!run) return undefined;
    const known = this.details.get(run);
    if (known?.causes.threshold === this.limit) return known;
    const detail = roomDetail(run, this.limit);
    this.details.set(run, detail);
    return detail;
  }

  /** Every hour of the last run as a CSV file. */
  async hourlyCsv(): Promise<string | undefined> {
    const { result, weather } = this;
    if (!result || !weather) return undefined;
    const { hourlyCsv } = await import('../../lib/findings/index.ts');
    return hourlyCsv(result, weather.year);
  }

  /** The local clock of the last run. */
  calendar(): YearCalendar | undefined {
    return this.result?.calendar;
  }

  /** Sunrise, sunset and irradiation outside the atmosphere of each day of the last run. */
  sunDays(): SunDays | undefined {
    if (!this.result) return undefined;
    const { place, calendar } = this.result;
    const key = `${place.latitude} ${place.longitude}`;
    if (this.sun?.calendar !== calendar || this.sun.key !== key) {
      this.sun = { calendar, key, days: sunDays(place, calendar) };
    }
    return this.sun.days;
  }

  /** When the sun is on the facade of openings that are moved together, and what it brings. */
  sunHours(members: readonly string[], lead: string): SunHours | undefined {
    return this.result && sunHours(this.result, members, lead);
  }

  /** Hourly weather of the last run. */
  weatherSeries(): WeatherSeries | undefined {
    const year = this.weather?.year;
    if (!year) return undefined;
    const { ghi, dni, dhi, dryBulb, wind } = year;
    return { ghi, dni, dhi, dryBulb, wind };
  }

  private runOf(room: string, scheme: RoomScheme): RoomRun | undefined {
    return this.result?.rooms.find(({ id }) => id === room)?.runs[scheme];
  }

  private yearFor(project: Project, stations: readonly ClimateStation[]): TypicalYear {
    const { climate, site } = project;
    const place = climate.kind === 'station' ? [] : [site.latitude, site.longitude, site.elevation];
    const key = JSON.stringify([climate, site.timeZone, project.year, place]);
    const file = climate.kind === 'file' ? this.file : undefined;
    const known = this.weather;
    if (known?.key === key && known.file === file) return known.year;
    const year =
      file && this.readHourly ? this.readHourly(project, file) : builtYear(project, stations);
    this.weather = { key, file, year };
    return year;
  }
}
