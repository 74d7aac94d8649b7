import { languages } from '../../words/namespaces.ts';
import type { Language } from '../../words/namespaces.ts';

/** The first language of the browser's that the page speaks; English where there is none. */
export function spoken(preferred: readonly string[]): Language {
  const wanted = preferred.map((locale) => locale.toLowerCase().split('-')[0]);
  return wanted.flatMap((code) => languages.find((l) => l === code) ?? [])[0] ?? 'en';
}
