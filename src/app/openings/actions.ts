import type { ProjectOpening } from '../../../lib/project/index.ts';
import type { ProjectState } from '../state/project.svelte.ts';
import type { Selection } from '../state/selection.svelte.ts';
import {
  addOpening,
  addWall,
  copyOpening,
  deleteOpening,
  deleteWall,
  mirrorOpening,
  mirrorToOpposite,
  neighbourOf,
  openingOf,
  oppositeWall,
  wallOf,
} from './edits.ts';

/**
 * The buttons of the bench: each edits the project, chooses what came of it and says what was done.
 */
export class OpeningActions {
  private readonly project: ProjectState;
  private readonly selection: Selection;
  private readonly say: (message: string) => void;

  constructor(project: ProjectState, selection: Selection, say: (message: string) => void) {
    this.project = project;
    this.selection = selection;
    this.say = say;
  }

  add(kind: ProjectOpening['kind'], wall: string): void {
    this.made('Add an opening', 'Added', (draft) => addOpening(draft, kind, wall));
  }

  copy(id: string): void {
    this.made(`Copy ${this.name(id)}`, 'Copied as', (draft) => copyOpening(draft, id));
  }

  toOpposite(id: string): void {
    const { current } = this.project;
    const wall = oppositeWall(current, openingOf(current, id)?.wall ?? '');
    const into = wall ? `into ${wall.name}` : 'into a new wall opposite';
    const label = `Mirror ${this.name(id)} to the opposite side`;
    this.made(label, `Mirrored ${into} as`, (draft) => mirrorToOpposite(draft, id));
  }

  mirror(id: string): void {
    const name = this.name(id);
    this.project.edit(`Mirror ${name}`, (draft) => mirrorOpening(draft, id));
    this.say(`Left and right of ${name} are swapped.`);
  }

  delete(id: string): void {
    const name = this.name(id);
    const next = neighbourOf(this.project.current, id);
    this.project.edit(`Delete ${name}`, (draft) => deleteOpening(draft, id));
    this.selection.opening = next;
    this.say(`Deleted ${name}.`);
  }

  addWall(): void {
    let id = '';
    this.project.edit('Add a wall', (draft) => (id = addWall(draft)));
    this.say(`Added ${wallOf(this.project.current, id)?.name}.`);
  }

  deleteWall(id: string, moveTo?: string): void {
    const { current } = this.project;
    const name = wallOf(current, id)?.name ?? '';
    this.project.edit(`Delete ${name}`, (draft) => deleteWall(draft, id, moveTo));
    if (!openingOf(this.project.current, this.selection.opening)) {
      this.selection.opening = this.project.current.openings[0]?.id ?? '';
    }
    this.say(`Deleted ${name}.`);
  }

  private name(id: string): string {
    return openingOf(this.project.current, id)?.name ?? '';
  }

  private made(
    label: string,
    done: string,
    change: (draft: Parameters<typeof addOpening>[0]) => string | undefined,
  ): void {
    let id: string | undefined;
    this.project.edit(label, (draft) => (id = change(draft)));
    const opening = openingOf(this.project.current, id ?? '');
    if (!opening) return;
    this.selection.opening = opening.id;
    this.say(`${done} ${opening.name}.`);
  }
}
