import type { Blind, FabricBlind } from '../blind/index.ts';
import type { Glazing } from '../glazing/index.ts';
import { InputError, problem, verbatim } from '../problem/index.ts';
import { geometryOf, planeOf } from '../project/index.ts';
import type { Project } from '../project/index.ts';
import type { Room } from '../room/index.ts';
import { dayOfYear } from '../time/index.ts';
import { openingInRoom } from './openingInRoom.ts';
import { sayProblem as say } from '../words/index.ts';
import type { BlindInPlace, Controller, HouseOpening, HouseWall, ScreenInPlace } from './types.ts';

/** Constructions a project may refer to besides its own. */
export interface Library {
  glazings: readonly Glazing[];
  blinds: readonly Blind[];
}

/** A project with every reference followed. */
export interface House {
  walls: HouseWall[];
  openings: HouseOpening[];
  controllers: Controller[];
  rooms: Room[];
}

type ProjectOpening = Project['openings'][number];

/** Slat angle of a blind that is simply lowered, degrees (common practice). */
const STANDING_ANGLE = 45;

/**
 * Follows every reference of a project that has been checked.
 * @throws InputError for a reference to something that is neither in the project nor in the library
 */
export function resolveHouse(project: Project, library: Library): House {
  const glazings = byId([...library.glazings, ...project.glazings]);
  const blinds = byId([...library.blinds, ...project.blinds]);
  const walls = project.walls.map((wall) => ({
    id: wall.id,
    name: wall.name,
    plane: planeOf(wall),
  }));
  const wallById = byId(walls);

  const openings = project.openings.map((opening, i): HouseOpening => {
    const at = `openings[${i}] "${opening.name}"`;
    const glazing = find(glazings, opening.glazing, `${at}.glazing`);
    const screen = screenOf(opening, blinds, at);
    return {
      id: opening.id,
      name: opening.name,
      wall: opening.wall,
      room: opening.room,
      count: opening.count,
      plane: find(wallById, opening.wall, `${at}.wall`).plane,
      geometry: geometryOf(opening),
      glazing,
      screen,
      blind: blindOf(opening, blinds, at),
      inRoom: openingInRoom(opening, glazing, screen),
    };
  });
  const controllers = controllersOf(project, openings);
  return { walls, openings, controllers, rooms: project.rooms };
}

function screenOf(
  opening: ProjectOpening,
  blinds: Map<string, Blind>,
  at: string,
): ScreenInPlace | undefined {
  const screen = opening.insectScreen;
  if (!screen) return undefined;
  const fabric = find(blinds, screen.blind, `${at}.insectScreen.blind`);
  if (fabric.kind !== 'fabric') {
    const texts = {
      message: say('study.screen'),
      allowed: say('study.screenAllowed'),
      fix: say('study.screenFix'),
    };
    throw new InputError(problem(`${at}.insectScreen.blind`, texts, screen.blind));
  }
  return {
    fabric: fabric satisfies FabricBlind,
    share: screen.share,
    from: dayIndex(screen.from),
    to: dayIndex(screen.to),
  };
}

function blindOf(
  opening: ProjectOpening,
  blinds: Map<string, Blind>,
  at: string,
): BlindInPlace | undefined {
  const use = opening.blind;
  if (!use) return undefined;
  const blind = find(blinds, use.blind, `${at}.blind.blind`);
  return {
    blind,
    standingAngle: use.standingAngle ?? STANDING_ANGLE,
    windLimit: use.windLimit ?? blind.windLimit,
    controller: use.group ? `group:${use.group}` : `opening:${opening.id}`,
  };
}

/** One controller for each group in use and one for each blind that moves alone. */
function controllersOf(project: Project, openings: readonly HouseOpening[]): Controller[] {
  const schedules = byId(project.schedules);
  const grouped = project.groups.map((group, i): Controller => ({
    id: `group:${group.id}`,
    name: group.name,
    schedule: find(schedules, group.schedule, `groups[${i}].schedule`),
    lead: group.lead,
    members: openings.filter((o) => o.blind?.controller === `group:${group.id}`).map((o) => o.id),
  }));
  const single = project.openings.flatMap((opening, i): Controller[] => {
    if (!opening.blind || opening.blind.group) return [];
    const at = `openings[${i}].blind.schedule`;
    return [
      {
        id: `opening:${opening.id}`,
        name: opening.name,
        schedule: opening.blind.schedule
          ? find(schedules, opening.blind.schedule, at)
          : { id: 'raised', name: 'Always raised', rules: [], minMinutesBetweenMoves: 0 },
        lead: opening.id,
        members: [opening.id],
      },
    ];
  });
  return [...grouped.filter((c) => c.members.length > 0), ...single];
}

function byId<T extends { id: string }>(list: readonly T[]): Map<string, T> {
  return new Map(list.map((item) => [item.id, item]));
}

function find<T>(map: Map<string, T>, id: string, path: string): T {
  const found = map.get(id);
  if (found === undefined) {
    const allowed = verbatim([...map.keys()].join(', '));
    const texts = { message: say('study.unknown'), allowed, fix: say('study.unknownFix') };
    throw new InputError(problem(path, texts, id));
  }
  return found;
}

function dayIndex(monthDay: string): number {
  const [month, day] = monthDay.split('-').map(Number);
  return dayOfYear(month, day);
}
