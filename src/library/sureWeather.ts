import type { ClimateStation } from '../../lib/climate/index.ts';
import type { Project } from '../../lib/project/index.ts';
import type { SureWeather } from '../../lib/sure/index.ts';
import { placedNormals } from './builtYear.ts';
import { hourlyYear } from './hourlyYear.ts';
import type { HourlyText } from './hourlyYear.ts';

/** Where the years of a project come from; an hourly file, where one is given, comes first. */
export function sureWeather(
  project: Project,
  stations: readonly ClimateStation[],
  file?: HourlyText,
): SureWeather {
  return file
    ? { kind: 'file', year: hourlyYear(project, file) }
    : { kind: 'normals', ...placedNormals(project, stations) };
}
