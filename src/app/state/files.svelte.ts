import type { Project } from '../../../lib/project/index.ts';
import type { HourlyFile } from '../../worker/api.ts';
import type { SavingState } from '../files/autosave.ts';
import { examples } from '../files/examples.ts';
import { KeptList } from '../files/keptList.ts';
import { copyName, freeFileName } from '../files/names.ts';
import type { Notice } from '../files/notice.ts';
import { Session } from '../files/session.ts';
import { ProjectStore } from '../files/store.ts';
import type { KeptHourly } from '../files/store.ts';
import { TabClaim } from '../files/tabs.ts';
import type { EngineState } from './engine.svelte.ts';
import type { ProjectState } from './project.svelte.ts';

/** Where a tab notes what it has open, for its own reload. */
const OPEN = 'shadewright.open';
const EXAMPLE = 'example ';
/** Longest wait for the browser's database before the page goes on without it, ms. */
const PATIENCE = 8000;
/** How long a reload waits for the page before it to let the project go, ms. */
const RELOAD = 250;

/** What is open, where it is kept, and everything that opens, saves and keeps projects. */
export class FilesState {
  /** False until what was left open last time is back on screen. */
  ready = $state(false);
  /** Id the open project is kept under; undefined before its first change. */
  id = $state<string>();
  /** Another page has this project open: the first change here makes a copy. */
  guest = $state(false);
  saving = $state<SavingState>('idle');
  /** When the open project was last written, ms since the epoch. */
  savedAt = $state<number>();
  /** Why nothing is kept: no storage for this page, or no room on the disk. */
  trouble = $state<'blocked' | 'full'>();
  notice = $state.raw<Notice>();

  readonly #project: ProjectState;
  readonly #engine: EngineState;
  readonly #tabs = new TabClaim({
    ongain: () => void this.#gain(),
    onlose: () => this.#lose(),
    onsaved: () => void this.#follow(),
  });
  #store: ProjectStore | undefined;
  #session: Session;
  /** The project as it was opened or handed to the session last. */
  #seen: Project;
  /** The project as it was last saved to a file. */
  #inFile: Project | undefined;
  #hourly = $state.raw<ReadonlyMap<string, HourlyFile>>(new Map());

  constructor(project: ProjectState, engine: EngineState) {
    this.#project = project;
    this.#engine = engine;
    this.#seen = project.current;
    this.#session = this.#newSession();
  }

  /** The hourly file the open project takes its weather from, where it is at hand. */
  get hourlyFile(): HourlyFile | undefined {
    const { climate } = this.#project.current;
    return climate.kind === 'file' ? this.#hourly.get(climate.fileName) : undefined;
  }

  /** Whether closing the page would lose work. */
  get unsaved(): boolean {
    return this.#session.pending && this.#project.current !== this.#inFile;
  }

  /** Opens the browser's database and brings back what this tab, or the last one, had open. */
  async start(): Promise<void> {
    try {
      this.#store = await within(ProjectStore.open(), PATIENCE);
      this.#session = this.#newSession();
      const open = recall();
      const id = open ?? (await this.#store.list())[0]?.id;
      if (id?.startsWith(EXAMPLE)) await this.openExample(id.slice(EXAMPLE.length));
      else if (id) await this.#openKept(id, open ? RELOAD : 0);
    } catch {
      this.trouble = 'blocked';
    }
    this.ready = true;
  }

  /** Takes note of the project on screen; a change of it is kept. */
  changed(project: Project): void {
    if (project === this.#seen) return;
    this.#seen = project;
    if (this.guest) {
      void this.#goOnAsCopy(
        'This project is open in another tab. Your change is in a copy of it, so that neither tab overwrites the other.',
      );
      return;
    }
    if (this.id === undefined) this.#begin();
    this.#session.change({ project, sound: () => this.#soundOf(project) });
  }

  /** The projects kept on this computer. */
  get kept(): KeptList {
    return new KeptList(this.#store, this.#tabs);
  }

  /** Writes what waits, now. */
  flush(): Promise<void> {
    this.changed(this.#project.current);
    return this.#session.flush();
  }

  async openExample(id: string): Promise<void> {
    const example = examples.find((e) => e.id === id);
    if (!example) return;
    const project = await example.load();
    await this.#leave(() => {
      this.#tabs.release();
      this.#show(project, this.#newSession());
      remember(EXAMPLE + id);
    });
  }

  /** Opens a new project and keeps it at once. */
  async openNew(project: Project): Promise<void> {
    await this.#leave(() => {
      this.#show(project, this.#newSession());
      this.#keepNow();
    });
  }

  /** Opens the text of a project file; a broken one leaves what is on screen alone. */
  async openText(text: string, fileName: string): Promise<void> {
    const { readProjectText } = await projectFile();
    const read = await readProjectText(text);
    if (!read.project) {
      this.notice = {
        tone: 'problem',
        text: `"${fileName}" was not opened. What is on screen is as it was.`,
        problems: read.problems,
      };
      return;
    }
    const { project, warnings } = read;
    await this.#leave(() => {
      this.#show(project, this.#newSession());
      this.#inFile = project;
      this.#keepNow();
      const text = `"${fileName}" was opened. Something in it looks like a slip:`;
      if (warnings.length > 0) this.notice = { tone: 'note', text, problems: warnings };
    });
  }

  async saveFile(): Promise<void> {
    const project = this.#project.current;
    (await projectFile()).saveProjectFile(project);
    this.#inFile = project;
    const { climate } = project;
    if (climate.kind !== 'file') return;
    this.notice = {
      tone: 'note',
      text: `The hourly weather file "${climate.fileName}" is not part of the project file: keep it beside it.`,
    };
  }

  async openKept(id: string): Promise<void> {
    if (id === this.#session.id && !this.guest) return;
    await this.#openKept(id, 0);
  }

  /** Makes the project of another tab this tab's own. */
  async takeOver(): Promise<void> {
    await this.#tabs.takeOver();
  }

  copyHere(): Promise<void> {
    return this.#goOnAsCopy('This tab works on a copy of its own now.');
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

  async #openKept(id: string, patience: number): Promise<void> {
    const kept = await this.#store?.get(id);
    if (!kept) return;
    const { readKept, saveText } = await projectFile();
    const left = readKept(kept);
    if (!left.project) {
      this.notice = {
        tone: 'problem',
        text: `"${kept.name}" is kept on this computer but cannot be read any more.`,
        actions: [
          { label: 'Save it to a file as it is', act: () => saveText(left.text, kept.name) },
        ],
      };
      return;
    }
    await this.#leave(async () => {
      const mine = await this.#tabs.claim(id, patience);
      await this.#showKept(id, !mine);
    });
  }

  /** Shows a kept project as the store has it now. */
  async #showKept(id: string, guest: boolean): Promise<void> {
    const [kept, files, { readKept }] = await Promise.all([
      this.#store?.get(id),
      this.#store?.hourlyOf(id),
      projectFile(),
    ]);
    if (!kept) return;
    const left = readKept(kept);
    if (!left.project) return;
    const used = [left.project, left.sound].map((p) =>
      p?.climate.kind === 'file' ? p.climate.fileName : '',
    );
    for (const file of guest ? [] : (files ?? [])) {
      if (!used.includes(file.fileName)) void this.#store?.removeHourly(id, file.fileName);
    }
    const hourly = (files ?? []).filter((file) => used.includes(file.fileName));
    this.#show(left.project, this.#newSession(kept), hourly, left.sound);
    this.id = id;
    this.guest = guest;
    this.savedAt = kept.savedAt;
    remember(id);
  }

  /** Puts a project on screen; everything that belongs to it changes in the same moment. */
  #show(
    project: Project,
    session: Session,
    hourly: readonly KeptHourly[] = [],
    sound?: Project,
  ): void {
    this.#session = session;
    this.#seen = project;
    this.#inFile = undefined;
    this.#hourly = new Map(
      hourly.map(({ project: _project, ...file }) => [file.fileName, file] as const),
    );
    this.id = undefined;
    this.guest = false;
    this.saving = 'idle';
    this.savedAt = undefined;
    this.notice = undefined;
    this.#engine.forget();
    this.#project.open(project);
    if (sound) this.#engine.request(sound, this.hourlyFile);
  }

  #keepNow(): void {
    const project = this.#project.current;
    this.#begin();
    this.#session.change({ project });
    void this.#session.flush();
  }

  /** From here on the open project has an id of its own. */
  #begin(): void {
    this.id = this.#session.id;
    void this.#tabs.claim(this.id);
    remember(this.id);
  }

  /** Goes on to another project once the open one is safe, or the user has said it need not be. */
  async #leave(next: () => void | Promise<void>): Promise<void> {
    if (this.ready) await this.flush();
    if (!this.unsaved) {
      await next();
      return;
    }
    const go = async (): Promise<void> => {
      this.#session.drop();
      await next();
    };
    this.notice = {
      tone: 'problem',
      text: 'The open project could not be kept on this computer. Opening another one would lose its last changes.',
      actions: [
        {
          label: 'Save it to a file, then open',
          act: () => {
            void this.saveFile().then(go);
          },
        },
        { label: 'Open without saving', act: () => void go() },
      ],
    };
  }

  async #goOnAsCopy(text: string): Promise<void> {
    const session = this.#newSession();
    const hourly = [...this.#hourly.values()];
    this.#session.drop();
    this.#session = session;
    this.guest = false;
    this.id = session.id;
    remember(session.id);
    for (const file of hourly) session.addHourly(file);
    await this.#tabs.claim(session.id);
    const names = (await this.#store?.list())?.map((p) => p.name);
    const name = copyName(this.#project.current.name, names);
    if (this.#session !== session) return;
    this.#project.edit('Name the copy', (draft) => (draft.name = name));
    this.changed(this.#project.current);
    this.notice = { tone: 'note', text: `${text} The copy is named "${name}".` };
  }

  async #gain(): Promise<void> {
    if (this.guest) await this.#showKept(this.#session.id, false);
  }

  async #lose(): Promise<void> {
    const session = this.#session;
    await this.flush();
    if (this.#session === session) this.guest = true;
  }

  async #follow(): Promise<void> {
    if (this.guest) await this.#showKept(this.#session.id, true);
  }

  /** The last state that could be computed, where this one cannot or may not. */
  #soundOf(project: Project): Project | undefined {
    const { sound, problems, busy } = this.#engine;
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
          this.#tabs.saved();
        },
        ontrouble: (error) => (this.trouble = troubleOf(error)),
        onoverwrite: () => {
          if (this.#session !== session) return;
          void this.#goOnAsCopy(
            'Another tab has changed this project in the meantime. What you see here is in a copy.',
          );
        },
      },
      kept,
    );
    return session;
  }
}

/** Reading and writing project files, loaded when the first is read or written. */
function projectFile(): Promise<typeof import('../files/projectFile.ts')> {
  return import('../files/projectFile.ts');
}

function troubleOf(error: unknown): 'full' | 'blocked' {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return name === 'QuotaExceededError' ? 'full' : 'blocked';
}

async function within<T>(work: Promise<T>, ms: number): Promise<T> {
  const late = new Promise<never>((_, reject) =>
    setTimeout(() => reject(new Error('No answer.')), ms),
  );
  return Promise.race([work, late]);
}

function remember(open: string): void {
  try {
    sessionStorage.setItem(OPEN, open);
  } catch {
    // Storage is off: a reload opens what was saved last.
  }
}

function recall(): string | undefined {
  try {
    return sessionStorage.getItem(OPEN) ?? undefined;
  } catch {
    return undefined;
  }
}
