import { InputError, problem } from '../problem/index.ts';
import { sayProblem as say } from '../words/index.ts';

/** One set of circumstances the house is run under; plain data. */
export interface SureCase {
  id: string;
  /** What is different from the plan, in a few words. */
  words: string;
  kind: CaseKind;
  /** Number of the synthesised year; absent: the year of the weather file itself. */
  seed?: number;
  /** Every hour warmer by this, K. */
  warmer: number;
  /** Factor on the sun. */
  sunnier: number;
  /** Factor on the g-value and solar transmittance of every glazing. */
  glass: number;
  /** Factor on what lowered blinds let through (`toleratedBlind`). */
  blind: number;
  /** Hand-moved blinds stay up on one day in five. */
  forgetful: boolean;
}

/** `plan` is the first case; the others differ from it in one thing. */
export type CaseKind = 'plan' | 'year' | 'climate' | 'glass' | 'blind' | 'occupants';

/** Least number of typical years. */
export const LEAST_YEARS = 20;
const MOST_YEARS = 200;

/** Years a degree or two warmer, with as much sun or a little more (our own choice). */
const CLIMATES = [
  { warmer: 1, sunnier: 1 },
  { warmer: 2, sunnier: 1 },
  { warmer: 0, sunnier: 1.05 },
  { warmer: 2, sunnier: 1.05 },
] as const;

/** Tolerance of a declared g-value, as a factor either way (common practice: 0.02 to 0.03 of 0.5). */
export const GLASS_TOLERANCE = 0.05;
/**
 * Tolerance of what a lowered blind lets through, as a factor either way: cloth from another roll,
 * dirt, slats that stop a few degrees short (common practice).
 */
export const BLIND_TOLERANCE = 0.2;

export interface CaseOptions {
  /** Typical years in all, LEAST_YEARS to 200; LEAST_YEARS where absent. */
  years?: number;
}

/**
 * The cases a decision is tried in: typical years of the same normals with different seeds, warmer
 * and sunnier ones, glass and blinds off their data sheet either way, and occupants who forget.
 *
 * @param seed seed of the planned year; absent where the year is of an hourly file, which is then
 * the first case with the synthesised years after it
 * @throws InputError for too few or too many years
 */
export function casesOf(seed: number | undefined, options: CaseOptions = {}): SureCase[] {
  const years = options.years ?? LEAST_YEARS;
  checkYears(years);
  const plan: SureCase = {
    id: 'plan',
    words: seed === undefined ? 'the year of the file' : `year ${seed}, as planned`,
    kind: 'plan',
    seed,
    warmer: 0,
    sunnier: 1,
    glass: 1,
    blind: 1,
    forgetful: false,
  };
  const other = (id: string, words: string, kind: CaseKind, change: Partial<SureCase>) => ({
    ...plan,
    id,
    words,
    kind,
    ...change,
  });
  return [
    plan,
    ...Array.from({ length: years - 1 }, (_, i) => {
      const next = ((seed ?? 0) + 1 + i) % 2 ** 32;
      return other(`year-${next}`, `year ${next}`, 'year', {
        seed: next,
      });
    }),
    ...CLIMATES.map(({ warmer, sunnier }) =>
      other(`climate-${warmer}-${sunnier}`, climateWords(warmer, sunnier), 'climate', {
        warmer,
        sunnier,
      }),
    ),
    ...[1 - GLASS_TOLERANCE, 1 + GLASS_TOLERANCE].map((glass) =>
      other(`glass-${glass}`, `g-value of the glass ${percent(glass)}`, 'glass', { glass }),
    ),
    ...[1 - BLIND_TOLERANCE, 1 + BLIND_TOLERANCE].map((blind) =>
      other(`blind-${blind}`, `lowered blinds let through ${percent(blind)}`, 'blind', { blind }),
    ),
    other('forgetful', 'hand-moved blinds stay up one day in five', 'occupants', {
      forgetful: true,
    }),
  ];
}

function climateWords(warmer: number, sunnier: number): string {
  const parts = [
    ...(warmer > 0 ? [`${warmer} K warmer`] : []),
    ...(sunnier !== 1 ? [`${percent(sunnier)} sun`] : []),
  ];
  return parts.join(', ');
}

function percent(factor: number): string {
  const by = Math.round((factor - 1) * 100);
  return `${by > 0 ? '+' : ''}${by} %`;
}

function checkYears(years: number): void {
  if (Number.isInteger(years) && years >= LEAST_YEARS && years <= MOST_YEARS) return;
  const texts = {
    message: say('sure.years'),
    allowed: say('sure.yearsAllowed', { least: LEAST_YEARS, most: MOST_YEARS }),
    fix: say('sure.yearsFix', { least: LEAST_YEARS }),
  };
  throw new InputError(problem('years', texts, years));
}
