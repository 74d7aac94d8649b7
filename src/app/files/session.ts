import type { Project } from '../../../lib/project/index.ts';
import type { HourlyFile } from '../../worker/api.ts';
import { Autosave } from './autosave.ts';
import type { SavingState } from './autosave.ts';
import { newId } from './names.ts';
import { OverwriteError } from './store.ts';
import type { ProjectStore } from './store.ts';

/** What is written of a project in one go. */
export interface Snapshot {
  project: Project;
  /** The last state that could be computed, where `project` cannot; asked for as it is written. */
  sound?: () => Project | undefined;
}

interface Hooks {
  onstate: (state: SavingState) => void;
  /** Written; `savedAt` in ms since the epoch. */
  onsaved: (savedAt: number) => void;
  /** Not written. */
  ontrouble: (error: unknown) => void;
  /** Another page has written the project: this one must go on under another id. */
  onoverwrite: () => void;
}

/** Keeping one open project: its id, what of it is written, what still waits. */
export class Session {
  readonly id: string;
  readonly #store: ProjectStore | undefined;
  readonly #hooks: Hooks;
  readonly #autosave: Autosave<Snapshot>;
  #hourly = new Map<string, HourlyFile>();
  #revision: number;

  /** @param kept id and revision of a project that is kept already */
  constructor(
    store: ProjectStore | undefined,
    hooks: Hooks,
    kept?: { id: string; revision: number },
  ) {
    this.#store = store;
    this.#hooks = hooks;
    this.id = kept?.id ?? newId();
    this.#revision = kept?.revision ?? 0;
    this.#autosave = new Autosave((snapshot) => this.#write(snapshot), {
      onstate: hooks.onstate,
    });
  }

  /** Whether the store has any state of the project. */
  get kept(): boolean {
    return this.#revision > 0;
  }

  get revision(): number {
    return this.#revision;
  }

  /** Whether something is not written yet. */
  get pending(): boolean {
    return this.#autosave.pending;
  }

  change(snapshot: Snapshot): void {
    this.#autosave.change(snapshot);
  }

  /** An hourly file to be written along with the next change. */
  addHourly(file: HourlyFile): void {
    this.#hourly.set(file.fileName, file);
  }

  flush(): Promise<void> {
    return this.#autosave.flush();
  }

  /** Gives up what waits. */
  drop(): void {
    this.#autosave.drop();
  }

  async #write({ project, sound }: Snapshot): Promise<void> {
    try {
      if (!this.#store) throw new Error('The browser keeps nothing for this page.');
      const files = [...this.#hourly.values()];
      if (files.length > 0) {
        await this.#store.putHourly(files.map((file) => ({ ...file, project: this.id })));
        for (const { fileName } of files) this.#hourly.delete(fileName);
      }
      const { serializeProject } = await import('../../../lib/project/index.ts');
      const last = sound?.();
      const savedAt = Date.now();
      this.#revision = await this.#store.save(
        {
          id: this.id,
          name: project.name,
          place: project.site.name,
          text: serializeProject(project),
          sound: last && serializeProject(last),
        },
        this.#revision,
        savedAt,
      );
      this.#hooks.onsaved(savedAt);
    } catch (error) {
      if (error instanceof OverwriteError) {
        this.#hooks.onoverwrite();
        return;
      }
      this.#hooks.ontrouble(error);
      throw error;
    }
  }
}
