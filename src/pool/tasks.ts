import type { TypicalYear } from '../../lib/climate/index.ts';
import { blockJudge, blocksOf, hemisphereOf } from '../../lib/decide/index.ts';
import type { Outcome } from '../../lib/decide/index.ts';
import { InputError } from '../../lib/problem/index.ts';
import type { Problem } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { StageCache, createEngine } from '../../lib/study/index.ts';
import type { Engine, StudyInput } from '../../lib/study/index.ts';
import {
  caseRunner,
  casesOf,
  compareSchemes,
  plannedSeed,
  questionOf,
  yearOfCase,
} from '../../lib/sure/index.ts';
import type {
  CaseResult,
  Decided,
  Scheme,
  SchemeFigures,
  SureCase,
  SureInput,
} from '../../lib/sure/index.ts';
import { blinds, glazings } from '../library/index.ts';
import type { HourlyText } from '../library/hourlyYear.ts';

/** A house as a worker is sent it: a checked project, and its hourly weather where it has a file. */
export interface PoolHouse {
  project: Project;
  file?: HourlyText;
}

/** A piece of work that many items of one kind share; plain data. */
export type Job =
  | { kind: 'cases'; house: PoolHouse; decided: Decided }
  | { kind: 'schemes'; house: PoolHouse }
  /** `part`: number of the part of the house (`blocksOf`); an item says 1 or 0 for each opening of it. */
  | { kind: 'subsets'; house: PoolHouse; part: number };

/** What each kind of job takes and gives, item by item. */
export interface JobItems {
  cases: { item: SureCase; result: CaseResult };
  schemes: { item: Scheme; result: SchemeFigures };
  subsets: { item: number[]; result: Outcome };
}

/** Results of a batch in its order, or what is wrong with the input. */
export type BatchReply = { ok: true; results: unknown[] } | { ok: false; problems: Problem[] };

/** Stages kept in one worker: those of a year or two. */
const KEPT = 400;

/**
 * The work of one worker. It keeps its engine, and of the last job what all its batches share, so
 * that a batch of the same job starts warm. Results hang on job and item alone.
 */
export function createTasks(): (key: string, job: Job, items: unknown[]) => Promise<BatchReply> {
  const engine = createEngine(new StageCache(KEPT));
  let ready: { key: string; run: (item: never) => unknown } | undefined;
  return async (key, job, items) => {
    try {
      if (ready?.key !== key) ready = { key, run: await makeReady(job, engine) };
      return { ok: true, results: items.map((item) => ready!.run(item as never)) };
    } catch (error) {
      if (error instanceof InputError) return { ok: false, problems: [...error.problems] };
      throw error;
    }
  };
}

async function makeReady(job: Job, engine: Engine): Promise<(item: never) => unknown> {
  const input = await sureInput(job.house);
  switch (job.kind) {
    case 'cases': {
      const run = caseRunner(questionOf(input, job.decided), engine);
      return (item: SureCase) => run(item);
    }
    case 'schemes': {
      const study = studyInput(input);
      return (item: Scheme) => compareSchemes(study, [item], engine)[0];
    }
    case 'subsets': {
      const study = studyInput(input);
      const block = blocksOf(input.project)[job.part];
      const hemisphere = hemisphereOf(study.year.latitude);
      const judge = blockJudge(engine, study, block, block.openings, hemisphere);
      return (item: number[]) => judge(Uint8Array.from(item));
    }
  }
}

/** The house with what ships; climates and file readers are loaded when they are needed. */
async function sureInput({ project, file }: PoolHouse): Promise<SureInput> {
  const library = { glazings, blinds };
  const [{ sureWeather }, { stations }] = await Promise.all([
    import('../library/sureWeather.ts'),
    import('../library/climates.ts'),
  ]);
  return { project, library, weather: sureWeather(project, stations, file) };
}

function studyInput({ project, library, weather }: SureInput): StudyInput {
  const [plan] = casesOf(plannedSeed(weather));
  const year: TypicalYear = yearOfCase(weather, plan);
  return { project, library, year };
}
