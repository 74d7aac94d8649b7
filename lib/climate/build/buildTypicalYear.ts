import { InputError, monthText, problem } from '../../problem/index.ts';
import type { Problem, Text } from '../../problem/index.ts';
import { daysInMonth } from '../../time/index.ts';
import type { MonthlyNormals, TypicalYear } from '../types.ts';
import { listed, rangeText, say } from './say.ts';
import type { RangeUnit } from './say.ts';
import { dailyClearness } from './dailyClearness.ts';
import { dailyTemperature } from './dailyTemperature.ts';
import { usualTemperatureSpread } from './defaults.ts';
import { hourlyGlobal } from './hourlyClearness.ts';
import { monthStart } from './months.ts';
import { shapeProblems, sunProblems } from './normals.ts';
import { gaussianFrom, randomStream } from './random.ts';
import { splitYear } from './split.ts';
import { sunHours } from './sunHours.ts';
import type { SunHours } from './sunHours.ts';
import { sunTargets } from './targets.ts';
import { hourlyTemperature } from './temperature.ts';
import { hourlyWind } from './wind.ts';

export interface BuildPlace {
  /** Degrees, north positive. */
  latitude: number;
  /** Degrees, east positive. */
  longitude: number;
  /** Metres above sea level. */
  elevation: number;
  /** Standard time, hours east of UTC. */
  standardOffset: number;
  name: string;
}

export interface BuildOptions {
  /** Whole number, 0 to 4294967295; the same seed gives the same year. 1 where absent. */
  seed?: number;
  /** Added to every temperature, K, -20 to 20. */
  warmer?: number;
  /** Factor on the clearness, 0.5 to 1.5, as far as the sun allows. */
  sunnier?: number;
}

/** Wind where the normals give none, m/s. */
const USUAL_WIND = 3;

/**
 * Builds a typical year from monthly normals: 8,760 hours of sun, temperature and wind, the same for
 * the same seed. Monthly global (and diffuse and direct normal where given), mean temperature and
 * mean daily minimum and maximum are kept; hours obey ghi = dni cos z + dhi. The year starts at 00:00
 * standard time.
 *
 * Normals do not say whether mornings or afternoons are the clearer, so east and west get the same
 * cloud: where fog or thunder keep to one half of the day, a wall's month may be 15 percent off.
 *
 * @throws InputError naming the month, the value and what is allowed
 */
export function buildTypicalYear(
  normals: MonthlyNormals,
  place: BuildPlace,
  options: BuildOptions = {},
): TypicalYear {
  const { seed = 1, warmer = 0, sunnier = 1 } = options;
  refuse([...placeProblems(place), ...optionProblems(seed, warmer, sunnier)]);
  refuse(shapeProblems(normals));
  const startUtc = 0 - place.standardOffset;
  const sun = sunHours(place, startUtc, normals.dryBulbDailyMin);
  const outside = monthlyMeans(sun);
  const outsideKWh = outside.map((x) => x / 1000);
  refuse(sunProblems(normals, outsideKWh));

  const stream = (n: number) => gaussianFrom(randomStream(seed, n));
  const solarOffset = startUtc + place.longitude / 15;
  const targets = sunTargets(normals, outside, sunnier);
  const days = dailyClearness(sun, targets.ghi, targets.spread, stream(0));
  const ghi = hourlyGlobal(sun, days, stream(1));
  const split = splitYear(sun, ghi, solarOffset, targets);
  const dayTemperature = dailyTemperature(
    normals.dryBulbMean,
    normals.dailyMeanTempStd ?? usualTemperatureSpread(normals.dryBulbMean),
    { score: days.score, relative: days.relative, outside: outsideKWh },
    stream(2),
  );
  const dryBulb = hourlyTemperature(
    dayTemperature,
    normals.dryBulbDailyMin,
    normals.dryBulbDailyMax,
    solarOffset,
    stream(4),
  );
  if (warmer !== 0) for (let i = 0; i < dryBulb.length; i++) dryBulb[i] += warmer;
  const meanWind = normals.wind ?? new Array<number>(12).fill(USUAL_WIND);

  return {
    source: { kind: 'normals', name: place.name, note: say('normals.built.note') },
    latitude: place.latitude,
    longitude: place.longitude,
    elevation: place.elevation,
    startUtc,
    ghi,
    dni: split.dni,
    dhi: split.dhi,
    dryBulb,
    wind: hourlyWind(meanWind, outsideKWh, solarOffset, stream(3)),
    messages: messages(seed, warmer, sunnier, targets.held, split.missed),
  };
}

function messages(
  seed: number,
  warmer: number,
  sunnier: number,
  held: readonly number[],
  missed: readonly number[],
): Text[] {
  const list = [say('normals.built.seed', { seed })];
  const named = (months: readonly number[]) => listed(months.map((m) => monthText(m + 1)));
  if (warmer !== 0) list.push(say('normals.built.warmer', { warmer }));
  if (sunnier !== 1) list.push(say('normals.built.sunnier', { sunnier }));
  if (held.length) list.push(say('normals.built.held', { months: named(held) }));
  if (missed.length) list.push(say('normals.built.missed', { months: named(missed) }));
  return list;
}

/** Monthly mean of the days' irradiation outside the atmosphere, Wh/m2. */
function monthlyMeans(sun: SunHours): number[] {
  return daysInMonth.map((count, m) => {
    let sum = 0;
    for (let day = monthStart[m]; day < monthStart[m + 1]; day++) sum += sun.outsideDay[day];
    return sum / count;
  });
}

function refuse(problems: Problem[]): void {
  if (problems.length > 0) throw new InputError(problems);
}

function placeProblems(place: BuildPlace): Problem[] {
  return [
    ...range('latitude', place.latitude, -90, 90, 'degrees'),
    ...range('longitude', place.longitude, -180, 180, 'degrees'),
    ...range('elevation', place.elevation, -450, 6000, 'm'),
    ...range('standardOffset', place.standardOffset, -12, 14, 'eastOfUtc'),
  ];
}

function optionProblems(seed: number, warmer: number, sunnier: number): Problem[] {
  return [
    ...range('seed', Number.isInteger(seed) ? seed : NaN, 0, 4294967295, 'whole'),
    ...range('warmer', warmer, -20, 20, 'K'),
    ...range('sunnier', sunnier, 0.5, 1.5),
  ];
}

function range(
  path: string,
  value: number,
  min: number,
  max: number,
  unit?: RangeUnit | 'whole',
): Problem[] {
  if (value >= min && value <= max) return [];
  const allowed = unit === 'whole' ? say('normals.whole', { min, max }) : rangeText(min, max, unit);
  const texts = { message: say('normals.outOfRange'), allowed, fix: say('normals.outOfRangeFix') };
  return [problem(path, texts, value)];
}
