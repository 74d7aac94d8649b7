import { DAYS, HOURS, STEPS_PER_HOUR, type YearCalendar } from '../time/index.ts';

/** The hot spells of a room-year. */
export interface HotEpisodes {
  /** Warmest hour and its operative temperature, C. */
  warmestHour: number;
  warmest: number;
  /** Local day of the year (0 to 364) with the highest mean operative temperature, and that mean, C. */
  hottestDay: number;
  hottestDayMean: number;
  /** Longest run of hours over the threshold: first hour and length; 0 hours if none. */
  longestRunStart: number;
  longestRunHours: number;
  /** Local days with an hour over the threshold. */
  daysOver: number;
}

/** Warmest hour, hottest day and longest run of hours over a threshold (C). */
export function hotEpisodes(
  operative: Float64Array,
  calendar: YearCalendar,
  threshold: number,
): HotEpisodes {
  const sums = new Float64Array(DAYS);
  const hours = new Float64Array(DAYS);
  const over = new Uint8Array(DAYS);
  const found = { warmestHour: 0, longestRunStart: 0, longestRunHours: 0 };
  let run = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const t = operative[hour];
    const day = calendar.day[hour * STEPS_PER_HOUR];
    sums[day] += t;
    hours[day]++;
    if (t > operative[found.warmestHour]) found.warmestHour = hour;
    run = t > threshold ? run + 1 : 0;
    if (run > 0) over[day] = 1;
    if (run > found.longestRunHours) {
      found.longestRunHours = run;
      found.longestRunStart = hour - run + 1;
    }
  }
  const means = sums.map((sum, day) => sum / hours[day]);
  const hottestDay = means.indexOf(Math.max(...means));
  return {
    ...found,
    warmest: operative[found.warmestHour],
    hottestDay,
    hottestDayMean: means[hottestDay],
    daysOver: over.reduce((sum, flag) => sum + flag, 0),
  };
}
