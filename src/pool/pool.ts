import { InputError } from '../../lib/problem/index.ts';
import { casesOf, summarise } from '../../lib/sure/index.ts';
import type {
  CaseOptions,
  CaseResult,
  Decided,
  Scheme,
  SchemeFigures,
  SureCase,
  SureFindings,
} from '../../lib/sure/index.ts';
import type { Outcome } from '../../lib/decide/index.ts';
import type { BatchReply, Job, JobItems, PoolHouse } from './tasks.ts';

/** How far a job is. */
export interface Progress {
  done: number;
  of: number;
}

/** What a job may be given to be watched and stopped by. */
export interface Watch {
  onProgress?: (progress: Progress) => void;
  /** Stops the job: its promise is rejected with the signal's reason and its workers are freed. */
  signal?: AbortSignal;
}

/** Workers that share out long runs. The same results come out whatever their number. */
export interface Pool {
  readonly workers: number;
  /** How sure a decision is (lib/sure). */
  sure(
    house: PoolHouse,
    decided: Decided,
    options?: CaseOptions,
    watch?: Watch,
  ): Promise<SureFindings>;
  /** The results of some cases of it, in their order. */
  cases(
    house: PoolHouse,
    decided: Decided,
    cases: readonly SureCase[],
    watch?: Watch,
  ): Promise<CaseResult[]>;
  /** Schemes of one house on the same axes, in their order. */
  schemes(house: PoolHouse, schemes: readonly Scheme[], watch?: Watch): Promise<SchemeFigures[]>;
  /** How sets of external blinds fare in one part of a house (`blocksOf`), in their order. */
  subsets(
    house: PoolHouse,
    part: number,
    choices: readonly number[][],
    watch?: Watch,
  ): Promise<Outcome[]>;
  /** Ends all workers; jobs that still run are rejected. */
  close(): Promise<void>;
}

/** A batch that has been handed to a worker. */
export interface Sent extends PromiseLike<BatchReply> {
  cancel(): unknown;
}

/** The workers themselves, of Node or of the browser. */
export interface Crew {
  workers: number;
  send(key: string, job: Job, items: unknown[]): Sent;
  close(): Promise<void>;
}

/** Subsets are short: so many go in one batch. */
const SUBSETS_A_BATCH = 32;

export function poolOf(crew: Crew): Pool {
  let jobs = 0;

  async function share<K extends keyof JobItems>(
    job: Job & { kind: K },
    items: readonly JobItems[K]['item'][],
    batch: number,
    { onProgress, signal }: Watch = {},
  ): Promise<JobItems[K]['result'][]> {
    signal?.throwIfAborted();
    const key = String(jobs++);
    const starts = Array.from({ length: Math.ceil(items.length / batch) }, (_, i) => i * batch);
    let done = 0;
    onProgress?.({ done, of: items.length });
    const sent = starts.map((start) => {
      const own = items.slice(start, start + batch);
      const reply = crew.send(key, job, own);
      const results = Promise.resolve(reply).then((answer) => {
        if (!answer.ok) throw new InputError(answer.problems);
        done += own.length;
        if (!signal?.aborted) onProgress?.({ done, of: items.length });
        return answer.results as JobItems[K]['result'][];
      });
      return { reply, results };
    });
    const stop = () => sent.forEach(({ reply }) => reply.cancel());
    signal?.addEventListener('abort', stop, { once: true });
    try {
      return (await Promise.all(sent.map(({ results }) => results))).flat();
    } catch (error) {
      stop();
      // Every other batch fails with it: they have said all there is to say.
      await Promise.allSettled(sent.map(({ results }) => results));
      signal?.throwIfAborted();
      throw error;
    } finally {
      signal?.removeEventListener('abort', stop);
    }
  }

  const runCases: Pool['cases'] = (house, decided, cases, watch) =>
    share({ kind: 'cases', house, decided }, cases, 1, watch);

  return {
    workers: crew.workers,
    cases: runCases,
    async sure(house, decided, options, watch) {
      const { project, file } = house;
      const { climate } = project;
      const ofFile = file !== undefined || climate.kind === 'file';
      const cases = casesOf(ofFile ? undefined : climate.seed, options);
      const results = await runCases(house, decided, cases, watch);
      const weather = { kind: ofFile ? ('file' as const) : ('normals' as const) };
      return summarise({ project, weather, facades: decided.verdicts }, cases, results);
    },
    schemes: (house, schemes, watch) => share({ kind: 'schemes', house }, schemes, 1, watch),
    subsets: (house, part, choices, watch) =>
      share({ kind: 'subsets', house, part }, choices, SUBSETS_A_BATCH, watch),
    close: () => crew.close(),
  };
}

/** Workers to make: as many as asked for, but no more than the machine has cores, and at least one. */
export function workersFor(cores: number, asked = Infinity): number {
  return Math.max(1, Math.min(Math.floor(cores) || 1, Math.floor(asked)));
}
