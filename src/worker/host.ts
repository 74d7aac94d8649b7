import { InputError } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { checkProject } from '../../lib/project/index.ts';
import { createEngine } from '../../lib/study/index.ts';
import type { StudyResult } from '../../lib/study/index.ts';
import type { TypicalYear } from '../../lib/climate/index.ts';
import { stations } from '../library/climates.ts';
import { blinds, glazings } from '../library/index.ts';
import { yearOf } from '../library/year.ts';
import type { YearCalendar } from '../../lib/time/index.ts';
import type { HourlyFile, HourlyOf, RunReply, WeatherSeries } from './api.ts';
import { coveredShare, houseHourly } from './houseSeries.ts';
import { sunDays } from './sunDays.ts';
import type { SunDays } from './sunDays.ts';
import { summaryOf } from './summary.ts';

const library = { glazings, blinds, stations };

/**
 * The engine as the app sees it. It keeps the last result, so that a chart can ask for the one
 * hourly series it shows and the rest need not cross to the page.
 */
export class EngineHost {
  private readonly engine = createEngine();
  private weather?: { key: string; year: TypicalYear };
  private result?: StudyResult;
  private sun?: { calendar: YearCalendar; key: string; days: SunDays };

  /** Checks a project and runs its year; problems come back as data. */
  run(data: unknown, hourly?: HourlyFile): RunReply {
    const start = performance.now();
    try {
      const { project, problems, warnings } = checkProject(data, library);
      if (!project) return { ok: false, problems };
      const year = this.yearFor(project, hourly);
      this.result = this.engine.run({ project, library, year });
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

  /** Hourly weather of the last run. */
  weatherSeries(): WeatherSeries | undefined {
    const year = this.weather?.year;
    if (!year) return undefined;
    const { ghi, dni, dhi, dryBulb, wind } = year;
    return { ghi, dni, dhi, dryBulb, wind };
  }

  private yearFor(project: Project, hourly?: HourlyFile): TypicalYear {
    const { climate, site } = project;
    const place = climate.kind === 'station' ? [] : [site.latitude, site.longitude, site.elevation];
    const key = JSON.stringify([climate, site.timeZone, project.year, place, hourly?.fileName]);
    const known = this.weather;
    if (known?.key === key && !hourly) return known.year;
    const year = yearOf(project, stations, hourly);
    this.weather = { key, year };
    return year;
  }
}
