import entry from '../../data/words/en/entry.json' with { type: 'json' };
import { rangesFrom, sayFrom } from '../problem/index.ts';

/** Sentences from the language file `entry`, which is small enough for the page itself. */
export const sayEntry = /* @__PURE__ */ sayFrom('entry', entry);

/** Units of that file by their place in it. */
export type EntryUnit = keyof typeof entry.unit;

/** `0 to 2 m`. */
export const entryRange = /* @__PURE__ */ rangesFrom<EntryUnit>(sayEntry);

/** The sentences of that file. */
export type EntryBook = typeof entry;
