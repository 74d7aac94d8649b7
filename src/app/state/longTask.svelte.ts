import { wrap } from 'comlink';
import type { Remote } from 'comlink';
import type { Problem } from '../../../lib/problem/index.ts';
import type { LongReply } from '../../worker/decisionApi.ts';
import type { DecisionHost } from '../../worker/decisionHost.ts';
import { faultOf } from './fault.ts';
import type { Fault } from './fault.ts';

/** Something that takes seconds, in a worker of its own, one at a time. */
export class LongTask {
  busy = $state(false);
  /** What is wrong with what was asked last. */
  problems = $state.raw<Problem[]>([]);
  fault = $state.raw<Fault>();
  /** The last one was broken off by the user. */
  cancelled = $state(false);

  readonly #makeWorker: () => Worker;
  #worker: Worker | undefined;

  constructor(makeWorker: () => Worker) {
    this.#makeWorker = makeWorker;
  }

  /**
   * Runs a task; one still under way is dropped for it. Gives undefined where the task was dropped
   * or there was no result.
   * @param ask `current` tells whether the task still counts
   */
  async run<T>(
    ask: (host: Remote<DecisionHost>, current: () => boolean) => Promise<LongReply<T>>,
  ): Promise<T | undefined> {
    this.stop();
    const worker = (this.#worker = this.#makeWorker());
    const current = () => this.#worker === worker;
    this.busy = true;
    this.cancelled = false;
    this.fault = undefined;
    worker.addEventListener('error', (event) => {
      if (current()) this.#end(faultOf(event, 'worker'));
    });
    try {
      const reply = await ask(wrap<DecisionHost>(worker), current);
      if (!current()) return undefined;
      this.problems = reply.ok ? [] : reply.problems;
      this.#end();
      return reply.ok ? reply.result : undefined;
    } catch (error) {
      if (current()) this.#end({ said: String(error) });
      return undefined;
    }
  }

  /** Breaks off what is under way. */
  cancel(): void {
    if (!this.busy) return;
    this.stop();
    this.cancelled = true;
  }

  /** A worker in the middle of its work hears nothing, so it is ended and made anew. */
  stop(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.busy = false;
  }

  /** As before the first one. */
  forget(): void {
    this.stop();
    this.problems = [];
    this.fault = undefined;
    this.cancelled = false;
  }

  #end(fault?: Fault): void {
    this.fault = fault;
    this.stop();
  }
}
