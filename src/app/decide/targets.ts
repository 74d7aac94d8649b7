import type { Project } from '../../../lib/project/index.ts';
import type { SearchTarget } from '../../../lib/search/index.ts';

/** A facade or group whose schedule can be searched. */
export interface TargetChoice {
  key: string;
  kind: 'facade' | 'group';
  name: string;
  target: SearchTarget;
}

/** Groups in use, then facades with openings; or the targets given, in their order. */
export function targetChoices(
  project: Project,
  targets: readonly SearchTarget[] = allTargets(project),
): TargetChoice[] {
  return targets.map((target): TargetChoice => {
    if ('group' in target) {
      const name = project.groups.find((g) => g.id === target.group)?.name ?? target.group;
      return { key: `group ${target.group}`, kind: 'group', name, target };
    }
    const name = project.walls.find((w) => w.id === target.facade)?.name ?? target.facade;
    return { key: `facade ${target.facade}`, kind: 'facade', name, target };
  });
}

function allTargets({ walls, groups, openings }: Project): SearchTarget[] {
  return [
    ...groups
      .filter((g) => openings.some((o) => o.blind?.group === g.id))
      .map(({ id }) => ({ group: id })),
    ...walls.filter((w) => openings.some((o) => o.wall === w.id)).map(({ id }) => ({ facade: id })),
  ];
}
