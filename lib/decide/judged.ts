/** How a choice of blinds fares: rooms that break their criterion and their hours over it. */
export interface Outcome {
  broken: number;
  hours: number;
}

/** A choice: 1 for each candidate that gets a blind. */
export type Choice = Uint8Array;
export type Judge = (choice: Choice) => Outcome;

/** Below 0 where `a` is the better outcome: fewer rooms broken, then fewer hours. */
export function compareOutcomes(a: Outcome, b: Outcome): number {
  return a.broken - b.broken || a.hours - b.hours;
}

interface Seen {
  choice: Choice;
  outcome: Outcome;
}

/** Most by which one more blind made an outcome worse. */
export type Creep = Outcome;

/**
 * A judge that remembers. A blind keeps sun out, so one more should never mean more overheating:
 * the searches cut branches by that. It can fail by a little where a lowered blind also slows the
 * airing; `creep` finds by how much among all choices seen that differ by one blind.
 */
export class Judged {
  private readonly seen = new Map<string, Seen>();

  constructor(
    readonly count: number,
    private readonly judge: Judge,
  ) {}

  get evaluations(): number {
    return this.seen.size;
  }

  of(choice: Choice): Outcome {
    const key = choice.join('');
    const found = this.seen.get(key);
    if (found) return found.outcome;
    const outcome = this.judge(choice.slice());
    this.seen.set(key, { choice: choice.slice(), outcome });
    return outcome;
  }

  creep(): Creep {
    const creep = { broken: 0, hours: 0 };
    for (const { choice, outcome } of this.seen.values()) {
      const more = choice.slice();
      for (let i = 0; i < this.count; i++) {
        if (more[i] === 1) continue;
        more[i] = 1;
        const after = this.seen.get(more.join(''))?.outcome;
        more[i] = 0;
        if (!after) continue;
        creep.broken = Math.max(creep.broken, after.broken - outcome.broken);
        creep.hours = Math.max(creep.hours, after.hours - outcome.hours);
      }
    }
    return creep;
  }

  /** Looks at no blind, each alone, all, and all but each: what bounds and creep are read from first. */
  probe(): void {
    const { count } = this;
    for (const start of [0, 1]) {
      const choice = new Uint8Array(count).fill(start);
      this.of(choice);
      for (let i = 0; i < count; i++) {
        choice[i] = 1 - start;
        this.of(choice);
        choice[i] = start;
      }
    }
  }
}
