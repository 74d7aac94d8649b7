import type { VerdictKind } from '../decide/index.ts';
import type { SureCase } from './cases.ts';
import { leftOut } from './leftOut.ts';
import { intervalOf } from './quantile.ts';
import type { Interval } from './quantile.ts';
import type { SureQuestion } from './question.ts';
import type { CaseFigures, CaseResult, FacadeCase } from './runCase.ts';

/** Spread of a figure over the typical years, and over all cases. */
export interface Spread {
  years: Interval;
  all: Interval;
}

/** Spreads of the figures of a facade or the house. */
export interface FigureSpreads {
  hours: Spread;
  /** kWh each. */
  summerGain: Spread;
  winterLost: Spread;
  heatingKWh: Spread;
}

/** A case in which a verdict comes out another way. */
export interface Flip {
  case: string;
  words: string;
  kind: VerdictKind;
}

/** How sure the verdict on one facade is. */
export interface FacadeSure {
  facade: string;
  /** The verdict in the planned year. */
  kind: VerdictKind;
  /** Share of the cases that come to the same verdict, 0 to 1. */
  agreement: number;
  /** Some case comes to another one. */
  closeCall: boolean;
  flips: Flip[];
  /** How often each verdict comes out. */
  counts: Partial<Record<VerdictKind, number>>;
  bare: FigureSpreads;
  external: FigureSpreads;
}

/** How sure it all is; plain data. */
export interface SureFindings {
  cases: SureCase[];
  facades: FacadeSure[];
  /** The house as planned. */
  house: FigureSpreads;
  rooms: {
    id: string;
    hours: Spread;
    /** The figure the criterion judges. */
    value: Spread;
    /** Share of the cases in which it keeps its criterion, 0 to 1. */
    kept: number;
    /** Cases in which it breaks it. */
    broken: string[];
  }[];
  /** What the model leaves out, in sentences. */
  leftOut: string[];
}

/** What the results are of: a question, or as much of it as is told about. */
export interface Asked {
  project: Pick<SureQuestion['project'], 'rooms'>;
  weather: Pick<SureQuestion['weather'], 'kind'>;
  facades: readonly Pick<SureQuestion['facades'][number], 'facade' | 'kind'>[];
}

/**
 * Puts the results of all cases together, the same in whatever order they came.
 * @throws Error where a case has no result
 */
export function summarise(
  question: Asked,
  cases: readonly SureCase[],
  results: readonly CaseResult[],
): SureFindings {
  const byId = new Map(results.map((r) => [r.id, r]));
  const inOrder = cases.map(({ id }) => {
    const result = byId.get(id);
    if (!result) throw new Error(`Case ${id} has no result`);
    return result;
  });
  const isYear = cases.map(({ kind }) => kind === 'plan' || kind === 'year');
  const spread = (values: readonly number[]): Spread => ({
    years: intervalOf(values.filter((_, i) => isYear[i])),
    all: intervalOf(values),
  });
  const spreads = (of: readonly CaseFigures[]): FigureSpreads => ({
    hours: spread(of.map((f) => f.hours)),
    summerGain: spread(of.map((f) => f.summerGain)),
    winterLost: spread(of.map((f) => f.winterLost)),
    heatingKWh: spread(of.map((f) => f.heatingKWh)),
  });
  return {
    cases: [...cases],
    facades: question.facades.map(({ facade, kind }, i): FacadeSure => {
      const own = inOrder.map((result) => result.facades[i]);
      return {
        facade,
        kind,
        ...agreementOf(kind, cases, own),
        bare: spreads(own.map((f) => f.bare)),
        external: spreads(own.map((f) => f.external)),
      };
    }),
    house: spreads(inOrder.map((r) => r.house)),
    rooms: question.project.rooms.map(({ id }, i) => {
      const own = inOrder.map((r) => r.rooms[i]);
      return {
        id,
        hours: spread(own.map((r) => r.hours)),
        value: spread(own.map((r) => r.value)),
        kept: own.filter((r) => r.kept).length / own.length,
        broken: cases.filter((_, c) => !own[c].kept).map((c) => c.id),
      };
    }),
    leftOut: leftOut(question.weather),
  };
}

function agreementOf(
  kind: VerdictKind,
  cases: readonly SureCase[],
  own: readonly FacadeCase[],
): Pick<FacadeSure, 'agreement' | 'closeCall' | 'flips' | 'counts'> {
  const counts: FacadeSure['counts'] = {};
  for (const result of own) counts[result.kind] = (counts[result.kind] ?? 0) + 1;
  const flips = cases.flatMap(({ id, words }, i): Flip[] =>
    own[i].kind === kind ? [] : [{ case: id, words, kind: own[i].kind }],
  );
  return {
    agreement: 1 - flips.length / cases.length,
    closeCall: flips.length > 0,
    flips,
    counts,
  };
}
