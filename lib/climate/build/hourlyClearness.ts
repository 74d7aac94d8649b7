import { DAYS, HOURS } from '../../time/index.ts';
import type { DailyClearness } from './dailyClearness.ts';
import { monthOfDayIndex, monthStart } from './months.ts';
import type { Random } from './random.ts';
import { meetSum } from './solve.ts';
import type { SunHours } from './sunHours.ts';

/** No hour's global is more than this share of the extraterrestrial. */
const MOST_CLEARNESS = 0.98;

/**
 * Global horizontal irradiance of each hour, W/m2 (HOURS values), so that each day has its total.
 *
 * Each hour lies on a logistic curve between darkness and a clear sky. Its place on the curve is the
 * day's level, the course of the hour over the day by Collares-Pereira & Rabl (1979), and a Gaussian
 * deviation correlated from hour to hour. Size and correlation of the deviations are those of Graham
 * & Hollands (1990), "A method to generate synthetic hourly solar radiation globally", Solar Energy
 * 44(6) (formulas from memory); the logistic curve stands in for their beta distribution. So dark
 * days follow the Collares-Pereira & Rabl course, clear days the clear sky's, and days between
 * scatter the most.
 */
export function hourlyGlobal(sun: SunHours, days: DailyClearness, gaussian: Random): Float64Array {
  const ghi = new Float64Array(HOURS);
  const mirrored = new Float64Array(HOURS);
  const lopsided = new Float64Array(DAYS);
  const day: Day = {
    hours: [],
    ceiling: new Float64Array(24),
    course: new Float64Array(24),
    deviation: new Float64Array(24),
    global: new Float64Array(24),
  };
  for (let d = 0; d < DAYS; d++) {
    if (days.ghiDay[d] <= 0) continue;
    openDay(day, sun, d, days.lift[monthOfDayIndex[d]], days.ghiDay[d]);
    const n = day.hours.length;
    drawDeviations(day, days.ghiDay[d] / sun.outsideDay[d], sun.outsideDay[d], gaussian);
    spreadDay(day, days.ghiDay[d]);
    for (let i = 0; i < n; i++) ghi[day.hours[i]] = day.global[i];
    day.deviation.subarray(0, n).reverse();
    spreadDay(day, days.ghiDay[d]);
    for (let i = 0; i < n; i++) mirrored[day.hours[i]] = day.global[i];
    lopsided[d] = eastward(sun, ghi, day.hours) - eastward(sun, mirrored, day.hours);
  }
  balanceMonths(ghi, mirrored, lopsided);
  return ghi;
}

/** One day's hours with sun; the arrays hold a value for each of them. */
interface Day {
  hours: number[];
  /** Most global, Wh/m2. */
  ceiling: Float64Array;
  /** Place on the logistic curve by the day's course, and by chance. */
  course: Float64Array;
  deviation: Float64Array;
  global: Float64Array;
}

function openDay(day: Day, sun: SunHours, d: number, lift: number, total: number): void {
  day.hours.length = 0;
  let most = 0;
  for (let hour = d * 24; hour < d * 24 + 24; hour++) {
    if (sun.outside[hour] <= 0) continue;
    const i = day.hours.push(hour) - 1;
    day.ceiling[i] = sun.outside[hour] * Math.min(sun.clear[hour] * lift, MOST_CLEARNESS);
    day.course[i] = Math.log(Math.max(sun.course[hour], 0.05) / sun.clear[hour]);
    most += day.ceiling[i];
  }
  if (most >= total) return;
  // Sun so low and bright, at the edge of the polar night, that the clear sky's course cannot hold it.
  for (let i = 0; i < day.hours.length; i++) {
    day.ceiling[i] = sun.outside[day.hours[i]] * MOST_CLEARNESS;
  }
}

function drawDeviations(day: Day, clearness: number, outside: number, gaussian: Random): void {
  const n = day.hours.length;
  let most = 0;
  for (let i = 0; i < n; i++) most += day.ceiling[i];
  const clearest = most / outside;
  const share = Math.min(Math.max(clearness / clearest, 0.02), 0.98);
  const sigma = 0.16 * Math.sin((Math.PI * Math.min(clearness, 0.88)) / 0.9);
  const correlation = 0.38 + 0.06 * Math.cos(7.4 * clearness - 2.5);
  // A step of dx on the logistic curve moves the clearness by clearest * share * (1 - share) * dx.
  const width = Math.min(sigma / (clearest * share * (1 - share)), 2.5);
  const fresh = Math.sqrt(1 - correlation ** 2);
  for (let i = 0, last = gaussian(); i < n; i++) {
    day.deviation[i] = width * last;
    last = correlation * last + fresh * gaussian();
  }
}

/** Writes the day's hours under their ceilings, at the level that gives the total, Wh/m2. */
function spreadDay(day: Day, total: number): void {
  const { ceiling, course, deviation, global } = day;
  const n = day.hours.length;
  let most = 0;
  for (let i = 0; i < n; i++) most += ceiling[i];
  const share = Math.min(total / most, 0.999);
  let sum = 0;
  meetSum(share * most, Math.log(share / (1 - share)), -60, 60, (level, out) => {
    sum = 0;
    let slope = 0;
    for (let i = 0; i < n; i++) {
      const s = 1 / (1 + Math.exp(-(level + course[i] + deviation[i])));
      global[i] = ceiling[i] * s;
      sum += global[i];
      slope += global[i] * (1 - s);
    }
    out.sum = sum;
    out.slope = slope;
  });
  const exact = total / sum;
  for (let i = 0; i < n; i++) global[i] *= exact;
}

/** How much more beam the day gives an east wall than a west one, by a plain split of each hour. */
function eastward(sun: SunHours, ghi: Float64Array, hours: readonly number[]): number {
  let sum = 0;
  for (const hour of hours) {
    const clearness = ghi[hour] / sun.outside[hour];
    const beamShare = 1 / (1 + Math.exp(8.645 * (0.613 - clearness))); // Boland et al. (2008)
    sum += (sun.east[hour] / sun.cosZenith[hour]) * ghi[hour] * beamShare;
  }
  return sum;
}

/**
 * Runs the cloud of some days from evening to morning, weighing the largest first, so that no month
 * is lopsided by chance: normals do not say which half of the day is the clearer.
 */
function balanceMonths(ghi: Float64Array, mirrored: Float64Array, lopsided: Float64Array): void {
  for (let m = 0; m < 12; m++) {
    const first = monthStart[m];
    const days = Array.from({ length: monthStart[m + 1] - first }, (_, i) => first + i);
    days.sort((a, b) => Math.abs(lopsided[b]) - Math.abs(lopsided[a]));
    let sum = 0;
    for (const day of days) {
      const turn = sum * lopsided[day] > 0;
      sum += turn ? -lopsided[day] : lopsided[day];
      if (turn) ghi.set(mirrored.subarray(day * 24, day * 24 + 24), day * 24);
    }
  }
}
