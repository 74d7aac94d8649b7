import { wrap } from 'comlink';
import type { Remote } from 'comlink';
import type { WeatherSite } from '../../../lib/climate/index.ts';
import type { Problem } from '../../../lib/problem/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import type { RoomDetail } from '../../../lib/study/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';
import type {
  HourlyFile,
  HourlyOf,
  RoomQuantity,
  RoomScheme,
  StudySummary,
  WeatherPreview,
  WeatherSeries,
} from '../../worker/api.ts';
import type { EngineHost } from '../../worker/host.ts';
import type { SunDays } from '../../worker/sunDays.ts';
import type { SunHours } from '../../worker/sunHours.ts';
import { faultOf } from './fault.ts';
import type { Fault } from './fault.ts';
import { takeFieldHints } from './fieldHints.svelte.ts';

/** A finished run: its summary, and a number by which charts know that series are of this run. */
export interface Run {
  id: number;
  summary: StudySummary;
  warnings: Problem[];
  milliseconds: number;
}

/**
 * The engine in its worker. Runs never queue up: while one is under way only the latest project
 * waits, so that the answer keeps up with the hand.
 */
export class EngineState {
  /** The last run that worked; kept on screen while problems are mended. */
  run = $state.raw<Run>();
  /** The project of that run. */
  sound = $state.raw<Project>();
  /** What is wrong with the present project; empty where it could be run. */
  problems = $state.raw<Problem[]>([]);
  fault = $state.raw<Fault>();
  busy = $state(false);

  readonly #host: Remote<EngineHost>;
  #waiting: { project: Project; hourly?: HourlyFile } | undefined;
  #given: HourlyFile | undefined;
  #working = false;
  #runs = 0;
  #hinted = false;
  #series = new Map<string, Promise<unknown>>();

  constructor(worker: Worker) {
    this.#host = wrap<EngineHost>(worker);
    worker.addEventListener('error', (event) => {
      this.fault = faultOf(event, 'engine');
      this.busy = this.#working = false;
    });
  }

  /** Asks for a run of this project; a request still waiting is dropped for it. */
  request(project: Project, hourly?: HourlyFile): void {
    this.#waiting = { project, hourly };
    if (!this.#working) void this.#work();
  }

  /** Another project is on screen: the last run is not one of it. */
  forget(): void {
    this.sound = undefined;
  }

  async #work(): Promise<void> {
    this.busy = this.#working = true;
    while (this.#waiting) {
      const { project, hourly } = this.#waiting;
      this.#waiting = undefined;
      try {
        if (hourly !== this.#given) {
          await this.#host.takeHourly(hourly);
          this.#given = hourly;
        }
        const reply = await this.#host.run(project);
        this.fault = undefined;
        void this.#hint();
        if (reply.ok) {
          const { summary, warnings, milliseconds } = reply;
          this.#series.clear();
          this.run = { id: ++this.#runs, summary, warnings, milliseconds };
          this.sound = project;
          this.problems = [];
        } else {
          this.problems = reply.problems;
          if (!this.sound) this.run = undefined;
        }
      } catch (error) {
        this.fault = { said: String(error) };
      }
    }
    this.busy = this.#working = false;
  }

  /** Ranges of the fields; asked for once, after the first answer. */
  async #hint(): Promise<void> {
    if (this.#hinted) return;
    this.#hinted = true;
    takeFieldHints(await this.#host.fieldHints());
  }

  /** What an hourly text would give at a site, before it is taken. */
  preview(file: HourlyFile, site: WeatherSite): Promise<WeatherPreview> {
    return this.#host.preview(file, site);
  }

  /** One hourly series of an opening, W/m2 of glass; asked for once a run. */
  hourly(opening: string, quantity: HourlyOf): Promise<Float64Array | undefined> {
    return this.#once(`${opening}|${quantity}`, () => this.#host.hourly(opening, quantity));
  }

  /** Action number of an opening's blind at each quarter hour. */
  blindState(opening: string): Promise<Uint8Array | undefined> {
    return this.#once(`${opening}|state`, () => this.#host.blindState(opening));
  }

  /** Hourly sum of a quantity over all openings, W. */
  houseHourly(quantity: HourlyOf): Promise<Float64Array | undefined> {
    return this.#once(`|${quantity}`, () => this.#host.houseHourly(quantity));
  }

  /** Share of an opening's glass under its blind at each quarter hour; empty id: of the house's. */
  covered(opening: string): Promise<Float32Array | undefined> {
    return this.#once(`${opening}|covered`, () => this.#host.covered(opening));
  }

  /** One hourly series of a room: C, W or m3/s. */
  roomHourly(
    room: string,
    scheme: RoomScheme,
    quantity: RoomQuantity,
  ): Promise<Float64Array | undefined> {
    const key = `room|${room}|${scheme}|${quantity}`;
    return this.#once(key, () => this.#host.roomHourly(room, scheme, quantity));
  }

  /** What heats a room when it is too hot; slow, so ask once the hand rests. */
  roomDetail(room: string, scheme: RoomScheme): Promise<RoomDetail | undefined> {
    const key = `room|${room}|${scheme}|detail`;
    return this.#once(key, () => this.#host.roomDetail(room, scheme));
  }

  /** Every hour of the run as a CSV file. */
  hourlyCsv(): Promise<string | undefined> {
    return this.#host.hourlyCsv();
  }

  /** The local clock of the run. */
  calendar(): Promise<YearCalendar | undefined> {
    return this.#once('calendar', () => this.#host.calendar());
  }

  /** Sunrise and sunset of each day, and the irradiation outside the atmosphere. */
  sunDays(): Promise<SunDays | undefined> {
    return this.#once('sunDays', () => this.#host.sunDays());
  }

  /** When the sun is on the facade of openings that are moved together, and what it brings. */
  sunHours(members: readonly string[], lead: string): Promise<SunHours | undefined> {
    const key = `sunHours|${[lead, ...members].join('|')}`;
    return this.#once(key, () => this.#host.sunHours(members, lead));
  }

  weather(): Promise<WeatherSeries | undefined> {
    return this.#once('weather', () => this.#host.weatherSeries());
  }

  #once<T>(key: string, ask: () => Promise<T>): Promise<T> {
    let known = this.#series.get(key) as Promise<T> | undefined;
    if (!known) this.#series.set(key, (known = ask()));
    return known;
  }
}
