import type { TypicalYear } from '../climate/index.ts';
import { StageCache, createEngine } from '../study/index.ts';
import type { Engine } from '../study/index.ts';
import { casesOf } from './cases.ts';
import type { CaseOptions, SureCase } from './cases.ts';
import { questionOf } from './question.ts';
import type { Decided, SureInput, SureQuestion } from './question.ts';
import { runCase } from './runCase.ts';
import type { CaseResult } from './runCase.ts';
import { summarise } from './summarise.ts';
import type { SureFindings } from './summarise.ts';
import { plannedSeed, yearOfCase } from './weather.ts';

/** Results kept while cases are run: the stages of a year or two. */
const KEPT = 320;

/** Runs the cases of one question; keeps the engine and the last year warm. */
export type CaseRunner = (circumstances: SureCase) => CaseResult;

export function caseRunner(
  question: SureQuestion,
  engine: Engine = createEngine(new StageCache(KEPT)),
): CaseRunner {
  let last: { key: string; year: TypicalYear } | undefined;
  return (circumstances) => {
    const { seed, warmer, sunnier } = circumstances;
    const key = JSON.stringify([seed, warmer, sunnier]);
    if (last?.key !== key) last = { key, year: yearOfCase(question.weather, circumstances) };
    return runCase(question, circumstances, engine, last.year);
  };
}

/** How sure a decision is, all cases one after another. */
export function howSure(
  input: SureInput,
  decided: Decided,
  options: CaseOptions = {},
  engine?: Engine,
): SureFindings {
  const question = questionOf(input, decided);
  const cases = casesOf(plannedSeed(input.weather), options);
  return summarise(question, cases, cases.map(caseRunner(question, engine)));
}
