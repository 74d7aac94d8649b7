import type { Project, ProjectGroup, ProjectOpening } from '../../../lib/project/index.ts';
import type { Schedule } from '../../../lib/schedule/index.ts';

/** What is scheduled: a group that one remote channel moves, or a blind that moves alone. */
export type Target =
  | { kind: 'group'; key: string; id: string; name: string; group: ProjectGroup }
  | { kind: 'blind'; key: string; id: string; name: string };

export const groupKey = (id: string): string => `group:${id}`;
export const blindKey = (id: string): string => `blind:${id}`;

/** Everything that can be scheduled: groups by their channel, then blinds that move alone. */
export function targetsOf(project: Project): Target[] {
  const groups = [...project.groups].sort((a, b) => a.channel - b.channel);
  return [
    ...groups.map((group): Target => {
      const { id, name } = group;
      return { kind: 'group', key: groupKey(id), id, name, group };
    }),
    ...project.openings
      .filter((o) => o.blind && !o.blind.group)
      .map(({ id, name }): Target => ({ kind: 'blind', key: blindKey(id), id, name })),
  ];
}

/** The openings whose blinds a target moves. */
export function membersOf(project: Project, target: Target): ProjectOpening[] {
  return project.openings.filter((o) =>
    target.kind === 'group' ? o.blind?.group === target.id : o.id === target.id,
  );
}

/** The target that moves the blind of an opening. */
export function targetOfOpening(project: Project, openingId: string): string | undefined {
  const opening = project.openings.find((o) => o.id === openingId);
  if (!opening?.blind) return undefined;
  return opening.blind.group ? groupKey(opening.blind.group) : blindKey(opening.id);
}

/** Id of the schedule a target follows; undefined: its blind stays raised. */
export function followedBy(project: Project, target: Target): string | undefined {
  if (target.kind === 'group') return target.group.schedule;
  return project.openings.find((o) => o.id === target.id)?.blind?.schedule;
}

export function scheduleOf(project: Project, target: Target): Schedule | undefined {
  const id = followedBy(project, target);
  return project.schedules.find((s) => s.id === id);
}

/** All that follow a schedule. */
export function followersOf(project: Project, scheduleId: string): Target[] {
  return targetsOf(project).filter((t) => followedBy(project, t) === scheduleId);
}

/** Lets a target follow a schedule; undefined: nothing moves its blind. A group needs one. */
export function follow(draft: Project, key: string, scheduleId: string | undefined): void {
  const target = targetsOf(draft).find((t) => t.key === key);
  if (target?.kind === 'group') {
    const group = draft.groups.find((g) => g.id === target.id);
    if (group && scheduleId !== undefined) group.schedule = scheduleId;
    return;
  }
  const use = draft.openings.find((o) => o.id === target?.id)?.blind;
  if (!use) return;
  if (scheduleId === undefined) Reflect.deleteProperty(use, 'schedule');
  else use.schedule = scheduleId;
}
