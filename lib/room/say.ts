import problems from '../../data/words/en/problems.json' with { type: 'json' };
import { rangesFrom, sayFrom } from '../problem/index.ts';
import type { TextKey } from '../problem/index.ts';

/** Sentences from the language file `problems`. */
export const say = /* @__PURE__ */ sayFrom('problems', problems);

/** Units by their place in the language file. */
export type RangeUnit = keyof typeof problems.unit;

/** `0 to 2 m`. */
export const rangeText = /* @__PURE__ */ rangesFrom<RangeUnit>(say);

/** Places of the sentences about rooms. */
export type SentenceKey = TextKey<typeof problems.room>;
