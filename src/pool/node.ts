import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import workerpool from 'workerpool';
import { poolOf, workersFor } from './pool.ts';
import type { Pool, Sent } from './pool.ts';

/** A pool of worker threads; they start when the first job comes. */
export function createNodePool({ workers: asked }: { workers?: number } = {}): Pool {
  const workers = workersFor(availableParallelism(), asked);
  const pool = workerpool.pool(fileURLToPath(new URL('./nodeWorker.mjs', import.meta.url)), {
    workerType: 'thread',
    maxWorkers: workers,
    workerThreadOpts: { execArgv: [] },
  });
  return poolOf({
    workers,
    send: (...batch) => pool.exec('batch', batch) as unknown as Sent,
    close: async () => void (await pool.terminate(true)),
  });
}
