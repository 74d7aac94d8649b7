interface Entry<T> {
  value: T;
  label: string;
}

/** Most steps that can be undone. */
const DEPTH = 100;
/** Edits of the same kind this close together are one step, ms: a drag, or typing in one field. */
const MERGE_WITHIN = 1200;

/** A value with undo and redo. Values are replaced, never changed in place. */
export class History<T> {
  #past = $state.raw<Entry<T>[]>([]);
  #future = $state.raw<Entry<T>[]>([]);
  #current = $state.raw<T>() as T;
  #mergeKey: string | undefined;
  #mergeAt = 0;

  constructor(initial: T) {
    this.#current = initial;
  }

  get current(): T {
    return this.#current;
  }

  /** What the next undo takes back; undefined where there is nothing. */
  get undoLabel(): string | undefined {
    return this.#past.at(-1)?.label;
  }

  get redoLabel(): string | undefined {
    return this.#future.at(-1)?.label;
  }

  /**
   * Takes a new value. Edits with the same `mergeKey` shortly after one another are one step.
   * @param label what the edit did, in the words of the page
   */
  set(value: T, label: string, mergeKey?: string): void {
    const now = performance.now();
    const merges =
      mergeKey !== undefined &&
      mergeKey === this.#mergeKey &&
      now - this.#mergeAt < MERGE_WITHIN &&
      this.#past.length > 0;
    if (!merges) {
      this.#past = [...this.#past, { value: this.#current, label }].slice(-DEPTH);
    }
    this.#future = [];
    this.#current = value;
    this.#mergeKey = mergeKey;
    this.#mergeAt = now;
  }

  undo(): void {
    const entry = this.#past.at(-1);
    if (!entry) return;
    this.#past = this.#past.slice(0, -1);
    this.#future = [...this.#future, { value: this.#current, label: entry.label }];
    this.#current = entry.value;
    this.#mergeKey = undefined;
  }

  redo(): void {
    const entry = this.#future.at(-1);
    if (!entry) return;
    this.#future = this.#future.slice(0, -1);
    this.#past = [...this.#past, { value: this.#current, label: entry.label }];
    this.#current = entry.value;
    this.#mergeKey = undefined;
  }

  /** Starts anew from a value, with nothing to undo. */
  reset(value: T): void {
    this.#past = [];
    this.#future = [];
    this.#current = value;
    this.#mergeKey = undefined;
  }
}
