import type { Project } from '../project/index.ts';
import type { Engine } from '../study/index.ts';
import { facadesOf, TREATMENTS } from './matrix.ts';

type Part = 'sets' | 'verdicts' | 'openings' | 'matrix';

/** Share of the time that each part takes, in their order (measured on the examples). */
const SHARES: readonly [Part, number][] = [
  ['sets', 0.35],
  ['verdicts', 0.2],
  ['openings', 0.1],
  ['matrix', 0.35],
];

/** Follows how far a decision is by counting the studies and sets that are run for it. */
export class Progress {
  private readonly expected: Record<Part, number>;
  private part: Part = 'sets';
  private start = 0;
  private share = 0;
  private steps = 0;

  /** @param tell takes the share that is done, 0 to 1; it only grows */
  constructor(
    project: Project,
    private readonly tell: (done: number) => void = () => undefined,
  ) {
    const facades = facadesOf(project).length;
    const openings = project.openings.length;
    this.expected = {
      sets: 6 * openings + 4,
      verdicts: 16 * facades,
      openings: 4 * openings,
      matrix: 4 * TREATMENTS.length * facades,
    };
  }

  /** Begins a part; those before it are done. */
  begin(part: Part): void {
    this.part = part;
    const index = SHARES.findIndex(([name]) => name === part);
    this.start = SHARES.slice(0, index).reduce((sum, [, share]) => sum + share, 0);
    this.share = SHARES[index][1];
    this.steps = 0;
    this.tell(this.start);
  }

  /** One more study or set was run. */
  step = (): void => {
    this.steps++;
    this.tell(this.start + this.share * Math.min(1, this.steps / this.expected[this.part]));
  };

  /** The engine, with its runs counted. */
  counted(engine: Engine): Engine {
    return {
      ...engine,
      run: (input) => {
        const result = engine.run(input);
        this.step();
        return result;
      },
    };
  }
}
