import { freeId, newOpening, newWall } from '../../../lib/project/index.ts';
import type { Project, ProjectOpening, ProjectWall } from '../../../lib/project/index.ts';
import type { Wording } from '../../words/index.ts';
import { compassPoint } from '../parts/compass.ts';
import { setSetBack } from './sizes.ts';

/**
 * Edits of a project's openings and walls. Each changes the draft it is given and keeps every
 * reference sound. New things are named in the language of the page.
 */

type Kind = ProjectOpening['kind'];

const ids = (list: readonly { id: string }[]) => list.map((item) => item.id);

/** Ids an opening may not take; `any` is kept for the lead of a group. */
const takenOpenings = (draft: Project) => [...ids(draft.openings), 'any'];

export function openingOf(project: Project, id: string): ProjectOpening | undefined {
  return project.openings.find((o) => o.id === id);
}

export function wallOf(project: Project, id: string): ProjectWall | undefined {
  return project.walls.find((w) => w.id === id);
}

/** The first of `base`, `base 2`, `base 3` ... that nothing is called. */
export function freeName(base: string, taken: readonly { name: string }[]): string {
  const used = new Set(taken.map((item) => item.name));
  let name = base;
  for (let n = 2; used.has(name); n++) name = `${base} ${n}`;
  return name;
}

/** Adds an opening of a usual size and gives its id; undefined where there is no room for it. */
export function addOpening(
  words: Wording,
  draft: Project,
  kind: Kind,
  wall: string,
): string | undefined {
  const room = draft.openings.findLast((o) => o.wall === wall)?.room ?? draft.rooms[0]?.id;
  const at = wallOf(draft, wall);
  if (!room || !at) return undefined;
  const opening = newOpening(kind, { wall, room }, takenOpenings(draft));
  const fitted = intoWall(opening, at);
  fitted.name = nameInWall(words, words.of('openings')(`new.opening.${kind}`), at, draft);
  draft.openings.push(fitted);
  return fitted.id;
}

function nameInWall(words: Wording, opening: string, wall: ProjectWall, draft: Project): string {
  return freeName(words.of('openings')('new.name', { opening, wall: wall.name }), draft.openings);
}

/** Keeps the glass inside the thickness of its wall, its reveal with it. */
function intoWall(opening: ProjectOpening, wall: ProjectWall): ProjectOpening {
  if (opening.setBack > wall.thickness) setSetBack(opening, wall.thickness);
  return opening;
}

/** Adds the same opening again beside it and gives its id. */
export function copyOpening(draft: Project, id: string): string | undefined {
  const index = draft.openings.findIndex((o) => o.id === id);
  if (index < 0) return undefined;
  const copy = structuredClone(draft.openings[index]);
  copy.id = freeId(stem(copy.id), takenOpenings(draft));
  copy.name = freeName(copy.name.replace(/ \d+$/, ''), draft.openings);
  draft.openings.splice(index + 1, 0, copy);
  airLikeIts(draft, id, copy.id);
  return copy.id;
}

/** An id without the number that made it free. */
const stem = (id: string) => id.replace(/-\d+$/, '');

/** An airing rule that names an opening names its copy too. */
function airLikeIts(draft: Project, original: string, copy: string): void {
  for (const rule of draft.rooms.flatMap((room) => room.airing)) {
    if (rule.openings?.includes(original)) rule.openings.push(copy);
  }
}

/** Swaps left and right: frame, reveal, fins and the overhang's ends. */
export function mirrorOpening(draft: Project, id: string): void {
  const opening = openingOf(draft, id);
  if (opening) swapSides(opening);
}

function swapSides(opening: ProjectOpening): void {
  const { frame, reveal, overhang, finLeft, finRight } = opening;
  for (const sides of [frame.widths, frame.hidden, reveal, overhang]) {
    if (sides) [sides.left, sides.right] = [sides.right, sides.left];
  }
  setOrDelete(opening, 'finLeft', finRight);
  setOrDelete(opening, 'finRight', finLeft);
}

/** Sets an optional field, or takes it away. */
export function setOrDelete<T extends object, K extends keyof T>(
  target: T,
  key: K,
  value: T[K] | undefined,
): void {
  if (value === undefined) Reflect.deleteProperty(target, key);
  else target[key] = value;
}

/** Degrees by which a wall may miss the opposite direction and still count as it. */
const OPPOSITE_WITHIN = 0.5;

/** The wall or roof that faces the other way, if there is one. */
export function oppositeWall(project: Project, id: string): ProjectWall | undefined {
  const wall = wallOf(project, id);
  if (!wall) return undefined;
  const aim = (wall.azimuth + 180) % 360;
  return project.walls.find(
    (other) =>
      Math.abs(((other.azimuth - aim + 540) % 360) - 180) <= OPPOSITE_WITHIN &&
      Math.abs(other.tilt - wall.tilt) <= OPPOSITE_WITHIN,
  );
}

/** Adds a mirrored copy to the opposite side of the house, with a wall there if need be. */
export function mirrorToOpposite(words: Wording, draft: Project, id: string): string | undefined {
  const wall = wallOf(draft, openingOf(draft, id)?.wall ?? '');
  if (!wall) return undefined;
  let other = oppositeWall(draft, wall.id);
  if (!other) {
    const { tilt, thickness, U } = wall;
    other = { ...namedWall(words, draft, (wall.azimuth + 180) % 360), tilt, thickness, U };
    draft.walls.push(other);
  }
  const copyId = copyOpening(draft, id);
  const copy = openingOf(draft, copyId ?? '');
  if (!copy) return undefined;
  copy.wall = other.id;
  copy.name = nameInWall(words, copy.name.replace(/ \d+$/, ''), other, draft);
  swapSides(copy);
  intoWall(copy, other);
  return copy.id;
}

/** Takes an opening away, and whatever refers to it. */
export function deleteOpening(draft: Project, id: string): void {
  draft.openings = draft.openings.filter((o) => o.id !== id);
  for (const group of draft.groups) if (group.lead === id) group.lead = 'any';
  for (const room of draft.rooms) forgetIn(room, id);
}

/** Airing rules of a room name the opening no more; a list left empty opens nothing. */
function forgetIn(room: Project['rooms'][number], id: string): void {
  for (const rule of room.airing) {
    if (rule.openings) rule.openings = rule.openings.filter((o) => o !== id);
  }
}

/** The opening to look at once one is gone: its neighbour in the list. */
export function neighbourOf(project: Project, id: string): string {
  const index = project.openings.findIndex((o) => o.id === id);
  return (project.openings[index + 1] ?? project.openings[index - 1])?.id ?? '';
}

/** Adds a wall facing the first main direction that has none, and gives its id. */
export function addWall(words: Wording, draft: Project): string {
  const faced = new Set(draft.walls.filter((w) => w.tilt > 60).map((w) => Math.round(w.azimuth)));
  const azimuth = [0, 90, 180, 270, 45, 135, 225, 315].find((a) => !faced.has(a)) ?? 0;
  const wall = namedWall(words, draft, azimuth);
  const like = draft.walls.find((w) => w.tilt > 60);
  draft.walls.push(like ? { ...wall, thickness: like.thickness, U: like.U } : wall);
  return wall.id;
}

/** A usual wall, called by where it faces. */
function namedWall(words: Wording, draft: Project, azimuth: number): ProjectWall {
  const name = words.of('openings')(`new.wall.${compassPoint(azimuth)}`);
  return { ...newWall(azimuth, ids(draft.walls)), name: freeName(name, draft.walls) };
}

/** Puts an opening into another wall. */
export function moveToWall(draft: Project, id: string, wallId: string): void {
  const opening = openingOf(draft, id);
  const wall = wallOf(draft, wallId);
  if (!opening || !wall) return;
  opening.wall = wallId;
  intoWall(opening, wall);
}

/** Puts an opening into another room; airing rules of the room it leaves forget it. */
export function moveToRoom(draft: Project, id: string, roomId: string): void {
  const opening = openingOf(draft, id);
  if (!opening || opening.room === roomId) return;
  for (const room of draft.rooms) if (room.id === opening.room) forgetIn(room, id);
  opening.room = roomId;
}

/** Takes a wall away; its openings go to another wall, or with it. */
export function deleteWall(draft: Project, id: string, moveTo?: string): void {
  for (const opening of draft.openings.filter((o) => o.wall === id)) {
    if (moveTo === undefined) deleteOpening(draft, opening.id);
    else moveToWall(draft, opening.id, moveTo);
  }
  draft.walls = draft.walls.filter((w) => w.id !== id);
}

/** Turns a wall, and all in it, to face this way. */
export function turnWall(draft: Project, id: string, azimuth: number): void {
  const wall = wallOf(draft, id);
  if (wall) wall.azimuth = azimuth;
}

/** Sets the thickness of a wall; glass does not end up behind its inner face. */
export function setThickness(draft: Project, id: string, thickness: number): void {
  const wall = wallOf(draft, id);
  if (!wall) return;
  wall.thickness = thickness;
  for (const opening of draft.openings) if (opening.wall === id) intoWall(opening, wall);
}
