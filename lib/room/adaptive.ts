import { DAYS, HOURS, STEPS_PER_HOUR, type YearCalendar } from '../time/index.ts';
import { NO_CODE_CHECK, type CriterionResult } from './criteria.ts';
import { say } from './say.ts';

/** Widths of the adaptive comfort band above and below the comfort temperature, K: EN 16798-1:2019, B.2.2. */
export const ADAPTIVE_BANDS = {
  I: { above: 2, below: 3 },
  II: { above: 3, below: 4 },
  III: { above: 4, below: 5 },
} as const;
export type AdaptiveCategory = keyof typeof ADAPTIVE_BANDS;

/** Weight of the day before in the running mean: EN 16798-1:2019, B.2.2. */
const ALPHA = 0.8;
/** Running means between which the band holds, C. */
const LEAST_MEAN = 10;
const MOST_MEAN = 30;
/** Days that have lost all weight (0.8^100 is under 1e-9). */
const SETTLE_DAYS = 100;

/** Mean outdoor temperature of each local day, C; DAYS values. */
export function dailyMeans(outdoor: Float64Array, calendar: YearCalendar): Float64Array {
  const sums = new Float64Array(DAYS);
  const hours = new Float64Array(DAYS);
  for (let hour = 0; hour < HOURS; hour++) {
    const day = calendar.day[hour * STEPS_PER_HOUR];
    sums[day] += outdoor[hour];
    hours[day]++;
  }
  return sums.map((sum, day) => sum / hours[day]);
}

/**
 * Running mean outdoor temperature of each day, C: 0.2 x yesterday's mean + 0.8 x yesterday's
 * running mean (EN 16798-1:2019, B.2.2), the year closed on itself.
 */
export function runningMeans(daily: Float64Array): Float64Array {
  const days = daily.length;
  const running = new Float64Array(days);
  let mean = daily[days - 1];
  for (let i = -SETTLE_DAYS; i < days; i++) {
    const yesterday = daily[(((i - 1) % days) + days) % days];
    mean = (1 - ALPHA) * yesterday + ALPHA * mean;
    if (i >= 0) running[i] = mean;
  }
  return running;
}

/** Comfort temperature of a building without cooling, C: 0.33 running mean + 18.8. */
export function adaptiveComfort(runningMean: number): number {
  return 0.33 * runningMean + 18.8;
}

export interface AdaptiveResult extends CriterionResult {
  /** Hours under the lower bound; not part of the figure judged. */
  hoursUnder: number;
  /** Most over the upper bound, K; 0 if never. */
  worst: number;
}

/**
 * Share of the hours over the adaptive upper bound of a category, judged where the running mean of
 * the outdoor temperature lies between 10 and 30 C. For rooms without cooling whose occupants can
 * open windows and change clothes.
 *
 * @param occupied 1 for each hour that counts; absent: all. HOURS values
 */
export function adaptiveHours(
  operative: Float64Array,
  outdoor: Float64Array,
  calendar: YearCalendar,
  category: AdaptiveCategory,
  occupied?: Uint8Array,
): AdaptiveResult {
  const running = runningMeans(dailyMeans(outdoor, calendar));
  const { above, below } = ADAPTIVE_BANDS[category];
  let judged = 0;
  let over = 0;
  let hoursUnder = 0;
  let worst = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const mean = running[calendar.day[hour * STEPS_PER_HOUR]];
    if (mean <= LEAST_MEAN || mean >= MOST_MEAN) continue;
    if (occupied !== undefined && occupied[hour] === 0) continue;
    judged++;
    const off = operative[hour] - adaptiveComfort(mean);
    if (off > above) over++;
    if (off < -below) hoursUnder++;
    worst = Math.max(worst, off - above);
  }
  const value = judged > 0 ? over / judged : 0;
  return {
    id: 'adaptive',
    title: say('room.criterion.adaptive', { category }),
    value,
    unit: '1',
    limit: 0.03,
    met: value <= 0.03,
    hoursOver: over,
    hoursJudged: judged,
    hoursUnder,
    worst,
    source: say('room.source.adaptive'),
    note: NO_CODE_CHECK,
  };
}
