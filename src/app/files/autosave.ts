export type SavingState = 'idle' | 'waiting' | 'writing' | 'failed';

interface Options {
  /** Rest after the last change before it is written, ms. */
  rest?: number;
  /** Longest a change waits while more come, ms. */
  most?: number;
  onstate?: (state: SavingState) => void;
}

/**
 * Writes the latest of many changes: after a rest, never two writes at once, never an older value
 * after a newer one. A write that fails leaves its value waiting for the next change or flush.
 */
export class Autosave<T> {
  readonly #write: (value: T) => Promise<void>;
  readonly #rest: number;
  readonly #most: number;
  readonly #onstate: (state: SavingState) => void;
  #waiting: { value: T; since: number } | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> | undefined;

  constructor(write: (value: T) => Promise<void>, options: Options = {}) {
    this.#write = write;
    this.#rest = options.rest ?? 400;
    this.#most = options.most ?? 3000;
    this.#onstate = options.onstate ?? (() => undefined);
  }

  /** Whether a change is not written yet. */
  get pending(): boolean {
    return this.#waiting !== undefined || this.#writing !== undefined;
  }

  change(value: T): void {
    const since = this.#waiting?.since ?? Date.now();
    this.#waiting = { value, since };
    clearTimeout(this.#timer);
    const left = Math.max(0, since + this.#most - Date.now());
    this.#timer = setTimeout(() => void this.flush(), Math.min(this.#rest, left));
    if (!this.#writing) this.#onstate('waiting');
  }

  /** Writes what waits, now; resolves when it is written or has failed. */
  async flush(): Promise<void> {
    clearTimeout(this.#timer);
    if (this.#writing) await this.#writing;
    if (!this.#waiting) return;
    this.#writing = this.#writeWaiting(this.#waiting);
    await this.#writing;
  }

  /** Forgets what waits. */
  drop(): void {
    clearTimeout(this.#timer);
    this.#waiting = undefined;
  }

  async #writeWaiting(taken: { value: T; since: number }): Promise<void> {
    this.#waiting = undefined;
    this.#onstate('writing');
    try {
      await this.#write(taken.value);
      this.#onstate(this.#waiting ? 'waiting' : 'idle');
    } catch {
      this.#waiting ??= { value: taken.value, since: Date.now() };
      this.#onstate('failed');
    } finally {
      this.#writing = undefined;
    }
  }
}
