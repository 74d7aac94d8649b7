import type { ProjectState } from '../state/project.svelte.ts';
import type { Selection } from '../state/selection.svelte.ts';
import type { Wording } from '../../words/index.ts';
import { addRoom, copyRoom, deleteRoom, roomOf } from './edits.ts';

/**
 * The buttons of the bench: each edits the project, chooses what came of it and says what was done.
 */
export class RoomActions {
  private readonly words: Wording;
  private readonly project: ProjectState;
  private readonly selection: Selection;
  private readonly say: (message: string) => void;

  constructor(
    words: Wording,
    project: ProjectState,
    selection: Selection,
    say: (message: string) => void,
  ) {
    this.words = words;
    this.project = project;
    this.selection = selection;
    this.say = say;
  }

  add(): void {
    let id = '';
    this.project.edit(this.t('edit.add'), (draft) => (id = addRoom(this.words, draft)));
    this.selection.room = id;
    this.say(this.t('done.added', { room: this.name(id) }));
  }

  copy(id: string): void {
    let made: string | undefined;
    this.project.edit(
      this.t('edit.copy', { room: this.name(id) }),
      (draft) => (made = copyRoom(draft, id)),
    );
    if (made === undefined) return;
    this.selection.room = made;
    this.say(this.t('done.copied', { room: this.name(made) }));
  }

  delete(id: string): void {
    const { current } = this.project;
    const next = current.rooms.find((room) => room.id !== id);
    if (!next) return;
    const room = this.name(id);
    const count = current.openings.filter((o) => o.room === id).length;
    this.project.edit(this.t('edit.delete', { room }), (draft) => deleteRoom(draft, id, next.id));
    this.selection.room = next.id;
    this.say(
      count === 0
        ? this.t('done.deleted', { room })
        : this.t('done.deletedMoved', { room, count, next: next.name }),
    );
  }

  private get t() {
    return this.words.of('rooms');
  }

  private name(id: string): string {
    return roomOf(this.project.current, id)?.name ?? '';
  }
}
