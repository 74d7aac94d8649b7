import type { Project } from '../../../lib/project/index.ts';
import { History } from './history.svelte.ts';

/** The open project, with undo and redo. */
export class ProjectState {
  readonly history: History<Project>;
  /** Counts the projects opened, so that what was worked out for one is not shown for the next. */
  opened = $state(0);

  constructor(initial: Project) {
    this.history = new History(initial);
  }

  get current(): Project {
    return this.history.current;
  }

  /**
   * Changes the project by way of a copy.
   * @param label what the edit did: `Turn West wall`
   * @param mergeKey edits with the same key shortly after one another undo as one
   */
  edit(label: string, change: (draft: Project) => void, mergeKey?: string): void {
    const draft = structuredClone(this.current);
    change(draft);
    this.history.set(draft, label, mergeKey);
  }

  /** Opens another project; the edits of the one before cannot be undone any more. */
  open(project: Project): void {
    this.history.reset(project);
    this.opened++;
  }
}
