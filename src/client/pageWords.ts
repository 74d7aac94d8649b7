import type { Namespace } from '../words/namespaces.ts';

/** The parts of the language files that a client page is written from. */
export const PAGE_WORDS: readonly Namespace[] = ['client', 'library', 'rules'];
