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
import { projectSchema, type Project } from './schema.ts';

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
  const parts = result.success ? partsOf(result.data) : soundParts(data);
  const rooms = roomChecks(data, parts, library);
  const schedules = scheduleChecks(data, parts);
  const problems = [
    ...(result.success ? [] : problemsOf(result.error.issues, projectSchema, data)),
    ...referenceProblems(data, referenceIds(library)),
    ...fitProblems(data, parts, library),
    ...schedules.problems,
    ...rooms.problems,
  ];
  const migrated = from === VERSION ? [] : [migratedWarning(from)];
  if (problems.length || !result.success) return { problems, warnings: migrated };
  return {
    project: result.data,
    problems,
    warnings: [
      ...migrated,
      ...warningsOf(result.data, library),
      ...schedules.warnings,
      ...rooms.warnings,
    ],
  };
}

function migratedWarning(from: number | undefined): Problem {
  const allowed = verbatim(String(VERSION));
  const texts = { message: say('version.earlier'), allowed, fix: say('version.save') };
  return told('version', texts, from);
}
