import { formatProblem } from '../../problem/index.ts';
import type { Problem } from '../../problem/index.ts';
import type { SunYear } from '../../sun/index.ts';
import { HOURS, monthOfDay } from '../../time/index.ts';
import type { TypicalYear } from '../types.ts';
import { sunOf } from './sun.ts';
import { findTimeShift } from './timeShift.ts';
import type { TimeShift } from './timeShift.ts';
import type { Check, CheckId } from './types.ts';

/** Minutes a file's sun may be off before the user is told. */
const TOLD_SHIFT = 10;
const SURE = 0.5;
/** Parts of the year's global irradiance. */
const NIGHT_SHARE = 0.01;
const BALANCE_TOLD = 0.08;
const BALANCE_REFUSED = 0.25;
/** Monthly clearness index: the sunniest months of the sunniest places reach about 0.8. */
const CLEARNESS_TOLD = 0.88;
const CLEARNESS_REFUSED = 1;

const monthNames =
  'January,February,March,April,May,June,July,August,September,October,November,December'.split(
    ',',
  );

export function passed(id: CheckId, sentence: string): Check {
  return { id, level: 'ok', sentence };
}

export function warned(id: CheckId, sentence: string): Check {
  return { id, level: 'warning', sentence };
}

export function failed(id: CheckId, problem: Problem): Check {
  return { id, level: 'error', sentence: formatProblem(problem), problem };
}

/**
 * Holds a year against the sun at its place: the time of its stamps, light at night, global against
 * direct and diffuse, and each month against what reaches the top of the atmosphere. A sun that is
 * found late or early is told once, and the other checks then use the file's own time.
 * @param measured whether all three irradiances come from the file, so that their balance tells
 */
export function checkYear(year: TypicalYear, measured = true): Check[] {
  const sun = sunOf(year);
  const shift = findTimeShift(year, sun);
  const late = shift.confidence >= SURE && Math.abs(shift.minutes) > TOLD_SHIFT;
  const ownSun = late ? sunOf(year, shift.minutes) : sun;
  const checks = [checkTime(shift), checkNight(year.ghi, ownSun)];
  if (measured) checks.push(checkBalance(year, ownSun));
  checks.push(checkClearness(year.ghi, ownSun));
  return checks;
}

/** Whether the stamps agree with the sun, by the figure of findTimeShift. */
export function checkTime(shift: TimeShift): Check {
  if (shift.confidence < SURE) {
    return warned('time', 'There are too few clear days to hold the stamps against the sun.');
  }
  const minutes = Math.max(1, Math.round(Math.abs(shift.minutes)));
  const direction = shift.minutes > 0 ? 'late' : 'early';
  if (Math.abs(shift.minutes) <= TOLD_SHIFT) {
    return passed('time', `The stamps agree with the sun within ${minutes} min.`);
  }
  return warned(
    'time',
    `The sun in the file runs ${minutes} min ${direction} for this place: check the time zone, the longitude, and whether stamps mark the start or the end of their hour.`,
  );
}

/** Whether the nights are dark. */
export function checkNight(ghi: Float64Array, sun: SunYear): Check {
  let night = 0;
  let total = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    total += ghi[hour];
    if (sun.cosZenith[hour] === 0) night += ghi[hour];
  }
  if (night <= NIGHT_SHARE * total) return passed('night', 'The nights are dark.');
  return failed('night', {
    path: 'global horizontal irradiance',
    message: 'there is sun in the file while it is below the horizon',
    value: `${percent(night / total)} of the year's`,
    allowed: `up to ${percent(NIGHT_SHARE)}`,
    fix: 'Look whether this is the right column, and at the sign of the latitude, the longitude and the time zone.',
  });
}

/** Whether global irradiance is direct x sine of the altitude + diffuse. */
export function checkBalance(year: Pick<TypicalYear, 'ghi' | 'dni' | 'dhi'>, sun: SunYear): Check {
  let off = 0;
  let total = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const sum = year.dni[hour] * sun.cosZenith[hour] + year.dhi[hour];
    off += Math.abs(year.ghi[hour] - sum);
    total += year.ghi[hour];
  }
  const share = off / total;
  if (share > BALANCE_REFUSED) {
    return failed('balance', {
      path: 'global, direct and diffuse irradiance',
      message: 'do not add up',
      value: `${percent(share)} off`,
      allowed: `up to ${percent(BALANCE_REFUSED)}`,
      fix: 'Look whether two of the columns are swapped, or their units differ.',
    });
  }
  const sentence = `Global irradiance and the sum of direct and diffuse differ by ${percent(share)}.`;
  return share > BALANCE_TOLD ? warned('balance', sentence) : passed('balance', sentence);
}

/** Whether any month has more sun than reaches the top of the atmosphere over the place. */
export function checkClearness(ghi: Float64Array, sun: SunYear): Check {
  const file = new Float64Array(12);
  const outside = new Float64Array(12);
  for (let hour = 0; hour < HOURS; hour++) {
    const month = monthOfDay(Math.floor(hour / 24)) - 1;
    const up = (sun.hourStart[hour + 1] - sun.hourStart[hour]) / sun.stepsPerHour;
    file[month] += ghi[hour];
    outside[month] += sun.extraterrestrial[hour] * sun.cosZenith[hour] * up;
  }
  const clearness = file.map((sum, m) => (outside[m] > 0 ? sum / outside[m] : 0));
  const most = clearness.indexOf(Math.max(...clearness));
  const share = percent(clearness[most]);
  if (clearness[most] > CLEARNESS_REFUSED) {
    return failed('clearness', {
      path: 'global horizontal irradiance',
      message: `${monthNames[most]} has more sun than reaches the atmosphere above this latitude`,
      value: share,
      allowed: 'up to 100 %',
      fix: 'Look at the sign of the latitude, the order of the months, and the unit.',
    });
  }
  const sentence = `In the clearest month, ${monthNames[most]}, ${share} of the sun above the atmosphere arrives.`;
  return clearness[most] > CLEARNESS_TOLD
    ? warned('clearness', `${sentence} That is more than is usual anywhere.`)
    : passed('clearness', sentence);
}

function percent(share: number): string {
  const value = share * 100;
  return `${value < 10 ? Number(value.toFixed(1)) : Math.round(value)} %`;
}
