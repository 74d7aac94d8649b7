import { monthText, problem } from '../../problem/index.ts';
import type { Problem } from '../../problem/index.ts';
import { buildSunYear } from '../../sun/index.ts';
import { HOURS, STEPS_PER_HOUR, daysInMonth } from '../../time/index.ts';
import type { MonthlyNormals } from '../types.ts';
import { rangeText, say, valueText } from './say.ts';
import type { RangeUnit } from './say.ts';
import { monthOfDayIndex } from './months.ts';

/** Most of the extraterrestrial that a month can get at the ground; dry highlands come near it. */
export const MOST_MONTHLY_CLEARNESS = 0.85;

/** Sun that rounding and twilight may leave in a month above that, kWh/m2 a day. */
const SLACK = 0.02;

interface Field {
  name: keyof MonthlyNormals;
  min: number;
  max: number;
  unit?: RangeUnit;
  optional: boolean;
}

const FIELDS: readonly Field[] = [
  { name: 'ghiKWhPerM2Day', min: 0, max: 14, unit: 'sunADay', optional: false },
  { name: 'dryBulbMean', min: -80, max: 50, unit: 'C', optional: false },
  { name: 'dryBulbDailyMin', min: -90, max: 50, unit: 'C', optional: false },
  { name: 'dryBulbDailyMax', min: -80, max: 60, unit: 'C', optional: false },
  { name: 'wind', min: 0, max: 30, unit: 'm/s', optional: true },
  { name: 'dhiKWhPerM2Day', min: 0, max: 10, unit: 'sunADay', optional: true },
  { name: 'dniKWhPerM2Day', min: 0, max: 16, unit: 'sunADay', optional: true },
  { name: 'dailyMeanTempStd', min: 0, max: 20, unit: 'K', optional: true },
  { name: 'dailyClearnessStd', min: 0, max: 0.5, optional: true },
];

/**
 * What is wrong with monthly normals: twelve values each, their ranges, minimum under mean under
 * maximum, diffuse not over global, and, where the latitude is given, global not over what the sun
 * outside the atmosphere allows.
 * @param latitude degrees, north positive
 */
export function normalsProblems(normals: MonthlyNormals, latitude?: number): Problem[] {
  const problems = shapeProblems(normals);
  if (problems.length > 0 || latitude === undefined) return problems;
  return sunProblems(normals, monthlyExtraterrestrial(latitude));
}

/** Problems that need no sun: counts, ranges and order. */
export function shapeProblems(normals: MonthlyNormals): Problem[] {
  const problems = FIELDS.flatMap((field) => fieldProblems(normals, field));
  if (problems.length > 0) return problems;
  const { dryBulbMean: mean, dryBulbDailyMin: min, dryBulbDailyMax: max } = normals;
  for (let m = 0; m < 12; m++) {
    const month = monthText(m + 1);
    if (!(min[m] < mean[m] && mean[m] < max[m])) {
      problems.push(
        problem(`dryBulbMean[${m}]`, {
          message: say('normals.order', { month }),
          value: valueText(mean[m], 'C'),
          allowed: say('normals.between', { least: min[m], most: max[m] }),
          fix: say('normals.orderFix'),
        }),
      );
    }
    const global = normals.ghiKWhPerM2Day[m];
    const diffuse = normals.dhiKWhPerM2Day?.[m];
    if (diffuse !== undefined && diffuse > global + 0.005) {
      problems.push(
        problem(`dhiKWhPerM2Day[${m}]`, {
          message: say('normals.diffuse', { month }),
          value: valueText(diffuse, 'sunADay'),
          allowed: rangeText(0, global, 'sunADay'),
          fix: say('normals.diffuseFix'),
        }),
      );
    }
  }
  return problems;
}

function fieldProblems(normals: MonthlyNormals, field: Field): Problem[] {
  const values: unknown = normals[field.name];
  const { min, max, unit } = field;
  const range = rangeText(min, max, unit);
  if (values === undefined && field.optional) return [];
  if (!Array.isArray(values) || values.length !== 12) {
    const texts = {
      message: say('normals.twelve'),
      allowed: say('normals.twelveAllowed', { range }),
      fix: say(field.optional ? 'normals.twelveOrNone' : 'normals.twelveFix'),
    };
    if (!Array.isArray(values)) return [problem(field.name, texts, values)];
    const value = say('normals.values', { figure: values.length });
    return [problem(field.name, { ...texts, value })];
  }
  return values.flatMap((value: unknown, m) => {
    if (typeof value === 'number' && value >= min && value <= max) return [];
    const texts = {
      message: say('normals.month', { month: monthText(m + 1) }),
      allowed: range,
      fix: say('normals.monthFix'),
    };
    return problem(`${field.name}[${m}]`, texts, value);
  });
}

/**
 * Months with more global than the sun allows.
 * @param outside monthly mean of daily extraterrestrial irradiation, kWh/m2; 12 values
 */
export function sunProblems(normals: MonthlyNormals, outside: ArrayLike<number>): Problem[] {
  return normals.ghiKWhPerM2Day.flatMap((value, m) => {
    const most = mostGlobal(outside[m]);
    if (value <= most) return [];
    return problem(`ghiKWhPerM2Day[${m}]`, {
      message: say('normals.sun', { month: monthText(m + 1) }),
      value: valueText(Number(value.toFixed(4)), 'sunADay'),
      allowed: rangeText(0, Math.floor(most * 100) / 100, 'sunADay'),
      fix: say('normals.sunFix'),
    });
  });
}

const mostGlobal = (outside: number) => MOST_MONTHLY_CLEARNESS * outside + SLACK;

/** Monthly mean of daily extraterrestrial horizontal irradiation at a latitude, kWh/m2; 12 values. */
function monthlyExtraterrestrial(latitude: number): Float64Array {
  const sun = buildSunYear({ latitude, longitude: 0 }, 2026, 0);
  const months = new Float64Array(12);
  for (let hour = 0; hour < HOURS; hour++) {
    const m = monthOfDayIndex[Math.floor(hour / 24)];
    const upShare = (sun.hourStart[hour + 1] - sun.hourStart[hour]) / STEPS_PER_HOUR;
    months[m] +=
      (sun.extraterrestrial[hour] * sun.cosZenith[hour] * upShare) / 1000 / daysInMonth[m];
  }
  return months;
}
