import shell from '../../../data/words/en/shell.json' with { type: 'json' };
import { problem, sayFrom } from '../../../lib/problem/index.ts';
import type { Problem } from '../../../lib/problem/index.ts';
import { checkProject, projectSchema, serializeProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { blinds, glazings } from '../../library/index.ts';
import { download, fileNameOf } from '../parts/figure/download.ts';
import type { Kept } from './openProject.svelte.ts';
import type { KeptProject, ProjectStore } from './store.ts';

/** Ending of project files. */
export const ENDING = 'shadewright.json';
/** Most characters of a project file; a larger one is no project of this program. */
const MOST_CHARACTERS = 20_000_000;

export type ReadProject =
  { project: Project; warnings: Problem[] } | { project?: undefined; problems: Problem[] };

/** Reads the text of a project file with everything it may refer to at hand. */
export async function readProjectText(text: string): Promise<ReadProject> {
  if (text.length > MOST_CHARACTERS) return { problems: [tooLong(text.length)] };
  const { stations } = await import('../../library/climates.ts');
  const { project, problems, warnings } = checkProject(text, { glazings, blinds, stations });
  return project ? { project, warnings } : { problems };
}

/** Hands the project to the user as a file. */
export function saveProjectFile(project: Project): void {
  saveText(serializeProject(project), project.name);
}

/** Hands the text of a project file to the user as it is. */
export function saveText(text: string, name: string): void {
  download(new Blob([text], { type: 'application/json' }), fileNameOf(name, ENDING));
}

/** A kept project as it was left: maybe with an input that cannot be computed yet. */
export interface LeftProject {
  project: Project;
  /** The last state that could be computed, where `project` cannot. */
  sound?: Project;
}

/**
 * Reads back what the page itself has kept. An input that does not fit the rest is no hindrance:
 * the page shows it with its problems, as it did before.
 */
export function readKept(kept: KeptProject): LeftProject | { project?: undefined; text: string } {
  const project = wellFormed(kept.text);
  const sound = kept.sound === undefined ? undefined : wellFormed(kept.sound);
  if (project) return { project, sound };
  return sound ? { project: sound } : { text: kept.text };
}

/**
 * A kept project with its hourly files, as the store has it now; files it no longer uses are
 * deleted, unless another page has it open. Undefined where it is gone or cannot be read.
 */
export async function loadKept(
  store: ProjectStore,
  id: string,
  guest: boolean,
): Promise<{ project: Project; kept: Kept } | undefined> {
  const [row, files] = await Promise.all([store.get(id), store.hourlyOf(id)]);
  if (!row) return undefined;
  const left = readKept(row);
  if (!left.project) return undefined;
  const { project, sound } = left;
  const used = [project, sound].map((p) => (p?.climate.kind === 'file' ? p.climate.fileName : ''));
  for (const file of guest ? [] : files) {
    if (!used.includes(file.fileName)) void store.removeHourly(id, file.fileName);
  }
  const hourly = files.filter((file) => used.includes(file.fileName));
  return { project, kept: { row, hourly, sound, guest } };
}

/** A project whose fields are all in form; migrated where it is of an earlier layout. */
function wellFormed(text: string): Project | undefined {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return undefined;
  }
  const result = projectSchema.safeParse(data);
  if (result.success) return result.data;
  const station = (data as { climate?: { station?: string } } | null)?.climate?.station ?? '';
  return checkProject(data, { glazings, blinds, stations: [{ id: station }] }).project;
}

function tooLong(length: number): Problem {
  const say = sayFrom('shell', shell);
  return problem(
    'file',
    {
      message: say('file.tooLong'),
      allowed: say('file.mostCharacters', { most: MOST_CHARACTERS }),
      fix: say('file.saved'),
    },
    length,
  );
}
