import { DAYS, daysInMonth } from '../../time/index.ts';
import { monthOfDayIndex, monthStart } from './months.ts';
import type { Random } from './random.ts';
import { smoothThroughMeans } from './smooth.ts';
import type { DayRanges } from './temperature.ts';

/** Day-to-day correlation of the daily means; 0.58 to 0.67 in the files the tests read. */
const DAY_CORRELATION = 0.7;

/** The days' sun and season, as far as the temperature follows them. */
export interface DaySky {
  /** Standard normal score of each day's clearness; DAYS values. */
  score: Float64Array;
  /** Each day's clearness over its month's mean; DAYS values. */
  relative: Float64Array;
  /** Monthly mean of daily extraterrestrial irradiation, kWh/m2; 12 values. */
  outside: readonly number[];
}

/**
 * Daily mean temperatures and ranges. The means follow a smooth season through the monthly means,
 * with autocorrelated anomalies that have the month's standard deviation. A clear day warms itself
 * and the days after it where the sun is strong and cools them where it is weak; its range is wider.
 * The strength of both ties is fitted to the four TMY3 files of the tests.
 *
 * @param mean monthly means, degrees C; 12 values
 * @param spread standard deviation of the daily mean inside each month, K; 12 values
 */
export function dailyTemperature(
  mean: readonly number[],
  spread: readonly number[],
  sky: DaySky,
  gaussian: Random,
): DayRanges {
  return {
    mean: dailyMeans(mean, spread, sky, gaussian),
    relativeRange: relativeRanges(sky, gaussian),
  };
}

function dailyMeans(
  mean: readonly number[],
  spread: readonly number[],
  sky: DaySky,
  gaussian: Random,
): Float64Array {
  const season = smoothThroughMeans(mean, daysInMonth);
  const width = smoothThroughMeans(spread, daysInMonth);
  const anomaly = new Float64Array(DAYS);
  const fresh = Math.sqrt(1 - DAY_CORRELATION ** 2);
  let last = gaussian();
  for (let day = 0; day < DAYS; day++) {
    // Fits the correlation of daily mean and clearness: -0.1 in winter at 45 degrees, 0.45 in summer.
    const tie = Math.max(-0.45, Math.min(0.083 * sky.outside[monthOfDayIndex[day]] - 0.45, 0.55));
    const push = tie * sky.score[day] + Math.sqrt(1 - tie ** 2) * gaussian();
    last = DAY_CORRELATION * last + fresh * push;
    anomaly[day] = Math.max(width[day], 0) * last;
  }
  const drift = smoothThroughMeans(monthlyMeans(anomaly), daysInMonth);
  for (let day = 0; day < DAYS; day++) anomaly[day] -= drift[day];
  for (let m = 0; m < 12; m++) {
    const scale = scaleToSpread(season, anomaly, monthStart[m], monthStart[m + 1], spread[m]);
    for (let day = monthStart[m]; day < monthStart[m + 1]; day++) {
      season[day] += scale * anomaly[day];
    }
  }
  return season;
}

/**
 * Factor k on the anomalies at which season + k anomaly has the standard deviation (n - 1), at least
 * a third of what the anomalies alone would need.
 */
function scaleToSpread(
  season: Float64Array,
  anomaly: Float64Array,
  from: number,
  to: number,
  spread: number,
): number {
  const n = to - from;
  let mean = 0;
  for (let day = from; day < to; day++) mean += season[day] / n;
  let own = 0;
  let both = 0;
  let trend = 0;
  for (let day = from; day < to; day++) {
    own += anomaly[day] ** 2 / (n - 1);
    both += (anomaly[day] * (season[day] - mean)) / (n - 1);
    trend += (season[day] - mean) ** 2 / (n - 1);
  }
  if (own <= 0) return 0;
  const least = spread / Math.sqrt(own) / 3;
  const inside = both ** 2 - own * (trend - spread ** 2);
  return inside > 0 ? Math.max((-both + Math.sqrt(inside)) / own, least) : least;
}

/** Daily range over the month's mean range: wider on clear days, less so under a low sun. */
function relativeRanges(sky: DaySky, gaussian: Random): Float64Array {
  const ranges = new Float64Array(DAYS);
  for (let day = 0; day < DAYS; day++) {
    const strength = (sky.outside[monthOfDayIndex[day]] - 2.5) / 3;
    const slope = 0.8 * Math.max(0, Math.min(strength, 1));
    const range = 1 + slope * (sky.relative[day] - 1) + 0.17 * gaussian();
    ranges[day] = Math.max(range, 0.2);
  }
  const means = monthlyMeans(ranges);
  for (let day = 0; day < DAYS; day++) ranges[day] /= means[monthOfDayIndex[day]];
  return ranges;
}

function monthlyMeans(days: Float64Array): Float64Array {
  const means = new Float64Array(12);
  for (let day = 0; day < DAYS; day++) {
    const m = monthOfDayIndex[day];
    means[m] += days[day] / daysInMonth[m];
  }
  return means;
}
