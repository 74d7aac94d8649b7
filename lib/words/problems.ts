import problems from '../../data/words/en/problems.json' with { type: 'json' };
import { rangesFrom, sayFrom } from '../problem/index.ts';

/** Sentences from the language file `problems`. */
export const sayProblem = /* @__PURE__ */ sayFrom('problems', problems);

/** Units of that file by their place in it. */
export type ProblemUnit = keyof typeof problems.unit;

/** `0 to 2 m`. */
export const problemRange = /* @__PURE__ */ rangesFrom<ProblemUnit>(sayProblem);

/** The sentences of that file. */
export type ProblemBook = typeof problems;
