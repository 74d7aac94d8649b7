import { OVERHANG_DEPTH, createRuns, facadeVerdicts, searchSets } from '../decide/index.ts';
import type { DecideOptions } from '../decide/index.ts';
import { createEngine } from '../study/index.ts';
import type { Engine } from '../study/index.ts';
import { casesOf } from './cases.ts';
import type { Decided, SureInput } from './question.ts';
import { plannedSeed, yearOfCase } from './weather.ts';

/** The part of a decision that is tried again: the smallest set and the verdicts, no tables. */
export function decidedFor(
  { project, library, weather }: SureInput,
  options: Omit<DecideOptions, 'onProgress'> = {},
  engine: Engine = createEngine(),
): Decided {
  const overhangDepth = options.overhangDepth ?? OVERHANG_DEPTH;
  const year = yearOfCase(weather, casesOf(plannedSeed(weather))[0]);
  const runs = createRuns(engine, { project, library, year });
  const { hemisphere } = runs;
  const sets = searchSets(engine, runs.input, { hemisphere, ...options });
  const verdicts = facadeVerdicts(runs, sets, { hemisphere, overhangDepth });
  return { verdicts, sets, overhangDepth };
}
