import { basename } from 'node:path';
import type { TypicalYear } from '../../lib/climate/index.ts';
import { InputError } from '../../lib/problem/index.ts';
import type { Problem } from '../../lib/problem/index.ts';
import { checkProject } from '../../lib/project/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { stations } from '../library/climates.ts';
import { blinds, glazings } from '../library/index.ts';
import { yearOf } from '../library/year.ts';
import { readText } from './files.ts';

/** A project file and its weather, read and checked. */
export interface CommandInput {
  project: Project;
  warnings: readonly Problem[];
  year: TypicalYear;
}

/**
 * Reads the project and its year of weather.
 * @param weather path of an hourly file to use instead of the climate named in the project
 * @throws InputError for a file that cannot be read or is not right
 */
export function readInput(path: string, weather: string | undefined): CommandInput {
  const library = { glazings, blinds, stations };
  const { project, problems, warnings } = checkProject(readText(path, 'project file'), library);
  if (!project) throw new InputError(problems);
  const hourly =
    weather === undefined
      ? undefined
      : { text: readText(weather, '--weather'), fileName: basename(weather) };
  return { project, warnings, year: yearOf(project, stations, hourly) };
}
