export { Words } from './words.ts';
export type { LibraryPart, Wording } from './words.ts';
export { languages } from './namespaces.ts';
export type { Language, Namespace } from './namespaces.ts';
