import type { Project, ProjectOpening } from '../project/index.ts';
import { runRoom } from '../room/index.ts';
import type { RoomModel } from '../room/index.ts';
import { HOURS } from '../time/index.ts';
import type { Engine, RoomResult, StudyInput } from '../study/index.ts';
import { chosenCriterion } from './criterion.ts';
import type { Judge, Outcome } from './judged.ts';
import { externalsOn } from './plans.ts';

/** Rooms whose blinds have nothing to do with those of other rooms, with all their openings. */
export interface Block {
  rooms: string[];
  openings: string[];
}

/**
 * Parts a house so that each part can be searched by itself: no heat goes from room to room, so
 * rooms belong together only where one group moves blinds of both.
 */
export function blocksOf(project: Project): Block[] {
  const root = new Map(project.rooms.map((r) => [r.id, r.id]));
  const find = (id: string): string => (root.get(id) === id ? id : find(root.get(id)!));
  for (const group of project.groups) {
    const members = project.openings.filter((o) => o.blind?.group === group.id);
    for (const { room } of members) root.set(find(room), find(members[0].room));
  }
  const blocks = new Map<string, Block>();
  for (const room of project.rooms) {
    const block = blocks.get(find(room.id)) ?? { rooms: [], openings: [] };
    block.rooms.push(room.id);
    block.openings.push(...project.openings.filter((o) => o.room === room.id).map((o) => o.id));
    blocks.set(find(room.id), block);
  }
  return [...blocks.values()].filter((block) => block.openings.length > 0);
}

/** The project with the rooms and openings of one part only. */
export function blockProject(project: Project, block: Block): Project {
  return {
    ...project,
    rooms: project.rooms.filter((r) => block.rooms.includes(r.id)),
    openings: project.openings.filter((o) => block.openings.includes(o.id)),
  };
}

/** What one opening gives its room with its blind as chosen. */
interface Part {
  /** W; HOURS values. */
  sun: Float64Array;
  /** What is left of its airing flow; HOURS values. */
  flow: Float64Array;
}

/** What a room-year needs besides its openings. */
interface Frame {
  model: RoomModel;
  drivers: RoomResult['runs']['with']['drivers'];
}

/**
 * Judges choices of external blinds in one part of a house, at about a room-year each. The gain of
 * an opening is found once with and once without its blind (once for each set of members where a
 * group moves it, as the group's sensors and wind limit are those of its members); a choice then
 * costs the sum over the openings and the year of every room not yet met with these. Where a blind
 * answers to the room's temperature its positions hang on all the others: such choices run through
 * the study's own loop of rooms and blinds, with all earlier stages kept.
 *
 * @param candidates ids of the openings a choice is about, in its order; all in `block`
 */
export function blockJudge(
  engine: Engine,
  input: StudyInput,
  block: Block,
  candidates: readonly string[],
  hemisphere: 'north' | 'south',
): Judge {
  const project = blockProject(input.project, block);
  const { settings } = project;
  const parts = new Map<string, Part>();
  const frames = new Map<string, Frame>();
  const outcomes = new Map<string, Outcome>();

  /** Runs the study on a choice and keeps what its openings and rooms gave. */
  const study = (plan: Project, keys: ReadonlyMap<string, string>): RoomResult[] => {
    const { rooms } = engine.run({ ...input, project: plan });
    for (const { id, openings, runs } of rooms) {
      const { model, drivers, suns } = runs.with;
      frames.set(id, { model, drivers });
      openings.forEach((opening, i) => {
        const flow = drivers.flowFactors![i];
        parts.set(keys.get(opening)!, { sun: suns[i].sun, flow });
      });
    }
    return rooms;
  };

  const roomYear = (room: string, own: readonly string[]): Outcome => {
    const { model, drivers } = frames.get(room)!;
    const sun = new Float64Array(HOURS);
    const flowFactors = own.map((key) => {
      const part = parts.get(key)!;
      addTo(sun, part.sun);
      return part.flow;
    });
    const { operative } = runRoom(model, { ...drivers, flowFactors }, sun);
    const { met, hoursOver } = chosenCriterion(
      operative,
      drivers.outdoor,
      model.calendar,
      settings,
    );
    return { broken: met ? 0 : 1, hours: hoursOver };
  };

  return (choice) => {
    const chosen = new Set(candidates.filter((_, i) => choice[i] === 1));
    const plan = externalsOn(project, input.library, chosen, hemisphere);
    const keys = openingKeys(plan);
    const stepped = plan.openings.some((o) => answersToRoom(plan, o));
    const needed = plan.openings.map((o) => keys.get(o.id)!);
    const fromStudy =
      stepped || needed.some((key) => !parts.has(key)) ? study(plan, keys) : undefined;
    return plan.rooms.reduce<Outcome>(
      (sum, room) => {
        const own = plan.openings.filter((o) => o.room === room.id).map((o) => keys.get(o.id)!);
        const key = stepped ? needed.join('|') : own.join('|');
        const kept = outcomes.get(`${room.id}|${key}`);
        const studied = fromStudy?.find((r) => r.id === room.id)?.with.chosen;
        const outcome =
          kept ??
          (studied
            ? { broken: studied.met ? 0 : 1, hours: studied.hoursOver }
            : roomYear(room.id, own));
        outcomes.set(`${room.id}|${key}`, outcome);
        return { broken: sum.broken + outcome.broken, hours: sum.hours + outcome.hours };
      },
      { broken: 0, hours: 0 },
    );
  };
}

function addTo(sum: Float64Array, values: Float64Array): void {
  for (let hour = 0; hour < HOURS; hour++) sum[hour] += values[hour];
}

/** A text that is the same wherever an opening's gain is, as long as it moves by itself. */
function openingKeys(plan: Project): Map<string, string> {
  return new Map(
    plan.openings.map(({ id, blind }) => {
      if (!blind?.group) return [id, JSON.stringify([id, blind])];
      const members = plan.openings.filter((o) => o.blind?.group === blind.group).map((o) => o.id);
      return [id, JSON.stringify([id, blind, members])];
    }),
  );
}

/** Whether a blind's schedule asks for the temperature of its room. */
function answersToRoom(plan: Project, { blind }: ProjectOpening): boolean {
  if (!blind) return false;
  const id = blind.group ? plan.groups.find((g) => g.id === blind.group)?.schedule : blind.schedule;
  const rules = plan.schedules.find((s) => s.id === id)?.rules ?? [];
  return rules.some(({ when }) => when.roomAbove !== undefined || when.roomBelow !== undefined);
}
