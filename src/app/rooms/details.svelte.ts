import type { RoomDetail } from '../../../lib/study/index.ts';
import type { EngineState } from '../state/engine.svelte.ts';

/** How long the hand must rest before the slow answers are asked for, ms. */
const REST = 500;

/** The slower answers about a room, asked for once the hand rests so that dragging stays quick. */
export class RoomDetails {
  /** Room they are about. */
  room = $state.raw('');
  without = $state.raw<RoomDetail>();
  with = $state.raw<RoomDetail>();
  /** They are of an earlier run, and newer ones are on their way. */
  stale = $state(false);
  /** Why they could not be worked out; empty where they could. */
  failed = $state('');

  readonly #engine: Pick<EngineState, 'roomDetail'>;

  constructor(engine: Pick<EngineState, 'roomDetail'>) {
    this.#engine = engine;
  }

  /** Asks for those of a room. @returns drops the question */
  ask(room: string): () => void {
    let live = true;
    this.stale = true;
    const timer = setTimeout(() => {
      void this.#load(room, () => live);
    }, REST);
    return () => {
      live = false;
      clearTimeout(timer);
    };
  }

  async #load(room: string, live: () => boolean): Promise<void> {
    try {
      // One after the other: a change in between is run before the second.
      const without = await this.#engine.roomDetail(room, 'without');
      if (!live()) return;
      const shaded = await this.#engine.roomDetail(room, 'with');
      if (!live()) return;
      this.room = room;
      this.without = without;
      this.with = shaded;
      this.stale = false;
      this.failed = '';
    } catch (error) {
      if (live()) this.failed = String(error);
    }
  }
}
