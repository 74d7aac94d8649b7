import { InputError, problem } from '../problem/index.ts';
import type { Text } from '../problem/index.ts';
import { StageCache, createEngine } from '../study/index.ts';
import type { Engine, StudyInput } from '../study/index.ts';
import { openingFigures } from './firstLast.ts';
import type { OpeningFigures } from './firstLast.ts';
import { searchSets } from './houseSet.ts';
import type { SetFindings } from './houseSet.ts';
import { facadeMatrix } from './matrix.ts';
import type { FacadeMatrix } from './matrix.ts';
import { OVERHANG_DEPTH } from './measures.ts';
import { Progress } from './progress.ts';
import { createRuns } from './runs.ts';
import { facadeVerdicts } from './verdicts.ts';
import { sayProblem as say } from '../words/index.ts';
import type { FacadeVerdict } from './verdicts.ts';

export interface DecideOptions {
  /** Openings that may get an external blind; absent: all. */
  candidates?: readonly string[];
  /** Price of an external blind by opening id, above 0; 1 where absent. */
  prices?: Readonly<Record<string, number>>;
  /** Depth of the overhang that is tried, m; OVERHANG_DEPTH where absent. */
  overhangDepth?: number;
  /** Told now and then how much is done, 0 to 1. */
  onProgress?: (done: number) => void;
}

/** Everything found about which facades need external blinds; plain data. */
export interface Decision {
  /** Rooms as planned. */
  rooms: {
    id: string;
    name: string;
    hours: number;
    kept: boolean;
    value: number;
    limit?: number;
  }[];
  /** In English, as all data of findings. */
  criterion: string;
  verdicts: FacadeVerdict[];
  openings: OpeningFigures[];
  matrix: FacadeMatrix[];
  sets: SetFindings;
  overhangDepth: number;
  hemisphere: 'north' | 'south';
  warnings: Text[];
}

/**
 * Which facades of a house need external blinds. The same input gives the same answer.
 *
 * @param engine one whose kept stages may be used; a new one where absent
 * @throws InputError for a price, candidate or depth that cannot be
 */
export function decide(
  input: StudyInput,
  options: DecideOptions = {},
  engine: Engine = createEngine(roomyCache(input)),
): Decision {
  const overhangDepth = options.overhangDepth ?? OVERHANG_DEPTH;
  checkDepth(overhangDepth);
  const progress = new Progress(input.project, options.onProgress);
  const runs = createRuns(progress.counted(engine), input);
  const { hemisphere, planned } = runs;
  const measures = { hemisphere, overhangDepth };
  progress.begin('sets');
  const sets = searchSets(engine, input, { hemisphere, ...options, onJudged: progress.step });
  progress.begin('verdicts');
  const verdicts = facadeVerdicts(runs, sets, measures);
  progress.begin('openings');
  const openings = openingFigures(runs);
  progress.begin('matrix');
  const matrix = facadeMatrix(runs, measures);
  return {
    rooms: planned.rooms.map(({ id, name, with: outcome }) => {
      const { hoursOver, met, value, limit } = outcome.chosen;
      return { id, name, hours: hoursOver, kept: met !== false, value, limit };
    }),
    criterion: planned.rooms[0]?.with.chosen.title.english ?? '',
    verdicts,
    openings,
    matrix,
    sets,
    overhangDepth,
    hemisphere,
    warnings: planned.warnings,
  };
}

function checkDepth(depth: number): void {
  if (Number.isFinite(depth) && depth > 0 && depth <= 10) return;
  const texts = {
    message: say('decide.depth'),
    allowed: say('decide.depthAllowed'),
    fix: say('decide.depthFix'),
  };
  throw new InputError(problem('overhangDepth', texts, depth));
}

/** Room for the stages of the house as planned and of the variants next to it. */
function roomyCache({ project }: StudyInput): StageCache {
  return new StageCache(512 + 16 * project.openings.length);
}
