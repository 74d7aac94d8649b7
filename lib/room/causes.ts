import { HOURS } from '../time/index.ts';
import type { RoomModel } from './compile.ts';
import type { RoomDrivers, RoomYear } from './run.ts';
import { superposition, type Push } from './superposition.ts';

/** Where heat in the room comes from or goes to. */
export type CauseKind =
  'opening' | 'people' | 'appliances' | 'outdoorAir' | 'envelope' | 'heating' | 'cooling';

/** What one source does to the room's operative temperature in the overheating hours. */
export interface Cause {
  kind: CauseKind;
  /** Id of the opening whose sun it is. */
  opening?: string;
  /** Mean over the overheating hours of the rise above the threshold it makes, K; below 0: it cools. */
  meanRise: number;
  /** Its part of the degree-hours over the threshold, Kh; 0 or more. */
  degreeHours: number;
  /** The same as a share of them all. */
  share: number;
}

export interface CauseReport {
  /** C */
  threshold: number;
  /** Hours whose mean operative temperature is over it. */
  hours: number;
  /** Degree-hours over it, Kh: the sum of all causes' degree-hours. */
  degreeHours: number;
  causes: Cause[];
}

/** A source in a room that is otherwise at the threshold throughout. */
export interface SourceRise {
  kind: CauseKind;
  opening?: string;
  /** Rise of the hourly operative temperature, K; HOURS values. */
  rise: Float64Array;
}

/** Sun of one opening, W; HOURS values. */
export interface OpeningSun {
  id: string;
  sun: Float64Array;
}

/**
 * Splits the operative temperature of a finished room-year into the parts of its sources, exactly:
 * their sum is the temperature less the threshold in every hour.
 *
 * The room is linear once the year's air conductances and heating and cooling powers are known, so
 * each source is run alone through the same year: one opening's sun; people; appliances; outdoor
 * air by leaks, ventilation and airing, and the envelope with what lies behind it, both driven by
 * outdoor temperature less the threshold; heating; cooling. A heavy room's memory is in each part.
 * The little by which the year does not close stays with the envelope.
 */
export function sourceRises(
  model: RoomModel,
  drivers: RoomDrivers,
  openings: readonly OpeningSun[],
  year: RoomYear,
  threshold: number,
): SourceRise[] {
  const { airHeat, sun, internal, envelope, memory, run } = superposition(model, year, threshold);
  const outdoor = drivers.outdoor.map((t) => t - threshold);
  const sources: (Omit<SourceRise, 'rise'> & { push: Push })[] = [
    ...openings.map((o) => ({ kind: 'opening' as const, opening: o.id, push: sun(o.sun) })),
    { kind: 'people', push: internal(model.people) },
    { kind: 'appliances', push: internal(model.appliances) },
    {
      kind: 'outdoorAir',
      push: airHeat(outdoor.map((d, hour) => d * year.airConductance[hour])),
    },
    { kind: 'heating', push: airHeat(year.heating) },
    { kind: 'cooling', push: airHeat(year.cooling.map((w) => -w)) },
  ];
  const rises: SourceRise[] = [];
  // What the room remembered as the year began and no other source left behind.
  const rest = memory.slice();
  for (const { push, ...source } of sources) {
    const { rise, start } = run([push]);
    for (let k = 0; k < rest.length; k++) rest[k] -= start[k];
    rises.push({ ...source, rise });
  }
  rises.push({ kind: 'envelope', rise: run(envelope(outdoor, drivers.opaqueSun), rest).rise });
  return rises;
}

/**
 * What heats the room in the hours over the threshold. In each of them the temperature above the
 * threshold is shared among the sources that warm, in proportion to the rise each makes; sources
 * that cool in that hour get none of it. The parts add up to all degree-hours.
 */
export function overheatingCauses(
  model: RoomModel,
  drivers: RoomDrivers,
  openings: readonly OpeningSun[],
  year: RoomYear,
  threshold: number,
): CauseReport {
  const rises = sourceRises(model, drivers, openings, year, threshold);
  const parts = new Float64Array(rises.length);
  const sums = new Float64Array(rises.length);
  let hours = 0;
  let total = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const over = year.operative[hour] - threshold;
    if (over <= 0) continue;
    hours++;
    total += over;
    let warming = 0;
    for (const { rise } of rises) warming += Math.max(rise[hour], 0);
    rises.forEach(({ rise }, i) => {
      sums[i] += rise[hour];
      parts[i] += (over * Math.max(rise[hour], 0)) / warming;
    });
  }
  return {
    threshold,
    hours,
    degreeHours: total,
    causes: rises.map(({ kind, opening }, i) => ({
      kind,
      ...(opening === undefined ? {} : { opening }),
      meanRise: hours > 0 ? sums[i] / hours : 0,
      degreeHours: parts[i],
      share: total > 0 ? parts[i] / total : 0,
    })),
  };
}
