/** Edits of one kind this close together are one step, ms: typing in one field. */
const MERGE_WITHIN = 1200;

/** Tells which edits belong to the step before them. Times are in ms on any one clock. */
export class StepMerge {
  #key: string | undefined;
  #at = -Infinity;
  #held = false;

  /** Notes an edit; true where it belongs to the step before it. */
  joins(key: string | undefined, now: number): boolean {
    const joins =
      key !== undefined && key === this.#key && (this.#held || now - this.#at < MERGE_WITHIN);
    this.#key = key;
    this.#at = now;
    return joins;
  }

  /** A pointer is pressed: until it is let go, edits with one key are one step, however slow. */
  hold(now: number): void {
    if (now - this.#at >= MERGE_WITHIN) this.forget();
    this.#held = true;
  }

  release(): void {
    this.#held = false;
  }

  /** The next edit begins a step of its own. */
  forget(): void {
    this.#key = undefined;
  }
}
