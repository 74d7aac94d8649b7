import type { TableLayout } from '../../../lib/climate/index.ts';
import { standardOffset } from '../../../lib/time/index.ts';
import type { Wording } from '../../words/index.ts';
import type { WeatherPreview } from '../../worker/api.ts';
import type { EngineState } from '../state/engine.svelte.ts';
import type { FilesState } from '../state/files.svelte.ts';
import type { ProjectState } from '../state/project.svelte.ts';
import { plainLayout } from './layout.ts';

/** Most bytes of a weather file; a year of hours in many columns is a tenth of it. */
const MOST_BYTES = 60_000_000;
/** Degrees from the site up to which weather counts as its own, as in a study. */
const NEAR = 1;

/** An hourly file between its choice and its acceptance. */
export class WeatherImport {
  fileName = $state('');
  preview = $state.raw<WeatherPreview>();
  reading = $state(false);
  /** Why the file could not even be looked at. */
  problem = $state('');

  readonly #project: ProjectState;
  readonly #engine: EngineState;
  readonly #files: FilesState;
  readonly #words: Wording;
  #text = '';
  /** The layout set by hand; undefined while the reader finds it by itself. */
  #table: TableLayout | undefined;
  #asked = 0;

  constructor(project: ProjectState, engine: EngineState, files: FilesState, words: Wording) {
    this.#project = project;
    this.#engine = engine;
    this.#files = files;
    this.#words = words;
  }

  /** Whether the file's own place is not the site. */
  get elsewhere(): boolean {
    const year = this.preview?.year;
    if (!year || this.preview?.format === 'table') return false;
    const { latitude, longitude } = this.#project.current.site;
    const eastWest = Math.abs(((longitude - year.longitude + 540) % 360) - 180);
    return Math.abs(latitude - year.latitude) > NEAR || eastWest > NEAR;
  }

  async take(file: File): Promise<void> {
    this.cancel();
    this.fileName = file.name;
    if (file.size > MOST_BYTES) {
      this.problem = this.#t('file.tooLarge', {
        file: file.name,
        size: Math.round(file.size / 1e6),
        most: MOST_BYTES / 1e6,
      });
      return;
    }
    this.reading = true;
    try {
      this.#text = await file.text();
      await this.#read();
    } catch (error) {
      this.problem = this.#t('file.unreadable', {
        file: file.name,
        reason: error instanceof Error ? error.message : String(error),
      });
    } finally {
      this.reading = false;
    }
  }

  /** Reads the file again by a layout set by hand. */
  async setLayout(table: TableLayout): Promise<void> {
    this.#table = table;
    await this.#read();
  }

  /** Takes the file for the weather of the project. */
  accept(move: boolean): void {
    const { preview } = this;
    const year = preview?.year;
    if (!preview || !year) return;
    const table = preview.format === 'table' ? preview.layout : undefined;
    const note = `${year.name}. ${this.#words.text(year.note)}`;
    const file = { text: this.#text, fileName: this.fileName, table };
    const fileName = this.#files.addHourly(file);
    this.#project.edit(this.#t('station.weatherEdit', { name: fileName }), (draft) => {
      draft.climate = { kind: 'file', fileName, note };
      if (!move) return;
      const { latitude, longitude, elevation, name } = year;
      Object.assign(draft.site, { latitude, longitude, elevation, name: name.slice(0, 120) });
    });
    this.cancel();
  }

  cancel(): void {
    this.#asked++;
    this.fileName = '';
    this.preview = undefined;
    this.problem = '';
    this.reading = false;
    this.#text = '';
    this.#table = undefined;
  }

  get #t() {
    return this.#words.of('site');
  }

  async #read(): Promise<void> {
    const asked = ++this.#asked;
    const { site, year } = this.#project.current;
    const { latitude, longitude, elevation, timeZone } = site;
    const file = { text: this.#text, fileName: this.fileName, table: this.#table };
    const preview = await this.#engine.preview(file, {
      latitude,
      longitude,
      elevation,
      standardOffset: standardOffset(timeZone, year),
    });
    // An answer that a later question has overtaken is of no use.
    if (asked !== this.#asked) return;
    const unknown = preview.format === 'table' && !preview.layout;
    this.preview = unknown ? { ...preview, layout: plainLayout(this.#text) } : preview;
    if (unknown && !this.#table) await this.#showColumns();
  }

  /** The columns of a table whose layout could not be told, to be pointed at; checks stay. */
  async #showColumns(): Promise<void> {
    const { preview } = this;
    if (!preview?.layout) return;
    const asked = this.#asked;
    const file = { text: this.#text, fileName: this.fileName, table: preview.layout };
    const { latitude, longitude, elevation } = this.#project.current.site;
    const shown = await this.#engine.preview(file, { latitude, longitude, elevation });
    if (asked !== this.#asked) return;
    const { columns, rows } = shown;
    this.preview = { ...preview, columns, rows };
  }
}
