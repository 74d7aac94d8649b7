import { HOURS, STEPS_PER_HOUR, clockText, dateText } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';

/** Sums of one hourly quantity in kWh. */
export interface EnergySums {
  year: number;
  /** June to August; December to February south of the equator. */
  summer: number;
  /** December to February; June to August south of the equator. */
  winter: number;
  /** January to December. */
  months: number[];
}

/** The hour with the most, by local date and the clock at its start. */
export interface Peak {
  /** W/m2 of glass, mean of the hour. */
  value: number;
  hour: number;
  /** `YYYY-MM-DD`. */
  date: string;
  /** `HH:MM`, the local clock at the hour's start. */
  clock: string;
}

const JUNE_TO_AUGUST = [6, 7, 8];
const DECEMBER_TO_FEBRUARY = [12, 1, 2];

/** Months that count as summer at a latitude. */
export function summerMonths(latitude: number): readonly number[] {
  return latitude < 0 ? DECEMBER_TO_FEBRUARY : JUNE_TO_AUGUST;
}

/** Months that count as winter at a latitude. */
export function winterMonths(latitude: number): readonly number[] {
  return latitude < 0 ? JUNE_TO_AUGUST : DECEMBER_TO_FEBRUARY;
}

/**
 * Sums hourly means (W/m2, HOURS values) times an area in m2 to kWh by local calendar month.
 */
export function sumEnergy(
  hourly: Float64Array,
  area: number,
  calendar: YearCalendar,
  latitude: number,
): EnergySums {
  const months = new Array<number>(12).fill(0);
  for (let hour = 0; hour < HOURS; hour++) months[calendar.month[hour] - 1] += hourly[hour];
  for (let i = 0; i < 12; i++) months[i] *= area / 1000;
  const over = (list: readonly number[]) => list.reduce((sum, m) => sum + months[m - 1], 0);
  return {
    months,
    year: months.reduce((sum, x) => sum + x, 0),
    summer: over(summerMonths(latitude)),
    winter: over(winterMonths(latitude)),
  };
}

/** Adds sums of several openings. */
export function addSums(parts: readonly EnergySums[]): EnergySums {
  const total = (pick: (s: EnergySums) => number) => parts.reduce((sum, s) => sum + pick(s), 0);
  return {
    year: total((s) => s.year),
    summer: total((s) => s.summer),
    winter: total((s) => s.winter),
    months: Array.from({ length: 12 }, (_, i) => total((s) => s.months[i])),
  };
}

/** The strongest hour of an hourly series in W/m2; the first where several are equal. */
export function findPeak(hourly: Float64Array, calendar: YearCalendar): Peak {
  let hour = 0;
  for (let i = 1; i < HOURS; i++) if (hourly[i] > hourly[hour]) hour = i;
  const step = hour * STEPS_PER_HOUR;
  return {
    value: hourly[hour],
    hour,
    date: dateText(calendar, step),
    clock: clockText(calendar, step),
  };
}

/** Part of `without` that is gone in `with`, 0 to 1; 0 where there was nothing to stop. */
export function shareStopped(without: number, withShading: number): number {
  return without > 0 ? 1 - withShading / without : 0;
}
