import type { ClimateStation, TypicalYear } from '../../lib/climate/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { builtYear } from './builtYear.ts';
import { hourlyYear } from './hourlyYear.ts';
import type { HourlyText } from './hourlyYear.ts';

/** The typical year a project asks for; an hourly file, where one is given, comes first. */
export function yearOf(
  project: Project,
  stations: readonly ClimateStation[],
  file?: HourlyText,
): TypicalYear {
  return file ? hourlyYear(project, file) : builtYear(project, stations);
}
