import type { ProjectState } from '../state/project.svelte.ts';
import type { Selection } from '../state/selection.svelte.ts';
import { addRoom, copyRoom, deleteRoom, roomOf } from './edits.ts';

/**
 * The buttons of the bench: each edits the project, chooses what came of it and says what was done.
 */
export class RoomActions {
  private readonly project: ProjectState;
  private readonly selection: Selection;
  private readonly say: (message: string) => void;

  constructor(project: ProjectState, selection: Selection, say: (message: string) => void) {
    this.project = project;
    this.selection = selection;
    this.say = say;
  }

  add(): void {
    let id = '';
    this.project.edit('Add a room', (draft) => (id = addRoom(draft)));
    this.choose(id, 'Added');
  }

  copy(id: string): void {
    let made: string | undefined;
    this.project.edit(`Copy ${this.name(id)}`, (draft) => (made = copyRoom(draft, id)));
    if (made !== undefined) this.choose(made, 'Copied without its openings as');
  }

  delete(id: string): void {
    const { current } = this.project;
    const next = current.rooms.find((room) => room.id !== id);
    if (!next) return;
    const name = this.name(id);
    const count = current.openings.filter((o) => o.room === id).length;
    this.project.edit(`Delete ${name}`, (draft) => deleteRoom(draft, id, next.id));
    this.selection.room = next.id;
    const openings = count === 1 ? 'Its opening is' : `Its ${count} openings are`;
    this.say(`Deleted ${name}.${count > 0 ? ` ${openings} in ${next.name} now.` : ''}`);
  }

  private name(id: string): string {
    return roomOf(this.project.current, id)?.name ?? '';
  }

  private choose(id: string, done: string): void {
    this.selection.room = id;
    this.say(`${done} ${this.name(id)}.`);
  }
}
