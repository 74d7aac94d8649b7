import { DAYS, daysInMonth } from '../../time/index.ts';
import { monthStart } from './months.ts';
import type { Random } from './random.ts';
import { autoregressive, toNormalScores } from './random.ts';
import { meetSum } from './solve.ts';
import type { SunHours } from './sunHours.ts';

/** Day-to-day correlation of the clearness scores, Graham, Hollands & Huget (1988). */
const DAY_CORRELATION = 0.29;

/** Clearness of the darkest days; 0.12 is the least in the four TMY3 files of the tests. */
const DARKEST = 0.1;

/** Share of a clear month's sun beyond which the ceiling is lifted: thin, dry or snow-lit air. */
const ROOM_BELOW_CLEAR = 0.92;

/** No day's clearness is over this, lifted or not. */
const CLEAREST = 0.95;

/** The days' sun. */
export interface DailyClearness {
  /** Horizontal irradiation of each day, Wh/m2; DAYS values. */
  ghiDay: Float64Array;
  /** Standard normal score of each day's clearness inside its month; DAYS values. */
  score: Float64Array;
  /** Clearness over the month's mean clearness; DAYS values. */
  relative: Float64Array;
  /** Factor on the clear sky that makes the month's mean possible, 1 or more; 12 values. */
  lift: Float64Array;
}

/**
 * A year of daily clearness: an autoregressive Gaussian series turned into the month's own
 * distribution, as Graham, Hollands & Huget (1988), "A time series model for Kt with application to
 * global synthetic weather generation", Solar Energy 40(2). The distribution here runs along a
 * logistic curve from the darkest day to a clear one, with the month's mean and standard deviation,
 * so that both are met by each month and no day is brighter than a clear sky.
 *
 * @param ghiMean monthly mean of daily global, Wh/m2; 12 values
 * @param spread standard deviation of the daily clearness index; 12 values
 */
export function dailyClearness(
  sun: SunHours,
  ghiMean: ArrayLike<number>,
  spread: ArrayLike<number>,
  gaussian: Random,
): DailyClearness {
  const score = autoregressive(DAYS, DAY_CORRELATION, gaussian);
  const ghiDay = new Float64Array(DAYS);
  const relative = new Float64Array(DAYS).fill(1);
  const lift = new Float64Array(12).fill(1);
  for (let m = 0; m < 12; m++) {
    const from = monthStart[m];
    const to = monthStart[m + 1];
    toNormalScores(score, from, to);
    const outside = sun.outsideDay.subarray(from, to);
    const total = ghiMean[m] * daysInMonth[m];
    const sumOutside = sumOf(outside);
    if (sumOutside <= 0 || total <= 0) continue;
    const mean = total / sumOutside;
    lift[m] = Math.max(1, total / (ROOM_BELOW_CLEAR * sumOf(sun.clearDay.subarray(from, to))));
    const month: Month = {
      outside,
      score: score.subarray(from, to),
      low: Math.min(DARKEST, mean / 3),
      high: Float64Array.from(outside, (out, i) =>
        out > 0 ? Math.min((sun.clearDay[from + i] / out) * lift[m], CLEAREST) : 0,
      ),
      clearness: new Float64Array(to - from),
    };
    meetSpread(month, total, spread[m]);
    for (let i = 0; i < outside.length; i++) {
      ghiDay[from + i] = month.clearness[i] * outside[i];
      if (outside[i] > 0) relative[from + i] = month.clearness[i] / mean;
    }
  }
  return { ghiDay, score, relative, lift };
}

interface Month {
  outside: Float64Array;
  score: Float64Array;
  low: number;
  high: Float64Array;
  clearness: Float64Array;
}

/** Widens the logistic curve until the month has its standard deviation, or as near as it gets. */
function meetSpread(month: Month, total: number, spread: number): void {
  let narrow = 0;
  let wide = 6;
  let level = 0;
  for (let pass = 0; pass < 24; pass++) {
    const width = (narrow + wide) / 2;
    level = meetTotal(month, total, width, level);
    if (standardDeviation(month) < spread) narrow = width;
    else wide = width;
  }
}

/** Sets the month's clearness at a width; finds the level, which it returns, that meets the total. */
function meetTotal(month: Month, total: number, width: number, start: number): number {
  const { outside, score, low, high, clearness } = month;
  return meetSum(total, start, -40, 40, (level, out) => {
    out.sum = 0;
    out.slope = 0;
    for (let i = 0; i < outside.length; i++) {
      const s = 1 / (1 + Math.exp(-(level + width * score[i])));
      const range = Math.max(high[i] - low, 0);
      clearness[i] = Math.min(low, high[i]) + range * s;
      out.sum += clearness[i] * outside[i];
      out.slope += range * s * (1 - s) * outside[i];
    }
  });
}

/** Standard deviation (n - 1) of the clearness of the days with sun. */
function standardDeviation({ outside, clearness }: Month): number {
  let n = 0;
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < outside.length; i++) {
    if (outside[i] <= 0) continue;
    n++;
    sum += clearness[i];
    squares += clearness[i] ** 2;
  }
  return n > 1 ? Math.sqrt(Math.max(squares - (sum * sum) / n, 0) / (n - 1)) : 0;
}

export function sumOf(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}
