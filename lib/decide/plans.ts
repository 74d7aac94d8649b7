import type { Project, ProjectOpening } from '../project/index.ts';
import type { Library } from '../study/index.ts';
import { stockExternal, withOpenings, withStockBlinds } from './measures.ts';

/** Ids of the openings with an external blind in the project. */
export function plannedExternal(project: Project, library: Library): Set<string> {
  const positions = new Map([...library.blinds, ...project.blinds].map((b) => [b.id, b.position]));
  const isExternal = ({ blind }: ProjectOpening) =>
    blind !== undefined && positions.get(blind.blind) === 'external';
  return new Set(project.openings.filter(isExternal).map((o) => o.id));
}

/** The project without the blinds of some openings; their screens stay. */
export function withoutBlinds(project: Project, ids: ReadonlySet<string>): Project {
  return withOpenings(project, ids, ({ blind: _b, ...rest }) => rest);
}

/**
 * The project with external blinds on `chosen` openings. There a planned external blind stays as it
 * is and any other is replaced by a stock one on the common schedule. The rest keep what is planned
 * but for external blinds, which are taken off.
 */
export function externalsOn(
  project: Project,
  library: Library,
  chosen: ReadonlySet<string>,
  hemisphere: 'north' | 'south',
): Project {
  const planned = plannedExternal(project, library);
  const off = new Set([...planned].filter((id) => !chosen.has(id)));
  return withExternals(withoutBlinds(project, off), library, chosen, hemisphere);
}

/** Adds external blinds to the openings in `ids` that have none; all the rest stays as it is. */
export function withExternals(
  project: Project,
  library: Library,
  ids: ReadonlySet<string>,
  hemisphere: 'north' | 'south',
): Project {
  const planned = plannedExternal(project, library);
  const stock = project.openings
    .filter((o) => ids.has(o.id) && !planned.has(o.id))
    .map((o): [string, string] => [o.id, stockExternal(project, o)]);
  return withStockBlinds(project, new Map(stock), hemisphere);
}
