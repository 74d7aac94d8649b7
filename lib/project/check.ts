import { InputError, verbatim, type Problem } from '../problem/index.ts';
import { fitProblems } from './fit.ts';
import { problemsOf } from './issues.ts';
import { referenceIds, type ProjectLibrary } from './library.ts';
import { VERSION } from './format.ts';
import { migrate } from './migrate.ts';
import { partsOf, soundParts } from './parts.ts';
import { readJson } from './json.ts';
import { warningsOf } from './plausible.ts';
import { referenceProblems } from './references.ts';
import { roomChecks } from './roomFit.ts';
import { say, told } from './say.ts';
import { scheduleChecks } from './scheduleFit.ts';
import { projectSchema, type House, type Project } from './schema.ts';
import { valueAt } from './walk.ts';

/** What a check found; `project` is there when there are no problems. */
export interface ProjectCheck {
  project?: Project;
  problems: Problem[];
  /** Nothing that hinders a study, but looks like a slip. */
  warnings: Problem[];
}

/**
 * Reads a project: JSON text or the data it stands for, of any version known.
 * @param library what ships with the program, for the ids a project may refer to
 * @throws InputError with every problem found
 */
export function parseProject(json: unknown, library: ProjectLibrary): Project {
  const { project, problems } = checkProject(json, library);
  if (!project) throw new InputError(problems);
  return project;
}

/** Checks a project and tells all that is wrong or odd with it; throws nothing. */
export function checkProject(json: unknown, library: ProjectLibrary): ProjectCheck {
  const read = typeof json === 'string' ? readJson(json) : { data: json, problems: [] };
  if (read.problems.length) return { problems: read.problems, warnings: [] };
  const { data, from, problems: unread } = migrate(read.data);
  if (!data) return { problems: unread, warnings: [] };

  const result = projectSchema.safeParse(data);
  const contents = [
    houseCheck(data, result.data, library),
    ...keptHouses(data).map(({ at, house }) =>
      under(at, houseCheck(house, result.data?.schemes?.[at]?.house, library)),
    ),
  ];
  const problems = [
    ...(result.success ? [] : problemsOf(result.error.issues, projectSchema, data)),
    ...contents.flatMap((check) => check.problems),
  ];
  const migrated = from === VERSION ? [] : [migratedWarning(from)];
  if (problems.length || !result.success) return { problems, warnings: migrated };
  return {
    project: result.data,
    problems,
    warnings: [...migrated, ...contents.flatMap((check) => check.warnings)],
  };
}

/** What is wrong or odd among the parts of one house. */
function houseCheck(
  data: unknown,
  sound: House | undefined,
  library: ProjectLibrary,
): Required<Omit<ProjectCheck, 'project'>> {
  const parts = sound ? partsOf(sound) : soundParts(data);
  const rooms = roomChecks(data, parts, library);
  const schedules = scheduleChecks(data, parts);
  return {
    problems: [
      ...referenceProblems(data, referenceIds(library)),
      ...fitProblems(data, parts, library),
      ...schedules.problems,
      ...rooms.problems,
    ],
    warnings: [
      ...(sound ? warningsOf(sound, library) : []),
      ...schedules.warnings,
      ...rooms.warnings,
    ],
  };
}

/** Raw data of the houses that are kept as schemes. */
function keptHouses(data: unknown): { at: number; house: unknown }[] {
  const list = valueAt(data, ['schemes']);
  if (!Array.isArray(list)) return [];
  return list.map((_, at) => ({ at, house: valueAt(data, ['schemes', at, 'house']) }));
}

/** A kept house was looked through when it was kept: only what is wrong with it is told. */
function under(at: number, { problems }: { problems: Problem[] }) {
  const placed = problems.map((p) => ({ ...p, path: `schemes[${at}].house.${p.path}` }));
  return { problems: placed, warnings: [] };
}

function migratedWarning(from: number | undefined): Problem {
  const allowed = verbatim(String(VERSION));
  const texts = { message: say('version.earlier'), allowed, fix: say('version.save') };
  return told('version', texts, from);
}
