import type { SureFindings } from '../../../lib/sure/index.ts';
import type { DecisionAnswer } from './decision.svelte.ts';
import { PooledTask } from './pooled.svelte.ts';

/** How sure a decision is, over many years and tolerances. */
export class SureState {
  answer = $state.raw<{ findings: SureFindings; of: DecisionAnswer }>();
  readonly task = new PooledTask();

  async request(of: DecisionAnswer): Promise<void> {
    const { project, hourly, decision } = of;
    const findings = await this.task.run((pool, watch) =>
      pool.sure({ project, file: hourly }, decision, undefined, watch),
    );
    if (findings) this.answer = { findings, of };
  }

  forget(): void {
    this.task.forget();
    this.answer = undefined;
  }
}
