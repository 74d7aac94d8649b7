import type { Project } from '../../../lib/project/index.ts';
import type { Scheme, SchemeFigures } from '../../../lib/sure/index.ts';
import type { HourlyFile } from '../../worker/api.ts';
import { PooledTask } from './pooled.svelte.ts';

/** Schemes of the house side by side. */
export class SchemesState {
  /** Figures in the order the schemes were chosen, with the house they were compared for. */
  answer = $state.raw<{ figures: SchemeFigures[]; project: Project }>();
  readonly task = new PooledTask();

  async compare(project: Project, schemes: readonly Scheme[], file?: HourlyFile): Promise<void> {
    const figures = await this.task.run((pool, watch) =>
      pool.schemes({ project, file }, schemes, watch),
    );
    if (figures) this.answer = { figures, project };
  }

  forget(): void {
    this.task.forget();
    this.answer = undefined;
  }
}
