import type { Project, ProjectOpening } from '../../../lib/project/index.ts';
import type { Wording } from '../../words/index.ts';
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
  constructor(
    private readonly words: Wording,
    private readonly project: ProjectState,
    private readonly selection: Selection,
    private readonly say: (message: string) => void,
  ) {}

  add(kind: ProjectOpening['kind'], wall: string): void {
    const id = this.made(this.t('step.add'), (draft) => addOpening(this.words, draft, kind, wall));
    if (id !== undefined) this.say(this.t('done.added', { name: this.name(id) }));
  }

  copy(id: string): void {
    const step = this.t('step.copy', { name: this.name(id) });
    const copy = this.made(step, (draft) => copyOpening(draft, id));
    if (copy !== undefined) this.say(this.t('done.copied', { name: this.name(copy) }));
  }

  toOpposite(id: string): void {
    const { current } = this.project;
    const wall = oppositeWall(current, openingOf(current, id)?.wall ?? '')?.name;
    const step = this.t('step.opposite', { name: this.name(id) });
    const copy = this.made(step, (draft) => mirrorToOpposite(this.words, draft, id));
    if (copy === undefined) return;
    const name = this.name(copy);
    this.say(
      wall === undefined
        ? this.t('done.mirroredNew', { name })
        : this.t('done.mirrored', { wall, name }),
    );
  }

  mirror(id: string): void {
    const name = this.name(id);
    this.project.edit(this.t('step.swap', { name }), (draft) => mirrorOpening(draft, id));
    this.say(this.t('done.swapped', { name }));
  }

  delete(id: string): void {
    const name = this.name(id);
    const next = neighbourOf(this.project.current, id);
    this.project.edit(this.t('step.delete', { name }), (draft) => deleteOpening(draft, id));
    this.selection.opening = next;
    this.say(this.t('done.deleted', { name }));
  }

  addWall(): void {
    let id = '';
    this.project.edit(this.t('step.addWall'), (draft) => (id = addWall(this.words, draft)));
    this.say(this.t('done.added', { name: wallOf(this.project.current, id)?.name ?? '' }));
  }

  deleteWall(id: string, moveTo?: string): void {
    const { current } = this.project;
    const name = wallOf(current, id)?.name ?? '';
    this.project.edit(this.t('step.delete', { name }), (draft) => deleteWall(draft, id, moveTo));
    if (!openingOf(this.project.current, this.selection.opening)) {
      this.selection.opening = this.project.current.openings[0]?.id ?? '';
    }
    this.say(this.t('done.deleted', { name }));
  }

  private get t() {
    return this.words.of('openings');
  }

  private name(id: string): string {
    return openingOf(this.project.current, id)?.name ?? '';
  }

  /** Makes an opening and chooses it; gives its id. */
  private made(step: string, change: (draft: Project) => string | undefined): string | undefined {
    let id: string | undefined;
    this.project.edit(step, (draft) => (id = change(draft)));
    const opening = openingOf(this.project.current, id ?? '');
    if (!opening) return undefined;
    this.selection.opening = opening.id;
    return opening.id;
  }
}
