import workerpool from 'workerpool';
import script from './worker.ts?worker&url';
import { poolOf, workersFor } from './pool.ts';
import type { Pool, Sent } from './pool.ts';

export type { Pool, Progress, Watch } from './pool.ts';
export type { PoolHouse } from './tasks.ts';

/**
 * A pool of the browser's workers; they start when the first job comes. Load this file with a
 * dynamic import, so that pages which need no pool do not fetch it.
 */
export function createBrowserPool({ workers: asked }: { workers?: number } = {}): Pool {
  const workers = workersFor(navigator.hardwareConcurrency, asked);
  const pool = workerpool.pool(script, {
    workerType: 'web',
    maxWorkers: workers,
    workerOpts: { type: 'module' },
  });
  return poolOf({
    workers,
    send: (...batch) => pool.exec('batch', batch) as unknown as Sent,
    close: async () => void (await pool.terminate(true)),
  });
}
