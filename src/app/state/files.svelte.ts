import type { Project } from '../../../lib/project/index.ts';
import type { HourlyFile } from '../../worker/api.ts';
import type { Wording } from '../../words/index.ts';
import type { SavingState } from '../files/autosave.ts';
import { examples } from '../files/examples.ts';
import { KeptList } from '../files/keptList.ts';
import type { Notice } from '../files/notice.ts';
import { recall, remember } from '../files/openMark.ts';
import { OpenProject } from '../files/openProject.svelte.ts';
import { ProjectStore } from '../files/store.ts';
import { TabClaim } from '../files/tabs.ts';
import type { EngineState } from './engine.svelte.ts';
import type { ProjectState } from './project.svelte.ts';

/** Longest wait for the browser's database before the page goes on without it, ms. */
const PATIENCE = 8000;
/** How long a reload waits for the page before it to let the project go, ms. */
const RELOAD = 250;

/** Everything that opens, saves and keeps projects. */
export class FilesState {
  /** False until what was left open last time is back on screen. */
  ready = $state(false);
  notice = $state.raw<Notice>();

  readonly #project: ProjectState;
  readonly #words: Wording;
  readonly #open: OpenProject;
  readonly #tabs = new TabClaim({
    ongain: () => void this.#showAgain(false),
    onlose: () => this.#open.giveUp(),
    onsaved: () => void this.#showAgain(true),
  });
  #store: ProjectStore | undefined;
  /** The project as it was last saved to a file. */
  #inFile: Project | undefined;

  /** @param words for names of copies; they are asked for as a copy is made */
  constructor(project: ProjectState, engine: EngineState, words: Wording) {
    this.#project = project;
    this.#words = words;
    this.#open = new OpenProject({
      project,
      engine,
      words,
      tabs: this.#tabs,
      oncopy: (told, name) => (this.notice = { tone: 'note', told, of: { name } }),
    });
  }

  /** Id the open project is kept under; undefined before its first change. */
  get id(): string | undefined {
    return this.#open.id;
  }

  /** Another page has this project open: the first change here makes a copy. */
  get guest(): boolean {
    return this.#open.guest;
  }

  get saving(): SavingState {
    return this.#open.saving;
  }

  /** When the open project was last written, ms since the epoch. */
  get savedAt(): number | undefined {
    return this.#open.savedAt;
  }

  /** Why nothing is kept: no storage for this page, or no room on the disk. */
  get trouble(): 'blocked' | 'full' | undefined {
    return this.#open.trouble;
  }

  /** The hourly file the open project takes its weather from, where it is at hand. */
  get hourlyFile(): HourlyFile | undefined {
    return this.#open.hourlyFile;
  }

  /** Whether closing the page would lose work. */
  get unsaved(): boolean {
    return this.#open.pending && this.#project.current !== this.#inFile;
  }

  /** The projects kept on this computer. */
  get kept(): KeptList {
    return new KeptList(this.#store, this.#tabs, this.#words);
  }

  /** Opens the browser's database and brings back what this tab, or the last one, had open. */
  async start(): Promise<void> {
    try {
      this.#store = await within(ProjectStore.open(), PATIENCE);
      this.#open.keepIn(this.#store);
      const open = recall();
      if (open && 'example' in open) await this.openExample(open.example);
      else if (open) await this.#openKept(open.kept, RELOAD);
      else {
        const [last] = await this.#store.list();
        if (last) await this.#openKept(last.id, 0);
      }
    } catch {
      this.#open.trouble = 'blocked';
    }
    this.ready = true;
  }

  /** Takes note of the project on screen; a change of it is kept. */
  changed(project: Project): void {
    this.#open.changed(project);
  }

  /** Writes what waits, now. */
  flush(): Promise<void> {
    return this.#open.flush();
  }

  /** Keeps an hourly file with the project. @returns the name it is kept under */
  addHourly(file: HourlyFile): string {
    return this.#open.addHourly(file);
  }

  async openExample(id: string): Promise<void> {
    const example = examples.find((e) => e.id === id);
    if (!example) return;
    const project = await example.load();
    await this.#leave(() => {
      this.#tabs.release();
      this.#show(project);
      remember({ example: id });
    });
  }

  /** Opens a new project and keeps it at once. */
  async openNew(project: Project): Promise<void> {
    await this.#leave(() => {
      this.#show(project);
      this.#open.keepNow();
    });
  }

  /** Opens the text of a project file; a broken one leaves what is on screen alone. */
  async openText(text: string, fileName: string): Promise<void> {
    const of = { file: fileName };
    const { readProjectText } = await projectFile();
    const read = await readProjectText(text);
    if (!read.project) {
      this.notice = { tone: 'problem', told: 'notOpened', of, problems: read.problems };
      return;
    }
    const { project, warnings } = read;
    await this.#leave(() => {
      this.#show(project);
      this.#inFile = project;
      this.#open.keepNow();
      if (warnings.length > 0)
        this.notice = { tone: 'note', told: 'slips', of, problems: warnings };
    });
  }

  async saveFile(): Promise<void> {
    const project = this.#project.current;
    (await projectFile()).saveProjectFile(project);
    this.#inFile = project;
    const { climate } = project;
    if (climate.kind !== 'file') return;
    this.notice = { tone: 'note', told: 'hourlyApart', of: { file: climate.fileName } };
  }

  async openKept(id: string): Promise<void> {
    if (id === this.#open.ownId && !this.guest) return;
    await this.#openKept(id, 0);
  }

  /** Makes the project of another tab this tab's own. */
  async takeOver(): Promise<void> {
    await this.#tabs.takeOver();
  }

  copyHere(): Promise<void> {
    return this.#open.goOnAsCopy('copyAsked');
  }

  async #openKept(id: string, patience: number): Promise<void> {
    const kept = await this.#store?.get(id);
    if (!kept) return;
    const { readKept, saveText } = await projectFile();
    const left = readKept(kept);
    if (!left.project) {
      this.notice = {
        tone: 'problem',
        told: 'unreadable',
        of: { name: kept.name },
        actions: [{ does: 'saveAsIs', act: () => saveText(left.text, kept.name) }],
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
    const { loadKept } = await projectFile();
    const found = this.#store && (await loadKept(this.#store, id, guest));
    if (!found) return;
    this.#show(found.project, found.kept);
    remember({ kept: id });
  }

  #show(...shown: Parameters<OpenProject['show']>): void {
    this.#inFile = undefined;
    this.notice = undefined;
    this.#open.show(...shown);
  }

  /** The project that another page has had or written. */
  async #showAgain(guest: boolean): Promise<void> {
    if (this.guest) await this.#showKept(this.#open.ownId, guest);
  }

  /** Goes on to another project once the open one is safe, or the user has said it need not be. */
  async #leave(next: () => void | Promise<void>): Promise<void> {
    if (this.ready) await this.flush();
    if (!this.unsaved) {
      await next();
      return;
    }
    const go = async (): Promise<void> => {
      this.#open.drop();
      await next();
    };
    this.notice = {
      tone: 'problem',
      told: 'wouldLose',
      actions: [
        { does: 'saveThenOpen', act: () => void this.saveFile().then(go) },
        { does: 'openUnsaved', act: () => void go() },
      ],
    };
  }
}

/** Reading and writing project files, loaded when the first is read or written. */
function projectFile(): Promise<typeof import('../files/projectFile.ts')> {
  return import('../files/projectFile.ts');
}

async function within<T>(work: Promise<T>, ms: number): Promise<T> {
  const late = new Promise<never>((_, reject) =>
    setTimeout(() => reject(new Error('No answer.')), ms),
  );
  return Promise.race([work, late]);
}
