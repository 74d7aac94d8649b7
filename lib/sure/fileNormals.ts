import type { MonthlyNormals, TypicalYear } from '../climate/index.ts';
import { DAYS, daysInMonth, monthOfDay } from '../time/index.ts';

const kept = new WeakMap<TypicalYear, MonthlyNormals>();

/**
 * Monthly normals of an hourly year, days as the year counts them: means, mean daily extremes and
 * the spread of the daily mean temperature. Kept, as every synthesised year asks for them.
 */
export function normalsOfYear(year: TypicalYear): MonthlyNormals {
  let normals = kept.get(year);
  if (!normals) kept.set(year, (normals = makeNormals(year)));
  return normals;
}

function makeNormals({ ghi, dni, dhi, dryBulb, wind }: TypicalYear): MonthlyNormals {
  const day = (values: Float64Array, d: number) => values.subarray(24 * d, 24 * d + 24);
  const sum = (values: Float64Array) => values.reduce((total, v) => total + v, 0);
  const perMonth = (ofDay: (d: number) => number) => {
    const totals = new Array<number>(12).fill(0);
    for (let d = 0; d < DAYS; d++) totals[monthOfDay(d) - 1] += ofDay(d);
    return totals.map((total, m) => total / daysInMonth[m]);
  };
  const mean = (d: number) => sum(day(dryBulb, d)) / 24;
  const means = perMonth(mean);
  const squares = perMonth((d) => (mean(d) - means[monthOfDay(d) - 1]) ** 2);
  return {
    ghiKWhPerM2Day: perMonth((d) => sum(day(ghi, d)) / 1000),
    dhiKWhPerM2Day: perMonth((d) => sum(day(dhi, d)) / 1000),
    dniKWhPerM2Day: perMonth((d) => sum(day(dni, d)) / 1000),
    dryBulbMean: means,
    dryBulbDailyMin: perMonth((d) => Math.min(...day(dryBulb, d))),
    dryBulbDailyMax: perMonth((d) => Math.max(...day(dryBulb, d))),
    dailyMeanTempStd: squares.map(Math.sqrt),
    wind: perMonth((d) => sum(day(wind, d)) / 24),
  };
}
