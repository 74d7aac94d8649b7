import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import type { HourlyFile } from '../../worker/api.ts';

/** A project as it is kept on this computer. */
export interface KeptProject {
  id: string;
  name: string;
  place: string;
  /** The project as the text of its file. */
  text: string;
  /** The last state that could be computed, where `text` cannot. */
  sound?: string;
  /** Counts the times it was written, so that no page overwrites what it has not seen. */
  revision: number;
  /** ms since the epoch. */
  savedAt: number;
}

/** An hourly weather file kept with its project. */
export interface KeptHourly extends HourlyFile {
  project: string;
}

interface Tables extends DBSchema {
  projects: { key: string; value: KeptProject };
  hourly: { key: [string, string]; value: KeptHourly; indexes: { project: string } };
}

/** Thrown where another page has written the project since this one read it. */
export class OverwriteError extends Error {
  constructor() {
    super('overwritten');
    this.name = 'OverwriteError';
  }
}

/** Projects and their hourly files in the browser's own database. */
export class ProjectStore {
  readonly #db: IDBPDatabase<Tables>;

  private constructor(db: IDBPDatabase<Tables>) {
    this.#db = db;
  }

  /** @throws DOMException where the browser keeps nothing for this page */
  static async open(name = 'shadewright'): Promise<ProjectStore> {
    const db = await openDB<Tables>(name, 1, {
      upgrade(fresh) {
        fresh.createObjectStore('projects', { keyPath: 'id' });
        const hourly = fresh.createObjectStore('hourly', { keyPath: ['project', 'fileName'] });
        hourly.createIndex('project', 'project');
      },
    });
    return new ProjectStore(db);
  }

  /** All projects, the one saved last first. */
  async list(): Promise<KeptProject[]> {
    const all = await this.#db.getAll('projects');
    return all.sort((a, b) => b.savedAt - a.savedAt);
  }

  get(id: string): Promise<KeptProject | undefined> {
    return this.#db.get('projects', id);
  }

  /**
   * Writes a project that this page read or wrote last as revision `seen` (0: it is new).
   * @returns its new revision
   * @throws OverwriteError where another page has written or deleted it since
   */
  async save(
    project: Omit<KeptProject, 'revision' | 'savedAt'>,
    seen: number,
    savedAt = Date.now(),
  ): Promise<number> {
    const write = this.#db.transaction('projects', 'readwrite');
    const known = await write.store.get(project.id);
    if ((known?.revision ?? 0) !== seen) {
      await write.done;
      throw new OverwriteError();
    }
    const revision = seen + 1;
    await Promise.all([write.store.put({ ...project, revision, savedAt }), write.done]);
    return revision;
  }

  /** Deletes a project with its hourly files. @returns what `restore` takes */
  async remove(id: string): Promise<{ project?: KeptProject; hourly: KeptHourly[] }> {
    const project = await this.get(id);
    const hourly = await this.hourlyOf(id);
    const write = this.#db.transaction(['projects', 'hourly'], 'readwrite');
    await Promise.all([
      write.objectStore('projects').delete(id),
      ...hourly.map((file) => write.objectStore('hourly').delete([id, file.fileName])),
      write.done,
    ]);
    return { project, hourly };
  }

  /** Puts back what `remove` took, or a copy of it under another id. */
  async restore(removed: { project?: KeptProject; hourly: KeptHourly[] }): Promise<void> {
    const { project, hourly } = removed;
    if (!project) return;
    const write = this.#db.transaction(['projects', 'hourly'], 'readwrite');
    await Promise.all([
      write.objectStore('projects').put(project),
      ...hourly.map((file) => write.objectStore('hourly').put(file)),
      write.done,
    ]);
  }

  hourlyOf(project: string): Promise<KeptHourly[]> {
    return this.#db.getAllFromIndex('hourly', 'project', project);
  }

  async putHourly(files: readonly KeptHourly[]): Promise<void> {
    const write = this.#db.transaction('hourly', 'readwrite');
    await Promise.all([...files.map((file) => write.store.put(file)), write.done]);
  }

  async removeHourly(project: string, fileName: string): Promise<void> {
    await this.#db.delete('hourly', [project, fileName]);
  }
}
