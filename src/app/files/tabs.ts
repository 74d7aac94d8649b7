import { newId } from './names.ts';

type Word =
  | { kind: 'giveUp'; project: string; from: string }
  | { kind: 'saved'; project: string; from: string };

interface Hooks {
  /** The project is this page's own now, after it was another's. */
  ongain: () => void;
  /** Another page takes the project over: write what waits, then it is let go. */
  onlose: () => Promise<void>;
  /** Another page has written the project that this one only shows. */
  onsaved: () => void;
}

/** How long a page may take to let a project go before it is taken from it, ms. */
const PATIENCE = 1500;

/**
 * Which page of the browser may write a project: the one that holds its lock. Where the browser
 * has no locks every page may, and the store refuses to overwrite what a page has not seen.
 */
export class TabClaim {
  readonly #me = newId();
  readonly #hooks: Hooks;
  readonly #channel = typeof BroadcastChannel === 'undefined' ? undefined : channel();
  #project: string | undefined;
  #free: (() => void) | undefined;
  #queue: AbortController | undefined;

  constructor(hooks: Hooks) {
    this.#hooks = hooks;
    this.#channel?.addEventListener('message', (event: MessageEvent<Word>) => {
      void this.#hear(event.data);
    });
  }

  /**
   * Asks for a project, and lets the one before go.
   * @param patience ms to wait for a page that is just closing
   * @returns whether this page may write it; if not, it waits in line
   */
  async claim(project: string, patience = 0): Promise<boolean> {
    this.release();
    this.#project = project;
    if (await this.#hold({ ifAvailable: true })) return true;
    if (patience > 0) {
      await new Promise((rest) => setTimeout(rest, patience));
      if (await this.#hold({ ifAvailable: true })) return true;
    }
    if (this.#project === project) this.#wait();
    return false;
  }

  /** Takes the open project from the page that holds it. */
  async takeOver(): Promise<void> {
    const project = this.#project;
    if (project === undefined) return;
    this.#say({ kind: 'giveUp', project, from: this.#me });
    const end = Date.now() + PATIENCE;
    while (this.#project === project && !this.#free && Date.now() < end) {
      await new Promise((rest) => setTimeout(rest, 30));
    }
    if (this.#project !== project || this.#free) return;
    this.#queue?.abort();
    if (await this.#hold({ steal: true })) this.#hooks.ongain();
  }

  /** Tells the pages that only show this project that it was written. */
  saved(): void {
    if (this.#project) this.#say({ kind: 'saved', project: this.#project, from: this.#me });
  }

  release(): void {
    this.#queue?.abort();
    this.#queue = undefined;
    this.#free?.();
    this.#free = undefined;
    this.#project = undefined;
  }

  /** Which of these projects some page holds. */
  async held(): Promise<Set<string>> {
    const state = await locks()?.query();
    return new Set((state?.held ?? []).map((lock) => (lock.name ?? '').slice(PREFIX.length)));
  }

  /** Stands in line for the project; gains it when the page that holds it is closed. */
  #wait(): void {
    this.#queue = new AbortController();
    void this.#hold({ signal: this.#queue.signal }).then((gained) => {
      if (gained) this.#hooks.ongain();
    });
  }

  /** Resolves to true once the lock is held, to false where it is not to be had. */
  #hold(options: LockOptions): Promise<boolean> {
    const manager = locks();
    const project = this.#project;
    if (!manager || project === undefined) return Promise.resolve(true);
    return new Promise((answer) => {
      let mine = false;
      manager
        .request(PREFIX + project, options, (lock) => {
          if (!lock || this.#project !== project) {
            answer(false);
            return;
          }
          mine = true;
          const kept = new Promise<void>((free) => (this.#free = free));
          answer(true);
          return kept;
        })
        .catch(() => {
          answer(false);
          // The lock was stolen by a page that had no answer from this one.
          if (mine && this.#project === project) void this.#lose();
        });
    });
  }

  async #hear(word: Word): Promise<void> {
    if (word.from === this.#me || word.project !== this.#project) return;
    if (word.kind === 'saved' && !this.#free) this.#hooks.onsaved();
    if (word.kind === 'giveUp' && this.#free) await this.#lose();
  }

  async #lose(): Promise<void> {
    const project = this.#project;
    await this.#hooks.onlose();
    if (this.#project !== project) return;
    this.#free?.();
    this.#free = undefined;
    this.#wait();
  }

  #say(word: Word): void {
    this.#channel?.postMessage(word);
  }
}

const PREFIX = 'shadewright.project.';

function locks(): LockManager | undefined {
  return typeof navigator === 'undefined' ? undefined : navigator.locks;
}

function channel(): BroadcastChannel {
  return new BroadcastChannel('shadewright');
}
