import { InputError } from '../../../lib/problem/index.ts';
import type { Problem } from '../../../lib/problem/index.ts';
import type { Pool, Progress, Watch } from '../../pool/browser.ts';

/** A long run shared out over the computer's cores; the workers end with it. */
export class PooledTask {
  busy = $state(false);
  progress = $state.raw<Progress>();
  /** What is wrong with what was asked about last. */
  problems = $state.raw<readonly Problem[]>([]);
  /** A fault of the program, in its own words. */
  fault = $state.raw<string>();
  cancelled = $state(false);

  #stop: AbortController | undefined;

  /** Runs a job; one still under way is dropped for it. Undefined where there is no result. */
  async run<T>(work: (pool: Pool, watch: Watch) => Promise<T>): Promise<T | undefined> {
    this.#stop?.abort();
    const stop = (this.#stop = new AbortController());
    const current = () => this.#stop === stop;
    this.#clear();
    this.busy = true;
    let pool: Pool | undefined;
    try {
      const { createBrowserPool } = await import('../../pool/browser.ts');
      if (!current()) return undefined;
      pool = createBrowserPool();
      const onProgress = (progress: Progress) => {
        if (current()) this.progress = progress;
      };
      const result = await work(pool, { onProgress, signal: stop.signal });
      return current() ? result : undefined;
    } catch (error) {
      if (current() && !stop.signal.aborted) {
        if (error instanceof InputError) this.problems = error.problems;
        else this.fault = String(error);
      }
      return undefined;
    } finally {
      if (current()) this.busy = false;
      await pool?.close();
    }
  }

  cancel(): void {
    if (!this.busy) return;
    this.#drop();
    this.cancelled = true;
  }

  forget(): void {
    this.#drop();
    this.#clear();
  }

  #clear(): void {
    this.cancelled = false;
    this.problems = [];
    this.fault = this.progress = undefined;
  }

  #drop(): void {
    this.#stop?.abort();
    this.#stop = undefined;
    this.busy = false;
  }
}
