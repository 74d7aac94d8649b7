import { proxy, wrap } from 'comlink';
import type { Decision } from '../../../lib/decide/index.ts';
import type { Problem } from '../../../lib/problem/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import type { HourlyFile } from '../../worker/api.ts';
import type { DecisionHost } from '../../worker/decisionHost.ts';
import { substance } from '../decide/substance.ts';

/** Price of an external blind by opening id, in a currency of the user's; 1 where absent. */
export type Prices = Readonly<Record<string, number>>;

/** A decision with the project it belongs to. */
export interface DecisionAnswer {
  decision: Decision;
  project: Project;
  prices: Prices;
}

/**
 * Which facades need external blinds, worked out in a worker of its own as it takes seconds. It is
 * asked for, not followed: a change of the project leaves the last answer there, marked as stale.
 */
export class DecisionState {
  /** The last answer; its names are those of its own project. */
  answer = $state.raw<DecisionAnswer>();
  busy = $state(false);
  /** How much is done of what is under way, 0 to 1. */
  done = $state(0);
  /** What is wrong with the project that was asked about last. */
  problems = $state.raw<Problem[]>([]);
  /** A fault of the program, in its own words. */
  fault = $state.raw<string>();
  /** The last request was broken off by the user. */
  cancelled = $state(false);
  /** Prices for the next request. */
  prices = $state.raw<Prices>({});

  readonly #makeWorker: () => Worker;
  #worker: Worker | undefined;
  /** Whether a decision was asked for since the project was opened. */
  asked = $state(false);
  #hourly: HourlyFile | undefined;
  readonly #key = $derived(this.answer && substance(this.answer.project));

  constructor(makeWorker: () => Worker) {
    this.#makeWorker = makeWorker;
  }

  /** Whether the last answer is one of this project as it is. */
  isFresh(project: Project, hourly?: HourlyFile): boolean {
    if (!this.answer || hourly !== this.#hourly) return false;
    return this.answer.project === project || this.#key === substance(project);
  }

  /** Asks for a decision unless one was asked for before. */
  begin(project: Project, hourly?: HourlyFile): void {
    if (!this.asked) void this.request(project, hourly);
  }

  /** Works out a decision; one still under way is dropped for it. */
  async request(project: Project, hourly?: HourlyFile): Promise<void> {
    this.#stop();
    const worker = (this.#worker = this.#makeWorker());
    const { prices } = this;
    this.asked = this.busy = true;
    this.cancelled = false;
    this.fault = undefined;
    this.done = 0;
    const current = () => this.#worker === worker;
    worker.addEventListener('error', (event) => {
      if (current()) this.#end(event.message || 'The worker could not be started.');
    });
    try {
      const tell = proxy((done: number) => {
        if (current()) this.done = done;
      });
      const asked = { project, hourly, options: { prices: pricesOf(project, prices) } };
      const reply = await wrap<DecisionHost>(worker).decide(asked, tell);
      if (!current()) return;
      this.problems = reply.ok ? [] : reply.problems;
      if (reply.ok) {
        this.#hourly = hourly;
        this.answer = { decision: reply.decision, project, prices };
      }
      this.#end();
    } catch (error) {
      if (current()) this.#end(String(error));
    }
  }

  /** Breaks off what is under way; the last answer stays. */
  cancel(): void {
    if (!this.busy) return;
    this.#stop();
    this.cancelled = true;
  }

  /** Another project is on screen: the last answer is not one of it. */
  forget(): void {
    this.#stop();
    this.answer = undefined;
    this.prices = {};
    this.problems = [];
    this.asked = this.cancelled = false;
  }

  #end(fault?: string): void {
    this.fault = fault;
    this.#stop();
  }

  /** A worker in the middle of a decision hears nothing, so it is ended and made anew. */
  #stop(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.busy = false;
  }
}

/** The prices of openings there are. */
function pricesOf({ openings }: Project, prices: Prices): Prices {
  return Object.fromEntries(
    Object.entries(prices).filter(([id]) => openings.some((o) => o.id === id)),
  );
}
