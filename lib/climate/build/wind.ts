import { DAYS, HOURS } from '../../time/index.ts';
import { monthOfDayIndex, monthStart } from './months.ts';
import type { Random } from './random.ts';

/** Hour-to-hour correlation of the wind's components: its square, 0.77, is that of the speed. */
const HOUR_CORRELATION = 0.88;

/** Solar hour of the strongest wind of the day. */
const WINDIEST = 14.5;

/**
 * Hourly wind speed at 10 m, m/s (HOURS values). Two Gaussian components, each correlated from hour
 * to hour, give a Weibull distribution of shape 2; a hump in the afternoon follows the sun. Hour
 * correlation (0.69 to 0.83) and hump (12 percent in winter, 26 in summer) are those of the four
 * TMY3 files of the tests. Monthly means are met.
 *
 * @param mean monthly mean wind speed, m/s; 12 values
 * @param outside monthly mean of daily extraterrestrial irradiation, kWh/m2; 12 values
 * @param solarOffset hours from the hour of the year to mean solar time
 */
export function hourlyWind(
  mean: readonly number[],
  outside: readonly number[],
  solarOffset: number,
  gaussian: Random,
): Float64Array {
  const wind = new Float64Array(HOURS);
  const fresh = Math.sqrt(1 - HOUR_CORRELATION ** 2);
  let along = gaussian();
  let across = gaussian();
  for (let day = 0; day < DAYS; day++) {
    const hump = Math.min(0.05 + 0.018 * outside[monthOfDayIndex[day]], 0.28);
    for (let h = 0; h < 24; h++) {
      const angle = (2 * Math.PI * (h + 0.5 + solarOffset - WINDIEST)) / 24;
      wind[day * 24 + h] = Math.hypot(along, across) * (1 + hump * Math.cos(angle));
      along = HOUR_CORRELATION * along + fresh * gaussian();
      across = HOUR_CORRELATION * across + fresh * gaussian();
    }
  }
  for (let m = 0; m < 12; m++) {
    const month = wind.subarray(monthStart[m] * 24, monthStart[m + 1] * 24);
    const scale = (mean[m] * month.length) / month.reduce((a, b) => a + b, 0);
    for (let i = 0; i < month.length; i++) month[i] *= scale;
  }
  return wind;
}
