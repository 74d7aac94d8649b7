import type { Project } from '../../../lib/project/index.ts';
import type { HourlyFile } from '../../worker/api.ts';
import type { Wording } from '../../words/index.ts';
import type { EngineState } from '../state/engine.svelte.ts';
import type { ProjectState } from '../state/project.svelte.ts';
import type { SavingState } from './autosave.ts';
import { copyName, freeFileName } from './names.ts';
import { remember } from './openMark.ts';
import { Session } from './session.ts';
import type { KeptHourly, KeptProject, ProjectStore } from './store.ts';
import type { TabClaim } from './tabs.ts';

/** Why the project on screen went on as a copy, or that it was asked for. */
export type CopyReason = 'copyOfChange' | 'copyOfOverwritten' | 'copyAsked';

interface Surroundings {
  project: ProjectState;
  engine: EngineState;
  words: Wording;
  tabs: TabClaim;
  /** The project goes on as a copy of this name. */
  oncopy: (reason: CopyReason, name: string) => void;
}

/** What is shown beside a project that is kept already. */
export interface Kept {
  row: KeptProject;
  hourly: readonly KeptHourly[];
  /** The last state that could be computed, where the project cannot. */
  sound?: Project;
  /** Another page has it open. */
  guest: boolean;
}

/** The project on screen: where it is kept, what of it is written, and its hourly files. */
export class OpenProject {
  id = $state<string>();
  guest = $state(false);
  saving = $state<SavingState>('idle');
  savedAt = $state<number>();
  trouble = $state<'blocked' | 'full'>();

  readonly #around: Surroundings;
  #store: ProjectStore | undefined;
  #session: Session;
  /** The project as it was opened or handed to the session last. */
  #seen: Project;
  #hourly = $state.raw<ReadonlyMap<string, HourlyFile>>(new Map());

  constructor(around: Surroundings) {
    this.#around = around;
    this.#seen = around.project.current;
    this.#session = this.#newSession();
  }

  get hourlyFile(): HourlyFile | undefined {
    const { climate } = this.#current;
    return climate.kind === 'file' ? this.#hourly.get(climate.fileName) : undefined;
  }

  /** Whether something is not written yet. */
  get pending(): boolean {
    return this.#session.pending;
  }

  /** Id it is kept under, or will be from its first change on. */
  get ownId(): string {
    return this.#session.id;
  }

  keepIn(store: ProjectStore): void {
    this.#store = store;
    this.#session = this.#newSession();
  }

  /** Puts a project on screen; everything that belongs to it changes in the same moment. */
  show(project: Project, kept?: Kept): void {
    const { engine, project: onScreen } = this.#around;
    this.#session = this.#newSession(kept?.row);
    this.#seen = project;
    this.#hourly = new Map(
      (kept?.hourly ?? []).map(({ project: _project, ...file }) => [file.fileName, file] as const),
    );
    this.id = kept?.row.id;
    this.guest = kept?.guest ?? false;
    this.saving = 'idle';
    this.savedAt = kept?.row.savedAt;
    engine.forget();
    onScreen.open(project);
    if (kept?.sound) engine.request(kept.sound, this.hourlyFile);
  }

  /** Takes note of the project on screen; a change of it is kept. */
  changed(project: Project): void {
    if (project === this.#seen) return;
    this.#seen = project;
    if (this.guest) {
      void this.goOnAsCopy('copyOfChange');
      return;
    }
    if (this.id === undefined) this.#begin();
    this.#session.change({ project, sound: () => this.#soundOf(project) });
  }

  /** Keeps the project as it is on screen, whether it was changed or not. */
  keepNow(): void {
    this.#begin();
    this.#session.change({ project: this.#current });
    void this.#session.flush();
  }

  /** Writes what waits, now. */
  flush(): Promise<void> {
    this.changed(this.#current);
    return this.#session.flush();
  }

  /** Gives up what waits. */
  drop(): void {
    this.#session.drop();
  }

  /** Writes what waits; from then on another page has the project. */
  async giveUp(): Promise<void> {
    const session = this.#session;
    await this.flush();
    if (this.#session === session) this.guest = true;
  }

  /** Keeps an hourly file with the project. @returns the name it is kept under */
  addHourly(file: HourlyFile): string {
    const known = this.#hourly.get(file.fileName);
    const same = known?.text === file.text && known.table === file.table;
    const fileName = same ? file.fileName : freeFileName(file.fileName, this.#hourly.keys());
    const named = { ...file, fileName };
    this.#hourly = new Map(this.#hourly).set(fileName, named);
    this.#session.addHourly(named);
    return fileName;
  }

  async goOnAsCopy(reason: CopyReason): Promise<void> {
    const { tabs, words, project, oncopy } = this.#around;
    const session = this.#newSession();
    this.#session.drop();
    this.#session = session;
    this.guest = false;
    this.id = session.id;
    remember({ kept: session.id });
    for (const file of this.#hourly.values()) session.addHourly(file);
    await tabs.claim(session.id);
    const names = (await this.#store?.list())?.map((p) => p.name);
    const t = words.of('shell');
    const name = copyName(this.#current.name, t('kept.copy'), names);
    if (this.#session !== session) return;
    project.edit(t('step.nameCopy'), (draft) => (draft.name = name));
    this.changed(this.#current);
    oncopy(reason, name);
  }

  get #current(): Project {
    return this.#around.project.current;
  }

  /** From here on the open project has an id of its own. */
  #begin(): void {
    this.id = this.#session.id;
    void this.#around.tabs.claim(this.id);
    remember({ kept: this.id });
  }

  /** The last state that could be computed, where this one cannot or may not. */
  #soundOf(project: Project): Project | undefined {
    const { sound, problems, busy } = this.#around.engine;
    return sound === project || (!busy && problems.length === 0) ? undefined : sound;
  }

  #newSession(kept?: { id: string; revision: number }): Session {
    const session: Session = new Session(
      this.#store,
      {
        onstate: (state) => {
          if (this.#session === session) this.saving = state;
        },
        onsaved: (savedAt) => {
          this.trouble = undefined;
          if (this.#session !== session) return;
          this.savedAt = savedAt;
          this.#around.tabs.saved();
        },
        ontrouble: (error) => (this.trouble = troubleOf(error)),
        onoverwrite: () => {
          if (this.#session === session) void this.goOnAsCopy('copyOfOverwritten');
        },
      },
      kept,
    );
    return session;
  }
}

function troubleOf(error: unknown): 'full' | 'blocked' {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return name === 'QuotaExceededError' ? 'full' : 'blocked';
}
