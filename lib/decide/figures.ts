import { buildSunYear } from '../sun/index.ts';
import { STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
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

const keptSunUp = new WeakMap<YearCalendar, { at: string; up: Uint8Array }>();

/** 1 at the steps with the sun up; STEPS values. Kept, as every variant of a house asks for it. */
export function sunUpSteps({ place, calendar }: Pick<StudyResult, 'place' | 'calendar'>) {
  const at = `${place.latitude} ${place.longitude}`;
  const kept = keptSunUp.get(calendar);
  if (kept?.at === at) return kept.up;
  const up = new Uint8Array(STEPS);
  for (const step of buildSunYear(place, calendar.year, calendar.startUtc).step) up[step] = 1;
  keptSunUp.set(calendar, { at, up });
  return up;
}

const keptSteps = new WeakMap<Uint8Array, { sunUp: Uint8Array; steps: Uint32Array }>();

/**
 * Steps with the sun up and somebody in; kept by the room's occupied hours.
 * @param occupied 1 in the hours with somebody in; HOURS values
 * @param sunUp 1 at the steps with the sun up; STEPS values
 */
export function occupiedDaylight(occupied: Uint8Array, sunUp: Uint8Array): Uint32Array {
  const kept = keptSteps.get(occupied);
  if (kept?.sunUp === sunUp) return kept.steps;
  const list: number[] = [];
  for (let step = 0; step < STEPS; step++) {
    if (sunUp[step] === 1 && occupied[Math.floor(step / STEPS_PER_HOUR)] === 1) list.push(step);
  }
  const steps = Uint32Array.from(list);
  keptSteps.set(occupied, { sunUp, steps });
  return steps;
}

/** Hours of the year with somebody in, the sun up and the blind of an opening down. */
export function viewHoursLost(
  opening: OpeningResult,
  rooms: readonly RoomResult[],
  sunUp: Uint8Array,
): number {
  const occupied = rooms.find((r) => r.id === opening.room)?.runs.with.model.occupied;
  if (!opening.blind || !occupied) return 0;
  const steps = occupiedDaylight(occupied, sunUp);
  const [raised] = stepsByAction(opening.blind.state, steps);
  return (steps.length - raised) / STEPS_PER_HOUR;
}

/** How many of some steps a blind spends in each of its actions; 256 values by action number. */
export function stepsByAction(state: Uint8Array, steps: Uint32Array): Uint32Array {
  const counts = new Uint32Array(256);
  for (const step of steps) counts[state[step]]++;
  return counts;
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
