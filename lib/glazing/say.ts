import entry from '../../data/words/en/entry.json' with { type: 'json' };
import { rangesFrom, sayFrom } from '../problem/index.ts';
import type { TextKey } from '../problem/index.ts';

/** Sentences from the language file `entry`, which is small enough for the page itself. */
export const say = /* @__PURE__ */ sayFrom('entry', entry);

/** Units by their place in the language file. */
export type RangeUnit = keyof typeof entry.unit;

/** `0 to 2 m`. */
export const rangeText = /* @__PURE__ */ rangesFrom<RangeUnit>(say);

/** Places of the sentences about glazings. */
export type SentenceKey = TextKey<typeof entry.glazing>;
