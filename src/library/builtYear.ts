import { buildTypicalYear } from '../../lib/climate/index.ts';
import type {
  BuildPlace,
  ClimateStation,
  MonthlyNormals,
  TypicalYear,
} from '../../lib/climate/index.ts';
import { InputError, showValue } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { standardOffset } from '../../lib/time/index.ts';

/** Monthly values with the place they are of and the seed that the project asks for. */
export interface PlacedNormals {
  normals: MonthlyNormals;
  place: BuildPlace;
  seed: number;
}

/**
 * What the typical year of a project that needs no file is built from.
 * @throws InputError where the project wants a file, or names no station of the library
 */
export function placedNormals(
  project: Project,
  stations: readonly ClimateStation[],
): PlacedNormals {
  const { site, climate } = project;
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
    const { latitude, longitude, elevation, name, timeZone } = site;
    const offset = standardOffset(timeZone, project.year);
    const place = { latitude, longitude, elevation, name, standardOffset: offset };
    return { normals: climate.normals, place, seed: climate.seed };
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
  const offset = standardOffset(timeZone, project.year);
  const place = { latitude, longitude, elevation, name, standardOffset: offset };
  return { normals, place, seed: climate.seed };
}

/**
 * The typical year of a project that needs no file: of a station or of monthly values.
 * @throws InputError where the project wants a file, or names no station of the library
 */
export function builtYear(project: Project, stations: readonly ClimateStation[]): TypicalYear {
  const { normals, place, seed } = placedNormals(project, stations);
  return buildTypicalYear(normals, place, { seed });
}
