import { defaultProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import type { SureInput, SureWeather } from '../../../lib/sure/index.ts';
import { stations } from '../../../src/library/climates.ts';
import { sureWeather } from '../../../src/library/sureWeather.ts';
import { library } from '../study/support.ts';

/** A project with the weather it asks for, as `howSure` takes it. */
export function sureInput(project: Project, weather?: SureWeather): SureInput {
  return { project, library, weather: weather ?? sureWeather(project, stations) };
}

/** The normals of the default project's climate. */
export const burlington = (): SureWeather => sureWeather(defaultProject(), stations);
