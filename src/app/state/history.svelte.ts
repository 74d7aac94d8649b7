import { StepMerge } from './stepMerge.ts';

interface Entry<T> {
  value: T;
  label: string;
}

/** Most steps that can be undone. */
const DEPTH = 100;

/** A value with undo and redo. Values are replaced, never changed in place. */
export class History<T> {
  #past = $state.raw<Entry<T>[]>([]);
  #future = $state.raw<Entry<T>[]>([]);
  #current = $state.raw<T>() as T;
  readonly #merge = new StepMerge();

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
   * Takes a new value. Edits with the same `mergeKey` shortly after one another, or in one
   * drag, are one step.
   * @param label what the edit did, in the words of the page
   */
  set(value: T, label: string, mergeKey?: string): void {
    const merges = this.#merge.joins(mergeKey, performance.now()) && this.#past.length > 0;
    if (!merges) {
      this.#past = [...this.#past, { value: this.#current, label }].slice(-DEPTH);
    }
    this.#future = [];
    this.#current = value;
  }

  /** While a pointer is pressed, edits with one key are one step. */
  hold(): void {
    this.#merge.hold(performance.now());
  }

  release(): void {
    this.#merge.release();
  }

  undo(): void {
    const entry = this.#past.at(-1);
    if (!entry) return;
    this.#past = this.#past.slice(0, -1);
    this.#future = [...this.#future, { value: this.#current, label: entry.label }];
    this.#current = entry.value;
    this.#merge.forget();
  }

  redo(): void {
    const entry = this.#future.at(-1);
    if (!entry) return;
    this.#future = this.#future.slice(0, -1);
    this.#past = [...this.#past, { value: this.#current, label: entry.label }];
    this.#current = entry.value;
    this.#merge.forget();
  }

  /** Starts anew from a value, with nothing to undo. */
  reset(value: T): void {
    this.#past = [];
    this.#future = [];
    this.#current = value;
    this.#merge.forget();
  }
}
