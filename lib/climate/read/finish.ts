import { InputError, figureText, problem } from '../../problem/index.ts';
import type { Text } from '../../problem/index.ts';
import { HOURS } from '../../time/index.ts';
import type { TypicalYear } from '../types.ts';
import { say } from '../say.ts';
import { refuseWeakGlobal } from './ranges.ts';
import { sunOf } from './sun.ts';
import type { YearPlace } from './sun.ts';
import type { FileYear, Quantity, RawYear } from './types.ts';

/** Wind speed where a file has none, m/s (common practice for sheltered sites). */
const USUAL_WIND = 3;
/** Below this sine of the altitude (3 degrees) a beam is not worked out from a difference. */
const LOWEST_SUN = 0.052;

/** What a split of global irradiance is given. */
export type GlobalYear = YearPlace & { elevation: number; ghi: Float64Array };

/**
 * Splits a year of global horizontal irradiance.
 * @returns direct normal and diffuse horizontal irradiance, W/m2, 8,760 values each
 */
export type SplitGlobal = (year: GlobalYear) => { dni: Float64Array; dhi: Float64Array };

/** A finished year, and whether its three irradiances were all measured. */
export interface FinishedYear {
  year: TypicalYear;
  /** All three irradiances come from the file, so that they can be held against each other. */
  measured: boolean;
}

/**
 * Turns the hours so that the year starts at the site's own midnight, and works out what the file
 * leaves out: the third irradiance from the other two (global = direct x sine of the altitude +
 * diffuse), direct and diffuse from global alone by `split`, wind by 3 m/s.
 * @throws InputError where the irradiances do not suffice
 */
export function finishYear(raw: RawYear, file: FileYear, split?: SplitGlobal): FinishedYear {
  const messages: Text[] = [];
  if (file.leapDayCut) messages.push(say('note.leapDay'));
  const ahead = Math.round(file.start - raw.utcOffset + raw.standardOffset);
  const startUtc = Math.round((file.start - raw.utcOffset - ahead) * 1e4) / 1e4;
  const moved = signedTurn(ahead + file.firstHour);
  if (moved !== 0) messages.push(turnedSentence(moved));

  const turned = (values: Float64Array | undefined) => values && roll(values, ahead);
  const { ghi, dni, dhi } = file.values;
  const place = {
    latitude: raw.latitude,
    longitude: raw.longitude,
    elevation: raw.elevation,
    startUtc,
  };
  const measured = Boolean(ghi && dni && dhi);
  const irradiance = complete(
    { ghi: turned(ghi), dni: turned(dni), dhi: turned(dhi) },
    place,
    messages,
    split,
  );
  const dryBulb = turned(file.values.dryBulb);
  if (!dryBulb) throw missing('dryBulb');
  let wind = turned(file.values.wind);
  if (!wind) {
    wind = new Float64Array(HOURS).fill(USUAL_WIND);
    messages.push(say('made.wind', { speed: USUAL_WIND }));
  }
  return {
    year: { source: raw.source, ...place, ...irradiance, dryBulb, wind, messages },
    measured,
  };
}

/** Row `i` of the file becomes hour `i + ahead` of the year. */
function roll(values: Float64Array, ahead: number): Float64Array {
  const by = ((ahead % HOURS) + HOURS) % HOURS;
  if (by === 0) return values;
  const result = new Float64Array(HOURS);
  result.set(values.subarray(HOURS - by), 0);
  result.set(values.subarray(0, HOURS - by), by);
  return result;
}

/** A turn of the year by the shorter way. */
function signedTurn(hours: number): number {
  return hours - HOURS * Math.round(hours / HOURS);
}

function turnedSentence(moved: number): Text {
  const count = Math.abs(moved);
  const values = { count, figure: figureText(count) };
  return say(moved > 0 ? 'note.endToStart' : 'note.startToEnd', values);
}

interface Irradiance {
  ghi: Float64Array;
  dni: Float64Array;
  dhi: Float64Array;
}

function complete(
  given: Partial<Irradiance>,
  place: Omit<GlobalYear, 'ghi'>,
  messages: Text[],
  split: SplitGlobal | undefined,
): Irradiance {
  const { ghi, dni, dhi } = given;
  const told = (made: 'dhi' | 'dni' | 'ghi' | 'both') => messages.push(say(`made.${made}`));
  if (ghi && dni && dhi) return { ghi, dni, dhi };
  if (ghi && dni) {
    told('dhi');
    return { ghi, dni, dhi: diffuseFrom(ghi, dni, place) };
  }
  if (ghi && dhi) {
    told('dni');
    return { ghi, dhi, dni: directFrom(ghi, dhi, place) };
  }
  if (dni && dhi) {
    told('ghi');
    const sum = globalFrom(dni, dhi, place);
    refuseWeakGlobal(sum, say('quantity.sum'));
    return { dni, dhi, ghi: sum };
  }
  if (!ghi) throw missing('ghi', dni ? 'dhi' : 'dni');
  if (!split) throw missing('dni', 'dhi');
  told('both');
  return { ghi, ...split({ ...place, ghi }) };
}

// The sine of the altitude is the mean over the part of the hour with the sun up: a beam that
// shines for a part of the hour shines in that part.

function diffuseFrom(ghi: Float64Array, dni: Float64Array, place: YearPlace): Float64Array {
  const { cosZenith } = sunOf(place);
  return ghi.map((g, i) => Math.max(0, g - dni[i] * cosZenith[i]));
}

function directFrom(ghi: Float64Array, dhi: Float64Array, place: YearPlace): Float64Array {
  const { cosZenith, extraterrestrial } = sunOf(place);
  return ghi.map((g, i) => {
    if (cosZenith[i] < LOWEST_SUN) return 0;
    return Math.min(extraterrestrial[i], Math.max(0, (g - dhi[i]) / cosZenith[i]));
  });
}

function globalFrom(dni: Float64Array, dhi: Float64Array, place: YearPlace): Float64Array {
  const { cosZenith } = sunOf(place);
  return dhi.map((d, i) => d + dni[i] * cosZenith[i]);
}

function missing(first: Quantity, second?: Quantity): InputError {
  const quantity = say(`quantity.${first}`);
  const message = second
    ? say('column.missingTwo', { first: quantity, second: say(`quantity.${second}`) })
    : say('column.missing', { quantity });
  const texts = { message, allowed: say('column.missingAllowed'), fix: say('column.missingFix') };
  return new InputError(problem(say('where.columns'), texts));
}
