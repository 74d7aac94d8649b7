import type { TFunction } from 'i18next';
import { freeId } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import type { Rule, Schedule } from '../../../lib/schedule/index.ts';
import { freeName } from '../openings/edits.ts';
import { follow, followersOf } from './targets.ts';

/**
 * Edits of schedules as a whole. Each changes the draft it is given and keeps references sound. New
 * names are in the language of the page.
 */

const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);
/** An id without the number that made it free. */
const stem = (id: string) => id.replace(/-\d+$/, '').slice(0, 56);
const plainName = (name: string) => name.replace(/ \d+$/, '').slice(0, 112);

export function scheduleById(project: Project, id: string | undefined): Schedule | undefined {
  return project.schedules.find((s) => s.id === id);
}

/** Adds a copy of a schedule under an id and a name that are free; gives its id. */
export function addSchedule(draft: Project, like: Omit<Schedule, 'id'> & { id?: string }): string {
  const id = freeId(stem(like.id ?? 'schedule'), ids(draft.schedules));
  const name = freeName(plainName(like.name), draft.schedules);
  draft.schedules.push({ ...structuredClone(like), id, name });
  return id;
}

const EMPTY = { rules: [], minMinutesBetweenMoves: 15 };

/** Adds a schedule without rules that a target follows from now on; gives its id. */
export function newSchedule(t: TFunction<'schedules'>, draft: Project, targetKey: string): string {
  const id = addSchedule(draft, { ...EMPTY, name: t('names.schedule') });
  follow(draft, targetKey, id);
  return id;
}

/** Adds a copy of a schedule for a target to follow; others that follow the first keep it. */
export function duplicateSchedule(
  draft: Project,
  scheduleId: string,
  targetKey: string,
): string | undefined {
  const schedule = scheduleById(draft, scheduleId);
  return schedule && startFrom(draft, schedule, targetKey);
}

/** Adds a ready-made schedule for a target to follow. */
export function startFrom(draft: Project, schedule: Schedule, targetKey: string): string {
  const id = addSchedule(draft, schedule);
  follow(draft, targetKey, id);
  return id;
}

/**
 * Takes a schedule away. Blinds that followed it stay raised; groups, which must follow one, get
 * one without rules, which does the same.
 */
export function deleteSchedule(
  t: TFunction<'schedules'>,
  draft: Project,
  scheduleId: string,
): void {
  const followers = followersOf(draft, scheduleId);
  draft.schedules = draft.schedules.filter((s) => s.id !== scheduleId);
  for (const { kind, key } of followers) {
    follow(draft, key, kind === 'group' ? raisedSchedule(t, draft) : undefined);
  }
}

/** A schedule that leaves blinds raised: one there is, or a new one. */
export function raisedSchedule(t: TFunction<'schedules'>, draft: Project): string {
  const raised = draft.schedules.find((s) => s.rules.length === 0);
  return raised?.id ?? addSchedule(draft, { ...EMPTY, id: 'raised', name: t('names.raised') });
}

/** Edits of the rules of one schedule. */

export function ruleOf(schedule: Schedule, id: string | undefined): Rule | undefined {
  return schedule.rules.find((rule) => rule.id === id);
}

/** Adds a rule at a place, under an id that is free; gives its id. */
export function addRule(schedule: Schedule, rule: Rule, at = schedule.rules.length): string {
  const id = freeId(stem(rule.id), ids(schedule.rules));
  schedule.rules.splice(at, 0, { ...structuredClone(rule), id });
  return id;
}

/** What a new rule starts as: down while strong sun is on the facade (common practice). */
export const NEW_RULE: Rule = {
  id: 'rule',
  when: { sunOnFacade: true, irradianceAbove: { at: 150, release: 100 } },
  then: { kind: 'lower' },
};

export function duplicateRule(schedule: Schedule, id: string): string | undefined {
  const at = schedule.rules.findIndex((rule) => rule.id === id);
  return at < 0 ? undefined : addRule(schedule, schedule.rules[at], at + 1);
}

export function deleteRule(schedule: Schedule, id: string): void {
  schedule.rules = schedule.rules.filter((rule) => rule.id !== id);
}

/** Moves a rule to a place in the order; places past the ends are the ends. */
export function moveRule(schedule: Schedule, id: string, to: number): void {
  const from = schedule.rules.findIndex((rule) => rule.id === id);
  if (from < 0) return;
  const [rule] = schedule.rules.splice(from, 1);
  schedule.rules.splice(Math.max(0, Math.min(schedule.rules.length, to)), 0, rule);
}
