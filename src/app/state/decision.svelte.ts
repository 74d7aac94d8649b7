import { proxy } from 'comlink';
import type { Decision } from '../../../lib/decide/index.ts';
import type { Problem } from '../../../lib/problem/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import type { HourlyFile } from '../../worker/api.ts';
import { substance } from '../decide/substance.ts';
import type { Fault } from './fault.ts';
import { LongTask } from './longTask.svelte.ts';

/** A decision with the project it belongs to. */
export interface DecisionAnswer {
  decision: Decision;
  project: Project;
  hourly?: HourlyFile;
}

/**
 * Which facades need external blinds, worked out in a worker of its own as it takes seconds. It is
 * asked for, not followed: a change of the project leaves the last answer there, marked as stale.
 */
export class DecisionState {
  /** The last answer; its names are those of its own project. */
  answer = $state.raw<DecisionAnswer>();
  /** How much is done of what is under way, 0 to 1. */
  done = $state(0);
  /** Whether a decision was asked for since the project was opened. */
  asked = $state(false);

  readonly #task: LongTask;
  readonly #key = $derived(this.answer && substance(this.answer.project));

  constructor(makeWorker: () => Worker) {
    this.#task = new LongTask(makeWorker);
  }

  get busy(): boolean {
    return this.#task.busy;
  }

  /** What is wrong with the project that was asked about last. */
  get problems(): readonly Problem[] {
    return this.#task.problems;
  }

  get fault(): Fault | undefined {
    return this.#task.fault;
  }

  /** The last request was broken off by the user. */
  get cancelled(): boolean {
    return this.#task.cancelled;
  }

  /** Whether the last answer is one of this project as it is. */
  isFresh(project: Project, hourly?: HourlyFile): boolean {
    if (!this.answer || hourly !== this.answer.hourly) return false;
    return this.answer.project === project || this.#key === substance(project);
  }

  /** Asks for a decision unless one was asked for before. */
  begin(project: Project, hourly?: HourlyFile): void {
    if (!this.asked) void this.request(project, hourly);
  }

  /** Works out a decision; one still under way is dropped for it. */
  async request(project: Project, hourly?: HourlyFile): Promise<void> {
    this.asked = true;
    this.done = 0;
    const decision = await this.#task.run((host, current) =>
      host.decide(
        { project, hourly },
        proxy((done: number) => {
          if (current()) this.done = done;
        }),
      ),
    );
    if (decision) this.answer = { decision, project, hourly };
  }

  /** Breaks off what is under way; the last answer stays. */
  cancel(): void {
    this.#task.cancel();
  }

  /** Another project is on screen: the last answer is not one of it. */
  forget(): void {
    this.#task.forget();
    this.answer = undefined;
    this.asked = false;
  }
}
