import { createRuns, facadeVerdicts, searchSets } from '../../../lib/decide/index.ts';
import { defaultProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import { casesOf, plannedSeed, yearOfCase } from '../../../lib/sure/index.ts';
import type { Decided, SureInput, SureWeather } from '../../../lib/sure/index.ts';
import { stations } from '../../../src/library/climates.ts';
import { sureWeather } from '../../../src/library/sureWeather.ts';
import { library } from '../study/support.ts';

/** A project with the weather it asks for, as `howSure` takes it. */
export function sureInput(project: Project, weather?: SureWeather): SureInput {
  return { project, library, weather: weather ?? sureWeather(project, stations) };
}

/** What is decided of a house in its planned year. */
export function decidedOf({ project, weather }: SureInput): Decided {
  const year = yearOfCase(weather, casesOf(plannedSeed(weather))[0]);
  const runs = createRuns(createEngine(), { project, library, year });
  const sets = searchSets(runs.engine, runs.input, { hemisphere: runs.hemisphere });
  const overhangDepth = 0.8;
  return {
    verdicts: facadeVerdicts(runs, sets, { hemisphere: runs.hemisphere, overhangDepth }),
    sets,
    overhangDepth,
  };
}

/** The normals of the default project's climate. */
export const burlington = (): SureWeather => sureWeather(defaultProject(), stations);
