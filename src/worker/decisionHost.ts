import { decide } from '../../lib/decide/index.ts';
import { InputError } from '../../lib/problem/index.ts';
import { checkProject } from '../../lib/project/index.ts';
import { blinds, glazings } from '../library/index.ts';
import type { DecisionReply, DecisionRequest } from './decisionApi.ts';

/** Least time between two words on progress, ms. */
const PAUSE = 60;

/** Works out decisions, apart from the engine of the page, which must not wait for them. */
export class DecisionHost {
  /** @param tell is told how much is done, 0 to 1 */
  async decide(
    { project: data, hourly, options }: DecisionRequest,
    tell: (done: number) => void,
  ): Promise<DecisionReply> {
    const [{ stations }, { yearOf }] = await Promise.all([
      import('../library/climates.ts'),
      import('../library/year.ts'),
    ]);
    try {
      const library = { glazings, blinds, stations };
      const { project, problems } = checkProject(data, library);
      if (!project) return { ok: false, problems };
      const year = yearOf(project, stations, hourly);
      let told = 0;
      const onProgress = (done: number) => {
        const now = performance.now();
        if (now - told < PAUSE) return;
        told = now;
        tell(done);
      };
      return { ok: true, decision: decide({ project, library, year }, { ...options, onProgress }) };
    } catch (error) {
      if (error instanceof InputError) return { ok: false, problems: [...error.problems] };
      throw error;
    }
  }
}
