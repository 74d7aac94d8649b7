import { proxy } from 'comlink';
import type { Project } from '../../../lib/project/index.ts';
import type { SearchFindings, SearchProgress, SearchTarget } from '../../../lib/search/index.ts';
import type { HourlyFile } from '../../worker/api.ts';
import { LongTask } from './longTask.svelte.ts';

/** What a search found, with the project it was made for. */
export interface SearchAnswer {
  findings: SearchFindings;
  project: Project;
}

/** The search for a blind schedule, in a worker of its own. */
export class SearchState {
  answer = $state.raw<SearchAnswer>();
  /** Where the search under way is. */
  progress = $state.raw<SearchProgress>();
  readonly task: LongTask;

  constructor(makeWorker: () => Worker) {
    this.task = new LongTask(makeWorker);
  }

  /** Searches; a search still under way is dropped for it. */
  async request(project: Project, target: SearchTarget, hourly?: HourlyFile): Promise<void> {
    this.progress = undefined;
    const findings = await this.task.run((host, current) =>
      host.search(
        { project, target, hourly },
        proxy((progress: SearchProgress) => {
          if (current()) this.progress = progress;
        }),
      ),
    );
    if (findings) this.answer = { findings, project };
  }

  forget(): void {
    this.task.forget();
    this.answer = this.progress = undefined;
  }
}
