import { buildSunYear } from '../sun/index.ts';
import { HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { OpeningResult, RoomResult, StudyResult } from '../study/index.ts';

/** How the rooms behind some openings fare. */
export interface RoomFigures {
  /** Hours over, by the chosen criterion, of these rooms together. */
  hours: number;
  /** Whether each of them keeps its criterion. */
  kept: boolean;
  /** Heat they need in a year, kWh. */
  heatingKWh: number;
}

export function roomFigures(result: StudyResult, rooms: ReadonlySet<string>): RoomFigures {
  const own = result.rooms.filter((r) => rooms.has(r.id));
  return {
    hours: own.reduce((sum, r) => sum + r.with.chosen.hoursOver, 0),
    kept: own.every((r) => r.with.chosen.met !== false),
    heatingKWh: own.reduce((sum, r) => sum + r.with.heatingKWh, 0),
  };
}

/** 1 at the steps with the sun up; STEPS values. */
export function sunUpSteps(result: StudyResult): Uint8Array {
  const { place, calendar } = result;
  const up = new Uint8Array(STEPS);
  for (const step of buildSunYear(place, calendar.year, calendar.startUtc).step) up[step] = 1;
  return up;
}

/** Hours of the year with somebody in, the sun up and the blind of an opening down. */
export function viewHoursLost(
  opening: OpeningResult,
  rooms: readonly RoomResult[],
  sunUp: Uint8Array,
): number {
  const occupied = rooms.find((r) => r.id === opening.room)?.runs.with.model.occupied;
  if (!opening.blind || !occupied) return 0;
  const { state } = opening.blind;
  let steps = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    if (occupied[hour] === 0) continue;
    for (let k = hour * STEPS_PER_HOUR; k < (hour + 1) * STEPS_PER_HOUR; k++) {
      if (state[k] !== 0) steps += sunUp[k];
    }
  }
  return steps / STEPS_PER_HOUR;
}

/** The same of several openings: the mean over their glass. */
export function meanViewHoursLost(
  result: StudyResult,
  openings: ReadonlySet<string>,
  sunUp: Uint8Array,
): number {
  const own = result.openings.filter((o) => openings.has(o.id));
  const area = own.reduce((sum, o) => sum + o.glassArea, 0);
  const lost = own.reduce((sum, o) => sum + o.glassArea * viewHoursLost(o, result.rooms, sunUp), 0);
  return area > 0 ? lost / area : 0;
}

/** Gain with its shading of some openings together over summer or winter, kWh. */
export function gainOfOpenings(
  result: StudyResult,
  openings: ReadonlySet<string>,
  season: 'summer' | 'winter',
): number {
  return result.openings
    .filter((o) => openings.has(o.id))
    .reduce((sum, o) => sum + o.sums.with[season], 0);
}
