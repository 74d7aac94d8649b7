import { showValue } from '../../problem/index.ts';
import type { Problem } from '../../problem/index.ts';
import { buildSunYear } from '../../sun/index.ts';
import { HOURS, STEPS_PER_HOUR, daysInMonth } from '../../time/index.ts';
import type { MonthlyNormals } from '../types.ts';
import { monthNames, monthOfDayIndex } from './months.ts';

/** Most of the extraterrestrial that a month can get at the ground; dry highlands come near it. */
export const MOST_MONTHLY_CLEARNESS = 0.85;

/** Sun that rounding and twilight may leave in a month above that, kWh/m2 a day. */
const SLACK = 0.02;

interface Field {
  name: keyof MonthlyNormals;
  min: number;
  max: number;
  unit: string;
  optional: boolean;
}

const FIELDS: readonly Field[] = [
  { name: 'ghiKWhPerM2Day', min: 0, max: 14, unit: 'kWh/m2 a day', optional: false },
  { name: 'dryBulbMean', min: -80, max: 50, unit: 'C', optional: false },
  { name: 'dryBulbDailyMin', min: -90, max: 50, unit: 'C', optional: false },
  { name: 'dryBulbDailyMax', min: -80, max: 60, unit: 'C', optional: false },
  { name: 'wind', min: 0, max: 30, unit: 'm/s', optional: true },
  { name: 'dhiKWhPerM2Day', min: 0, max: 10, unit: 'kWh/m2 a day', optional: true },
  { name: 'dniKWhPerM2Day', min: 0, max: 16, unit: 'kWh/m2 a day', optional: true },
  { name: 'dailyMeanTempStd', min: 0, max: 20, unit: 'K', optional: true },
  { name: 'dailyClearnessStd', min: 0, max: 0.5, unit: '', optional: true },
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
    const month = monthNames[m];
    if (!(min[m] < mean[m] && mean[m] < max[m])) {
      problems.push({
        path: `dryBulbMean[${m}]`,
        message: `The ${month} mean does not lie between the mean daily minimum and maximum`,
        value: `${mean[m]} C`,
        allowed: `over ${min[m]} and under ${max[m]} C`,
        fix: 'Check that the three temperatures belong to the same month and unit.',
      });
    }
    const diffuse = normals.dhiKWhPerM2Day?.[m];
    if (diffuse !== undefined && diffuse > normals.ghiKWhPerM2Day[m] + 0.005) {
      problems.push({
        path: `dhiKWhPerM2Day[${m}]`,
        message: `The ${month} diffuse is more than the global`,
        value: `${diffuse} kWh/m2 a day`,
        allowed: `0 to ${normals.ghiKWhPerM2Day[m]} kWh/m2 a day`,
        fix: 'Diffuse is a part of the global: check which column is which.',
      });
    }
  }
  return problems;
}

function fieldProblems(normals: MonthlyNormals, field: Field): Problem[] {
  const values: unknown = normals[field.name];
  const unit = field.unit ? ` ${field.unit}` : '';
  if (values === undefined && field.optional) return [];
  if (!Array.isArray(values) || values.length !== 12) {
    return [
      {
        path: field.name,
        message: 'Twelve values are needed, January to December',
        value: Array.isArray(values) ? `${values.length} values` : showValue(values),
        allowed: `12 values of ${field.min} to ${field.max}${unit}`,
        fix: field.optional ? 'Give all twelve or leave it out.' : 'Give one value a month.',
      },
    ];
  }
  return values.flatMap((value: unknown, m) =>
    typeof value === 'number' && value >= field.min && value <= field.max
      ? []
      : {
          path: `${field.name}[${m}]`,
          message: `The ${monthNames[m]} value is out of range`,
          value: showValue(value),
          allowed: `${field.min} to ${field.max}${unit}`,
          fix: 'Check the value and its unit.',
        },
  );
}

/**
 * Months with more global than the sun allows.
 * @param outside monthly mean of daily extraterrestrial irradiation, kWh/m2; 12 values
 */
export function sunProblems(normals: MonthlyNormals, outside: ArrayLike<number>): Problem[] {
  return normals.ghiKWhPerM2Day.flatMap((value, m) => {
    const most = mostGlobal(outside[m]);
    if (value <= most) return [];
    return {
      path: `ghiKWhPerM2Day[${m}]`,
      message: `The ${monthNames[m]} global is more than the sun gives at this latitude`,
      value: `${Number(value.toFixed(4))} kWh/m2 a day`,
      allowed: `0 to ${Math.floor(most * 100) / 100} kWh/m2 a day`,
      fix: 'Check the unit (a mean day, not the month), the month and the latitude.',
    };
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
