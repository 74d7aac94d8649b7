import type { Project } from '../project/index.ts';
import { usefulGains } from '../room/index.ts';
import { moveStatistics } from '../schedule/index.ts';
import { HOURS } from '../time/index.ts';
import type { StudyResult } from '../study/index.ts';
import { roomFigures, viewHoursLost } from './figures.ts';
import { withExternals, withoutBlinds } from './plans.ts';
import type { Runs } from './runs.ts';

/** What the blind of one opening does, taken by itself. Screens hang as planned throughout. */
export interface OpeningFigures {
  id: string;
  /** `planned`, or a stock external one where the project has none. */
  blind: 'planned' | 'stock';
  /** Hours over that it saves in its room as the only blind of the house. */
  hoursSavedFirst: number;
  /** Hours over that it saves as the last one, all the others as planned. */
  hoursSavedLast: number;
  /** As the last one: sun it keeps out in summer and in winter, kWh. */
  summerStopped: number;
  winterLost: number;
  /** Of all the sun it keeps out in the year, what would have saved heating, kWh. */
  usefulLost: number;
  /** Mean over the months in which it moves. */
  movesPerDay: number;
  /** Daylight hours with it down, and those of them with somebody in. */
  daylightHoursLowered: number;
  viewHoursLost: number;
}

/** First-in and last-in figures of every opening. */
export function openingFigures(runs: Runs): OpeningFigures[] {
  const { project, library } = runs.input;
  const all = new Set(project.openings.map((o) => o.id));
  const none = withoutBlinds(project, all);
  return project.openings.map((opening): OpeningFigures => {
    const own = new Set([opening.id]);
    const isPlanned = opening.blind !== undefined;
    const others = new Set([...all].filter((id) => id !== opening.id));
    const add = (plan: Project) =>
      isPlanned ? plan : withExternals(plan, library, own, runs.hemisphere);
    const rooms = new Set([opening.room]);
    const hours = (result: StudyResult) => roomFigures(result, rooms).hours;
    const alone = runs.of(add(withoutBlinds(project, others)));
    const last = runs.of(add(project));
    const lastWithout = runs.of(withoutBlinds(project, own));
    return {
      id: opening.id,
      blind: isPlanned ? 'planned' : 'stock',
      hoursSavedFirst: hours(runs.of(none)) - hours(alone),
      hoursSavedLast: hours(lastWithout) - hours(last),
      ...effect(runs, opening.id, lastWithout, last),
    };
  });
}

/** What the blind of one opening does to sun, heating, view and moves. */
function effect(runs: Runs, id: string, without: StudyResult, withBlind: StudyResult) {
  const before = without.openings.find((o) => o.id === id)!;
  const after = withBlind.openings.find((o) => o.id === id)!;
  const { blind } = after;
  const moves = blind && moveStatistics(blind.state, blind.actions, withBlind.calendar, runs.sunUp);
  return {
    summerStopped: before.sums.with.summer - after.sums.with.summer,
    winterLost: before.sums.with.winter - after.sums.with.winter,
    usefulLost: usefulLost(id, without, withBlind),
    movesPerDay: moves?.movesPerDay ?? 0,
    daylightHoursLowered: moves?.daylightHoursLowered ?? 0,
    viewHoursLost: viewHoursLost(after, withBlind.rooms, runs.sunUp),
  };
}

/** Heat the room must make up for the sun that one blind keeps out, kWh a year. */
function usefulLost(id: string, without: StudyResult, withBlind: StudyResult): number {
  const room = without.rooms.find((r) => r.openings.includes(id));
  if (!room) return 0;
  const { model, drivers, sun, suns, year } = room.runs.with;
  const other = withBlind.rooms.find((r) => r.id === room.id)!.runs.with;
  const sunOf = (list: typeof suns) => list.find((s) => s.id === id)!.sun;
  const open = sunOf(suns);
  const shaded = sunOf(other.suns);
  const part = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) part[hour] = Math.max(open[hour] - shaded[hour], 0);
  const { heating, heatingWithout } = usefulGains(model, drivers, sun, year, part);
  return (heatingWithout - heating) / 1000;
}
