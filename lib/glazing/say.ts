import type { TextKey } from '../problem/index.ts';
import type { EntryBook } from '../words/index.ts';

export { entryRange as rangeText, sayEntry as say } from '../words/index.ts';
export type { EntryUnit as RangeUnit } from '../words/index.ts';

/** Places of the sentences about glazings. */
export type SentenceKey = TextKey<EntryBook['glazing']>;
