import { buildTypicalYear, readTypicalYear } from '../../lib/climate/index.ts';
import type { ClimateStation, TableLayout, TypicalYear } from '../../lib/climate/index.ts';
import { InputError, showValue } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { splitByErbs } from '../../lib/climate/index.ts';
import { standardOffset } from '../../lib/time/index.ts';

/** The typical year a project asks for; hourly files come as `hourlyText`, with a layout or not. */
export function yearOf(
  project: Project,
  stations: readonly ClimateStation[],
  hourlyText?: { text: string; fileName: string; table?: TableLayout },
): TypicalYear {
  const { site, climate } = project;
  const offset = standardOffset(site.timeZone, project.year);
  if (hourlyText) {
    const { latitude, longitude, elevation } = site;
    return readTypicalYear(hourlyText.text, {
      fileName: hourlyText.fileName,
      table: hourlyText.table,
      site: { latitude, longitude, elevation, standardOffset: offset },
      split: splitByErbs,
    });
  }
  if (climate.kind === 'file') {
    throw new InputError({
      path: 'climate',
      message: 'the project takes its weather from an hourly file that is not given',
      value: showValue(climate.fileName),
      allowed: 'the file itself, a station of the library, or monthly values',
      fix: 'Give the file (on the command line: --weather FILE), or choose a station.',
    });
  }
  if (climate.kind === 'monthly') {
    const { latitude, longitude, elevation, name } = site;
    const place = { latitude, longitude, elevation, name, standardOffset: offset };
    return buildTypicalYear(climate.normals, place, { seed: climate.seed });
  }
  const station = stations.find((s) => s.id === climate.station);
  if (!station) {
    throw new InputError({
      path: 'climate.station',
      message: 'no station of the library has this id',
      value: showValue(climate.station),
      allowed: stations.map((s) => s.id).join(', '),
      fix: 'Choose one of these.',
    });
  }
  const { latitude, longitude, elevation, name, timeZone, normals } = station;
  const stationOffset = standardOffset(timeZone, project.year);
  const place = { latitude, longitude, elevation, name, standardOffset: stationOffset };
  return buildTypicalYear(normals, place, { seed: climate.seed });
}
