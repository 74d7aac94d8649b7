import { readTypicalYear, splitByErbs } from '../../lib/climate/index.ts';
import type { TableLayout, TypicalYear } from '../../lib/climate/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { standardOffset } from '../../lib/time/index.ts';

/** An hourly weather text, with the layout it is read by where it is a table set by hand. */
export interface HourlyText {
  text: string;
  fileName: string;
  table?: TableLayout;
}

/**
 * The typical year of an hourly file at the site of a project.
 * @throws InputError where the file cannot be taken
 */
export function hourlyYear(project: Project, file: HourlyText): TypicalYear {
  const { latitude, longitude, elevation, timeZone } = project.site;
  return readTypicalYear(file.text, {
    fileName: file.fileName,
    table: file.table,
    site: {
      latitude,
      longitude,
      elevation,
      standardOffset: standardOffset(timeZone, project.year),
    },
    split: splitByErbs,
  });
}
