/** The kept result of one stage; `id` names it in the keys of the stages after it. */
export interface Stage<T> {
  readonly id: number;
  readonly value: T;
}

/** How often a stage was computed and how long that took, for the bench. */
export interface StageCost {
  runs: number;
  milliseconds: number;
}

/**
 * Keeps the results of stages until their inputs change. A key is the stage's name, the ids of the
 * stages it reads and its own inputs as JSON; the least recently used results go when there are
 * more than `capacity`.
 */
export class StageCache {
  readonly costs = new Map<string, StageCost>();
  private readonly entries = new Map<string, Stage<unknown>>();
  private readonly objectIds = new WeakMap<object, number>();
  private nextId = 1;

  constructor(
    private readonly capacity = 512,
    private readonly now: () => number = () => performance.now(),
  ) {}

  /** An id for an input too large to spell out in a key; the object must not be changed later. */
  idOf(input: object): number {
    let id = this.objectIds.get(input);
    if (id === undefined) {
      id = this.nextId++;
      this.objectIds.set(input, id);
    }
    return id;
  }

  /** The kept result for these inputs, or a fresh one from `make`. */
  get<T>(stage: string, inputs: readonly unknown[], make: () => T): Stage<T> {
    const key = `${stage}|${JSON.stringify(inputs)}`;
    const kept = this.entries.get(key);
    if (kept) {
      this.entries.delete(key);
      this.entries.set(key, kept);
      return kept as Stage<T>;
    }
    const cost = this.costs.get(stage) ?? { runs: 0, milliseconds: 0 };
    const start = this.now();
    const made: Stage<T> = { id: this.nextId++, value: make() };
    cost.runs++;
    cost.milliseconds += this.now() - start;
    this.costs.set(stage, cost);
    this.entries.set(key, made);
    if (this.entries.size > this.capacity) {
      this.entries.delete(this.entries.keys().next().value!);
    }
    return made;
  }

  /** Forgets everything, so that the next run is a cold one. */
  clear(): void {
    this.entries.clear();
    this.costs.clear();
  }
}
