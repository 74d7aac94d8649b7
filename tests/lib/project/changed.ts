import { checkProject, defaultProject, type Project } from '../../../lib/project/index.ts';
import { shippedLibrary } from './library.ts';

const library = shippedLibrary();

/** The default project with a change, checked. */
export function checked(change: (project: Project) => void) {
  const project = defaultProject();
  change(project);
  return checkProject(project, library);
}

export const paths = (list: readonly { path: string }[]) => list.map((p) => p.path);
