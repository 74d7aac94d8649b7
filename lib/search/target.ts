import { stockExternal, withOpenings } from '../decide/index.ts';
import { InputError, problem, verbatim } from '../problem/index.ts';
import { freeId } from '../project/index.ts';
import type { Project, ProjectOpening } from '../project/index.ts';
import type { Schedule } from '../schedule/index.ts';
import type { StudyInput } from '../study/index.ts';
import type { SearchTarget } from './types.ts';
import { sayProblem as say } from '../words/index.ts';

/** A target with all that is known of it. */
export interface TargetInHand {
  target: SearchTarget;
  id: string;
  name: string;
  openings: ReadonlySet<string>;
  walls: ReadonlySet<string>;
  rooms: ReadonlySet<string>;
  /** Openings that get a stock external blind. */
  stock: string[];
  /** Groups that blinds of a facade are taken out of. */
  ungrouped: string[];
  /** Whether any of its blinds has slats. */
  slats: boolean;
}

/** @throws InputError where the target is no facade with openings or no group with blinds */
export function takeTarget({ project, library }: StudyInput, target: SearchTarget): TargetInHand {
  const own = openingsOf(project, target);
  const kinds = new Map([...library.blinds, ...project.blinds].map((b) => [b.id, b.kind]));
  const blindOf = (o: ProjectOpening) => o.blind?.blind ?? stockExternal(project, o);
  const list = 'facade' in target ? project.walls : project.groups;
  const id = idOf(target);
  const groups = own.flatMap((o) => ('facade' in target ? (o.blind?.group ?? []) : []));
  return {
    target,
    id,
    name: list.find((item) => item.id === id)!.name,
    openings: new Set(own.map((o) => o.id)),
    walls: new Set(own.map((o) => o.wall)),
    rooms: new Set(own.map((o) => o.room)),
    stock: own.filter((o) => !o.blind).map((o) => o.id),
    ungrouped: [...new Set(groups)],
    slats: own.some((o) => kinds.get(blindOf(o)) === 'slats'),
  };
}

/**
 * The project with the target's blinds moved by a schedule: stock external ones where it has none.
 * A group keeps its members; the blinds of a facade are taken out of their groups and each moved by
 * itself. The schedule gets another id where its own is taken.
 */
export function withSchedule(project: Project, target: SearchTarget, schedule: Schedule): Project {
  const ids = new Set(openingsOf(project, target).map((o) => o.id));
  const id = freeId(
    schedule.id,
    project.schedules.map((s) => s.id),
  );
  const plan = { ...project, schedules: [...project.schedules, { ...schedule, id }] };
  if ('group' in target) {
    const groups = project.groups.map((g) => (g.id === target.group ? { ...g, schedule: id } : g));
    return { ...plan, groups };
  }
  return withOpenings(plan, ids, (opening) => {
    const blind = { ...(opening.blind ?? { blind: stockExternal(project, opening) }) };
    delete blind.group;
    return { ...opening, blind: { ...blind, schedule: id } };
  });
}

/**
 * What a house has schedules to search for: each group in use, and each facade that has a blind
 * outside all groups or, having none, a room behind it that breaks its criterion.
 *
 * @param broken ids of the rooms that do, the house as planned
 */
export function searchTargets(project: Project, broken: ReadonlySet<string>): SearchTarget[] {
  const groups = project.groups.filter((g) =>
    project.openings.some((o) => o.blind?.group === g.id),
  );
  const facades = project.walls.filter(({ id }) => {
    const own = project.openings.filter((o) => o.wall === id);
    const blinds = own.flatMap((o) => o.blind ?? []);
    if (blinds.length === 0) return own.some((o) => broken.has(o.room));
    return blinds.some((b) => b.group === undefined);
  });
  return [...groups.map(({ id }) => ({ group: id })), ...facades.map(({ id }) => ({ facade: id }))];
}

/**
 * The wall or group of an id: `west`, or `facade:west` and `group:west` where both are there.
 * @throws InputError where neither is
 */
export function targetNamed(project: Project, text: string): SearchTarget {
  const [, kind, id] = /^(?:(facade|group):)?(.*)$/s.exec(text)!;
  const facades = [...new Set(project.openings.map((o) => o.wall))];
  const groups = [...new Set(project.openings.flatMap((o) => o.blind?.group ?? []))];
  const facade = kind !== 'group' && facades.includes(id);
  const group = kind !== 'facade' && groups.includes(id);
  if (facade && group) {
    const allowed = verbatim(`facade:${id}, group:${id}`);
    const texts = { message: say('search.twoMeant'), allowed, fix: say('search.twoMeantFix') };
    throw new InputError(problem('--target', texts, text));
  }
  if (group) return { group: id };
  if (facade) return { facade: id };
  throw unknownTarget('--target', text, [...facades, ...groups]);
}

function idOf(target: SearchTarget): string {
  return 'facade' in target ? target.facade : target.group;
}

function openingsOf(project: Project, target: SearchTarget): ProjectOpening[] {
  const found = project.openings.filter((o) =>
    'facade' in target ? o.wall === target.facade : o.blind?.group === target.group,
  );
  if (found.length > 0) return found;
  const known =
    'facade' in target
      ? project.openings.map((o) => o.wall)
      : project.openings.flatMap((o) => o.blind?.group ?? []);
  const path = 'facade' in target ? 'target.facade' : 'target.group';
  throw unknownTarget(path, idOf(target), [...new Set(known)]);
}

function unknownTarget(path: string, id: string, known: readonly string[]): InputError {
  const allowed = known.length > 0 ? verbatim(known.join(', ')) : say('search.unknownAllowed');
  const texts = { message: say('search.unknown'), allowed, fix: say('search.unknownFix') };
  return new InputError(problem(path, texts, id));
}
