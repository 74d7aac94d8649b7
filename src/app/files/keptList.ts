import type { Wording } from '../../words/index.ts';
import { copyName, newId } from './names.ts';
import type { KeptProject, ProjectStore } from './store.ts';
import type { TabClaim } from './tabs.ts';

/** A row of the list of kept projects. */
export interface KeptRow extends KeptProject {
  /** Some tab has it open. */
  open: boolean;
}

/** What can be done with the projects kept on this computer without opening them. */
export class KeptList {
  readonly #store: ProjectStore | undefined;
  readonly #tabs: TabClaim;
  readonly #words: Wording;

  constructor(store: ProjectStore | undefined, tabs: TabClaim, words: Wording) {
    this.#store = store;
    this.#tabs = tabs;
    this.#words = words;
  }

  /** All of them, the one saved last first. */
  async rows(): Promise<KeptRow[]> {
    const [kept, held] = await Promise.all([this.#store?.list() ?? [], this.#tabs.held()]);
    return kept.map((project) => ({ ...project, open: held.has(project.id) }));
  }

  /** @throws OverwriteError where a tab has written it in the meantime */
  async rename(row: KeptProject, name: string): Promise<void> {
    await this.#store?.save(named(row, row.id, name), row.revision, row.savedAt);
  }

  async duplicate(row: KeptProject): Promise<void> {
    if (!this.#store) return;
    const name = copyName(
      row.name,
      this.#words.of('shell')('kept.copy'),
      (await this.#store.list()).map((p) => p.name),
    );
    const id = newId();
    const hourly = await this.#store.hourlyOf(row.id);
    await this.#store.putHourly(hourly.map((file) => ({ ...file, project: id })));
    await this.#store.save(named(row, id, name), 0);
  }

  /** Deletes a project with its weather files. @returns what brings it back */
  async remove(row: KeptProject): Promise<() => Promise<void>> {
    const removed = await this.#store?.remove(row.id);
    return async () => {
      if (removed) await this.#store?.restore(removed);
    };
  }
}

function named(row: KeptProject, id: string, name: string) {
  const sound = row.sound === undefined ? undefined : withName(row.sound, name);
  return { id, name, place: row.place, text: withName(row.text, name), sound };
}

function withName(text: string, name: string): string {
  try {
    return `${JSON.stringify({ ...JSON.parse(text), name }, null, 2)}\n`;
  } catch {
    return text;
  }
}
