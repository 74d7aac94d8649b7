import type { Project } from '../../../lib/project/index.ts';

/** What of a project a decision rests on, as text: all but names, words, kept schemes and the units shown. */
export function substance(project: Project): string {
  const { name: _n, notes: _o, units: _u, page: _p, schemes: _s, ...rest } = project;
  return JSON.stringify(rest);
}
