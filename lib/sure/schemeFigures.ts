import { meanViewHoursLost, sunUpSteps } from '../decide/index.ts';
import { HOURS } from '../time/index.ts';
import type { CriterionResult } from '../room/index.ts';
import type { OpeningResult, StudyInput, StudyResult } from '../study/index.ts';
import { daylightLeft } from './daylight.ts';
import type { Daylight } from './daylight.ts';

/** One criterion over all rooms of a house. */
export interface CriterionFigures {
  title: string;
  /** Hours over, all rooms together. */
  hours: number;
  /** Rooms that break it; absent where it sets no limit. */
  broken?: number;
}

/** One scheme on the axes that all are compared on; plain data. */
export interface SchemeFigures {
  id: string;
  name: string;
  /** By the criterion the project is judged by: hours over and rooms that break it. */
  hours: number;
  broken: number;
  /** Every criterion, in the same order for each scheme. */
  criteria: CriterionFigures[];
  rooms: { id: string; name: string; hours: number; kept: boolean; value: number }[];
  /** Sun that comes in over summer and winter, kWh. */
  summerGain: number;
  winterGain: number;
  heatingKWh: number;
  coolingKWh: number;
  /** Sun through all openings in the strongest hour, W. */
  peakGain: number;
  /** Occupied daylight hours with the blind down, mean over the glass. */
  viewHoursLost: number;
  /** The same, each hour counted by the share of the glass that is covered. */
  viewHoursCovered: number;
  /** Occupied daylight hours there are, mean over the glass. */
  viewHours: number;
  daylight: Daylight;
  /** Mean over the whole year, all drives together; blinds of a group move as one. */
  movesPerDay: number;
  /** Blinds of any kind, and those of them that hang outside. */
  blinds: number;
  externalBlinds: number;
}

/** The figures of a scheme that has been run. */
export function schemeFigures(
  { id, name }: { id: string; name: string },
  input: Pick<StudyInput, 'project' | 'library'>,
  result: StudyResult,
): SchemeFigures {
  const { rooms, openings, total } = result;
  const sunUp = sunUpSteps(result);
  const all = new Set(openings.map((o) => o.id));
  return {
    id,
    name,
    hours: sumOf(rooms, (r) => r.with.chosen.hoursOver),
    broken: rooms.filter((r) => r.with.chosen.met === false).length,
    criteria: criteriaOf(rooms.map((r) => r.with.criteria)),
    rooms: rooms.map(({ id: room, name: words, with: { chosen } }) => ({
      id: room,
      name: words,
      hours: chosen.hoursOver,
      kept: chosen.met !== false,
      value: chosen.value,
    })),
    summerGain: total.with.summer,
    winterGain: total.with.winter,
    heatingKWh: sumOf(rooms, (r) => r.with.heatingKWh),
    coolingKWh: sumOf(rooms, (r) => r.with.coolingKWh),
    peakGain: peakOf(openings),
    viewHoursLost: meanViewHoursLost(result, all, sunUp),
    ...daylightLeft(input, result, sunUp),
    movesPerDay: movesOf(openings) / 365,
    ...blindsOf(input),
  };
}

/** The same criterion of every room put together; criteria come in one order in every room. */
function criteriaOf(rooms: readonly (readonly CriterionResult[])[]): CriterionFigures[] {
  return (rooms[0] ?? []).map(({ title, limit }, i) => ({
    title: title.english,
    hours: sumOf(rooms, (criteria) => criteria[i].hoursOver),
    ...(limit === undefined
      ? {}
      : { broken: rooms.filter((criteria) => criteria[i].met === false).length }),
  }));
}

/** Strongest hour of all openings together, W. */
function peakOf(openings: readonly OpeningResult[]): number {
  let most = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    let sum = 0;
    for (const { glassArea, hourly } of openings) sum += glassArea * hourly.with[hour];
    if (sum > most) most = sum;
  }
  return most;
}

function movesOf(openings: readonly OpeningResult[]): number {
  const drives = new Map(
    openings.flatMap(({ blind }) => (blind ? [[blind.controller, blind]] : [])),
  );
  return [...drives.values()].reduce((sum, blind) => sum + blind.moves, 0);
}

function blindsOf({ project, library }: Pick<StudyInput, 'project' | 'library'>) {
  const positions = new Map([...library.blinds, ...project.blinds].map((b) => [b.id, b.position]));
  const count = (wanted: (id: string) => boolean) =>
    sumOf(project.openings, (o) => (o.blind && wanted(o.blind.blind) ? o.count : 0));
  return {
    blinds: count(() => true),
    externalBlinds: count((id) => positions.get(id) === 'external'),
  };
}

function sumOf<T>(list: readonly T[], of: (item: T) => number): number {
  return list.reduce((sum, item) => sum + of(item), 0);
}
