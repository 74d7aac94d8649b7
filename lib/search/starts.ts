import { DIN_REGIONS } from '../room/index.ts';
import type { Project } from '../project/index.ts';
import { DAYS, HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { StudyResult } from '../study/index.ts';
import { QUARTERS } from './clock.ts';
import type { TargetInHand } from './target.ts';

/** Temperature that hours are over, C; for the adaptive bound, which moves, the one of the project. */
export function hotLimit({ criterion, overheatingLimit, dinRegion }: Project['settings']): number {
  if (criterion === 'bedroomNights') return 26;
  return criterion === 'din4108' ? DIN_REGIONS[dinRegion] : overheatingLimit;
}

/** What the house with the target's blinds raised tells about when they are wanted. */
export interface Wanted {
  /** Hours over on each local day; DAYS values. */
  hotDays: Float64Array;
  /** Sun through the target's glass on those days by quarter of the local clock; QUARTERS values. */
  quarters: Float64Array;
}

export function wantedFrom(
  up: StudyResult,
  { rooms, openings }: TargetInHand,
  settings: Project['settings'],
): Wanted {
  const { day, quarter } = up.calendar;
  const limit = hotLimit(settings);
  const hotDays = new Float64Array(DAYS);
  for (const { id, runs } of up.rooms) {
    if (!rooms.has(id)) continue;
    const { operative } = runs.with.year;
    for (let hour = 0; hour < HOURS; hour++) {
      if (operative[hour] > limit) hotDays[day[hour * STEPS_PER_HOUR]]++;
    }
  }
  const quarters = new Float64Array(QUARTERS);
  for (const { id, glassArea, hourly } of up.openings) {
    if (!openings.has(id)) continue;
    for (let step = 0; step < STEPS; step++) {
      if (hotDays[day[step]] === 0) continue;
      quarters[quarter[step]] += glassArea * hourly.without[Math.floor(step / STEPS_PER_HOUR)];
    }
  }
  return { hotDays, quarters };
}

/**
 * The shortest stretch of a series that holds a share of its sum, as its first number and the one
 * after its last; all of it where the sum is 0.
 *
 * @param first number in `values` where the stretch may begin earliest; it goes round the end
 */
export function shortestHolding(
  values: Float64Array,
  share: number,
  first: number,
): { from: number; to: number } {
  const count = values.length;
  const at = (i: number) => values[(first + i) % count];
  let total = 0;
  for (let i = 0; i < count; i++) total += at(i);
  let found = { from: 0, to: count };
  let sum = 0;
  for (let from = 0, to = 0; total > 0 && from < count; from++) {
    while (to < count && sum < share * total) sum += at(to++);
    if (sum < share * total) break;
    if (to - from < found.to - found.from) found = { from, to };
    sum -= at(from);
  }
  return found;
}
