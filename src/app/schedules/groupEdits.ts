import type { TFunction } from 'i18next';
import { freeId } from '../../../lib/project/index.ts';
import type { Project, ProjectGroup } from '../../../lib/project/index.ts';
import { freeName } from '../openings/edits.ts';
import { setMover } from '../openings/parts.ts';
import { raisedSchedule } from './scheduleEdits.ts';
import { groupKey, targetOfOpening, targetsOf } from './targets.ts';

/**
 * Edits of groups. Each changes the draft it is given and keeps every reference sound. New names are
 * in the language of the page.
 */

export function groupById(project: Project, id: string): ProjectGroup | undefined {
  return project.groups.find((g) => g.id === id);
}

/** The lowest channel of the remote that no group has. */
export function freeChannel(project: Project): number {
  const taken = new Set(project.groups.map((g) => g.channel));
  let channel = 1;
  while (taken.has(channel)) channel++;
  return channel;
}

/**
 * Makes a group of openings with blinds; it follows the schedule that the first of them followed.
 * Gives its id; undefined where none of them has a blind.
 */
export function makeGroup(
  t: TFunction<'schedules'>,
  draft: Project,
  openingIds: readonly string[],
): string | undefined {
  const members = draft.openings.filter((o) => o.blind && openingIds.includes(o.id));
  if (members.length === 0) return undefined;
  const id = freeId(
    'group',
    draft.groups.map((g) => g.id),
  );
  const followed = members.map((o) => scheduleOfOpening(draft, o.id)).find(Boolean);
  draft.groups.push({
    id,
    name: freeName(groupName(t, draft, members[0].wall), draft.groups),
    channel: freeChannel(draft),
    schedule: followed ?? raisedSchedule(t, draft),
    lead: 'any',
  });
  for (const opening of members) putIn(draft, id, opening.id);
  return id;
}

/** Named after the wall, which in English is often called a wall already. */
function groupName(t: TFunction<'schedules'>, project: Project, wall: string): string {
  const name = project.walls.find((w) => w.id === wall)?.name;
  if (name === undefined) return t('names.newGroup');
  return t('names.group', { wall: name.replace(/ wall$/i, '') }).slice(0, 112);
}

function scheduleOfOpening(project: Project, openingId: string): string | undefined {
  const target = targetsOf(project).find((t) => t.key === targetOfOpening(project, openingId));
  if (target?.kind === 'group') return target.group.schedule;
  return project.openings.find((o) => o.id === openingId)?.blind?.schedule;
}

/** Puts an opening's blind into a group; it leaves the one it was in. */
export function putIn(draft: Project, groupId: string, openingId: string): void {
  setMover(draft, openingId, { kind: 'group', id: groupId });
}

/** Takes an opening's blind out of its group; alone it follows the same schedule. */
export function takeOut(draft: Project, openingId: string): void {
  const schedule = scheduleOfOpening(draft, openingId);
  setMover(draft, openingId, schedule ? { kind: 'schedule', id: schedule } : { kind: 'none' });
}

/** Takes a group apart; each blind follows its schedule alone. */
export function deleteGroup(draft: Project, groupId: string): void {
  for (const opening of draft.openings) {
    if (opening.blind?.group === groupId) takeOut(draft, opening.id);
  }
  draft.groups = draft.groups.filter((g) => g.id !== groupId);
}

/** The target to look at once a group is gone. */
export function targetAfter(project: Project, groupId: string): string | undefined {
  const rest = targetsOf(project);
  return rest.find((t) => t.key !== groupKey(groupId))?.key;
}
