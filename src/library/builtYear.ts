import { buildTypicalYear } from '../../lib/climate/index.ts';
import type {
  BuildPlace,
  ClimateStation,
  MonthlyNormals,
  TypicalYear,
} from '../../lib/climate/index.ts';
import problems from '../../data/words/en/problems.json' with { type: 'json' };
import { InputError, problem, sayFrom, verbatim } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { standardOffset } from '../../lib/time/index.ts';

const say = sayFrom('problems', problems);

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
    const texts = {
      message: say('study.noFile'),
      allowed: say('study.noFileAllowed'),
      fix: say('study.noFileFix'),
    };
    throw new InputError(problem('climate', texts, climate.fileName));
  }
  if (climate.kind === 'monthly') {
    const { latitude, longitude, elevation, name, timeZone } = site;
    const offset = standardOffset(timeZone, project.year);
    const place = { latitude, longitude, elevation, name, standardOffset: offset };
    return { normals: climate.normals, place, seed: climate.seed };
  }
  const station = stations.find((s) => s.id === climate.station);
  if (!station) {
    const allowed = verbatim(stations.map((s) => s.id).join(', '));
    const texts = { message: say('study.noStation'), allowed, fix: say('study.noStationFix') };
    throw new InputError(problem('climate.station', texts, climate.station));
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
