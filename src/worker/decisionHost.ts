import { decide } from '../../lib/decide/index.ts';
import { InputError } from '../../lib/problem/index.ts';
import { checkProject } from '../../lib/project/index.ts';
import type { SearchProgress } from '../../lib/search/index.ts';
import type { StudyInput } from '../../lib/study/index.ts';
import { blinds, glazings } from '../library/index.ts';
import type {
  DecisionReply,
  HouseRequest,
  LongReply,
  SearchReply,
  SearchRequest,
} from './decisionApi.ts';

/** Least time between two words on progress, ms. */
const PAUSE = 60;

/** Works out what takes seconds, apart from the engine of the page, which must not wait for it. */
export class DecisionHost {
  /** @param tell is told how much is done, 0 to 1 */
  decide(request: HouseRequest, tell: (done: number) => void): Promise<DecisionReply> {
    const onProgress = nowAndThen(tell);
    return answer(request, (input) => decide(input, { onProgress }));
  }

  /** @param tell is told where the search is */
  async search(
    request: SearchRequest,
    tell: (progress: SearchProgress) => void,
  ): Promise<SearchReply> {
    const { searchSchedule } = await import('../../lib/search/index.ts');
    const onProgress = nowAndThen(tell);
    return answer(request, (input) => {
      const search = searchSchedule(input, request.target);
      let step = search.next();
      for (; !step.done; step = search.next()) onProgress(step.value);
      return step.value;
    });
  }
}

async function answer<T>(
  { project: data, hourly }: HouseRequest,
  work: (input: StudyInput) => T,
): Promise<LongReply<T>> {
  const [{ stations }, { yearOf }] = await Promise.all([
    import('../library/climates.ts'),
    import('../library/year.ts'),
  ]);
  try {
    const library = { glazings, blinds, stations };
    const { project, problems } = checkProject(data, library);
    if (!project) return { ok: false, problems };
    return {
      ok: true,
      result: work({ project, library, year: yearOf(project, stations, hourly) }),
    };
  } catch (error) {
    if (error instanceof InputError) return { ok: false, problems: [...error.problems] };
    throw error;
  }
}

/** Passes on what it is told, but not more often than can be seen. */
function nowAndThen<T>(tell: (value: T) => void): (value: T) => void {
  let told = 0;
  return (value) => {
    const now = performance.now();
    if (now - told < PAUSE) return;
    told = now;
    tell(value);
  };
}
