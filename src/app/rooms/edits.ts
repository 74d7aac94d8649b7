import { freeId } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { defaultRoom, nightAiring } from '../../../lib/room/index.ts';
import type {
  AiringRule,
  DayProfiles,
  OpaquePart,
  Room,
  RoomEnvelope,
} from '../../../lib/room/index.ts';
import type { Wording } from '../../words/index.ts';
import { freeName, moveToRoom } from '../openings/edits.ts';

/**
 * Edits of a project's rooms. Each changes the draft it is given and keeps every reference sound.
 * What is new gets a name in the language of the page, which is the user's from then on.
 */

const ids = (list: readonly { id: string }[]) => list.map((item) => item.id);

export function roomOf(project: Project, id: string): Room | undefined {
  return project.rooms.find((room) => room.id === id);
}

/** Floor area of a new room, m2. */
const NEW_AREA = 20;

/** Adds a room of usual figures and gives its id. */
export function addRoom(words: Wording, draft: Project): string {
  const t = words.of('rooms');
  const id = freeId('room', ids(draft.rooms));
  const room = defaultRoom(id, freeName(t('new.room'), draft.rooms), 'living', NEW_AREA);
  draft.rooms.push({
    ...room,
    envelope: usualEnvelope(words, room),
    airing: [{ ...nightAiring(), name: t('new.nightAiring') }],
  });
  return id;
}

/** The usual walls, roof and floor of a room of its size. */
function usualEnvelope(words: Wording, { id, name, use, floorArea }: Room): RoomEnvelope {
  const t = words.of('rooms');
  const { envelope } = defaultRoom(id, name, use, floorArea);
  if (envelope.kind !== 'parts') return envelope;
  const names = [t('new.walls'), t('new.roof'), t('new.floor')];
  const parts = envelope.parts.map((part, at) => ({ ...part, name: names[at] ?? part.name }));
  return { ...envelope, parts };
}

/** Adds a room like another, without its openings, and gives its id. */
export function copyRoom(draft: Project, id: string): string | undefined {
  const at = draft.rooms.findIndex((room) => room.id === id);
  if (at < 0) return undefined;
  const copy = structuredClone(draft.rooms[at]);
  copy.id = freeId(copy.id.replace(/-\d+$/, ''), ids(draft.rooms));
  copy.name = freeName(copy.name.replace(/ \d+$/, ''), draft.rooms);
  // The openings stay where they are, so that rules for some of them speak for all of the copy's.
  for (const rule of copy.airing) delete rule.openings;
  draft.rooms.splice(at + 1, 0, copy);
  return copy.id;
}

/** Takes a room away; its openings go to another one. The last room stays. */
export function deleteRoom(draft: Project, id: string, moveTo: string): void {
  if (!roomOf(draft, id) || !roomOf(draft, moveTo) || id === moveTo) return;
  for (const opening of draft.openings.filter((o) => o.room === id)) {
    moveToRoom(draft, opening.id, moveTo);
  }
  draft.rooms = draft.rooms.filter((room) => room.id !== id);
}

/** Sets the floor area; the clear height stays. */
export function setFloorArea(room: Room, area: number): void {
  const height = room.volume / room.floorArea;
  room.floorArea = area;
  room.volume = round(area * height, 3);
}

/** Gives the opaque parts one by one or as one figure, starting from what there was. */
export function setEnvelopeKind(words: Wording, room: Room, kind: RoomEnvelope['kind']): void {
  const { envelope } = room;
  if (kind === envelope.kind) return;
  if (kind === 'parts') {
    room.envelope = usualEnvelope(words, room);
  } else if (envelope.kind === 'parts') {
    const groundUA = round(sumUA(envelope.parts, 'ground'), 3);
    const UA = round(sumUA(envelope.parts, 'outdoor'), 3);
    room.envelope = { kind: 'total', UA, ...(groundUA > 0 ? { groundUA } : {}) };
    forgetParts(room);
  }
}

/** Heat loss of the parts to one side, W/K. */
export function sumUA(parts: readonly OpaquePart[], boundary: OpaquePart['boundary']): number {
  return parts
    .filter((part) => part.boundary === boundary)
    .reduce((sum, part) => sum + part.area * part.U, 0);
}

export function addPart(words: Wording, room: Room): void {
  if (room.envelope.kind !== 'parts') return;
  const { parts } = room.envelope;
  const name = freeName(words.of('rooms')('new.wall'), parts);
  parts.push({ name, area: 10, U: 0.12, boundary: 'outdoor' });
}

/** Names a part; inner surfaces that belong to it follow. */
export function renamePart(room: Room, at: number, name: string): void {
  if (room.envelope.kind !== 'parts') return;
  const part = room.envelope.parts[at];
  if (!part) return;
  const others = room.envelope.parts.filter((_, i) => i !== at);
  const free = freeName(name, others);
  if (room.mass.kind === 'layers') {
    for (const surface of room.mass.surfaces) if (surface.part === part.name) surface.part = free;
  }
  part.name = free;
}

export function removePart(room: Room, at: number): void {
  if (room.envelope.kind !== 'parts') return;
  const [gone] = room.envelope.parts.splice(at, 1);
  if (gone) forgetParts(room, gone.name);
}

/** Inner surfaces no longer belong to a part, or to any. */
function forgetParts(room: Room, name?: string): void {
  if (room.mass.kind !== 'layers') return;
  for (const surface of room.mass.surfaces) {
    if (name === undefined || surface.part === name) delete surface.part;
  }
}

/** Adds an airing rule and gives its id. */
export function addRule(words: Wording, room: Room, kind: 'night' | 'day'): string {
  const t = words.of('rooms');
  const night = nightAiring();
  const id = freeId(kind === 'night' ? night.id : 'day-airing', ids(room.airing));
  room.airing.push(
    kind === 'night'
      ? { ...night, id, name: t('new.nightAiring') }
      : { ...dayAiring(night), id, name: t('new.dayAiring') },
  );
  return id;
}

/** Sashes opened wide while somebody is there, common practice. */
function dayAiring(night: AiringRule): AiringRule {
  return {
    ...night,
    position: 'turn',
    clock: { from: 7 * 60, to: 22 * 60 },
    whenVacant: 'closed',
  };
}

/** Moves the entry at a place up (-1) or down (1). */
export function moveEntry<T>(list: T[], at: number, by: -1 | 1): void {
  const to = at + by;
  if (!(at in list) || !(to in list)) return;
  [list[at], list[to]] = [list[to], list[at]];
}

/** Usual people and appliances for the room's use and size. */
export function usualProfiles(room: Room): { people: DayProfiles; appliances: DayProfiles } {
  const { people, appliances } = defaultRoom(room.id, room.name, room.use, room.floorArea);
  return { people, appliances };
}

/** Fills hours of a day, the first from midnight; a span not after its start runs past midnight. */
export function fillHours(
  values: readonly number[],
  from: number,
  to: number,
  value: number,
): number[] {
  const inside = (hour: number) =>
    from === to || (from < to ? hour >= from && hour < to : hour >= from || hour < to);
  return values.map((old, hour) => (inside(hour) ? value : old));
}

const round = (value: number, digits: number) => Number(value.toFixed(digits));
