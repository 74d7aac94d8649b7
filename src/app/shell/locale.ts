import type { Language } from '../../words/index.ts';

/** The user's own variant of a language, for dates and times: `en-US` of `en`. */
export function localeOf(
  language: Language,
  preferred: readonly string[] = navigator.languages,
): string {
  return preferred.find((locale) => isOf(language, locale)) ?? language;
}

function isOf(language: Language, locale: string): boolean {
  return locale.toLowerCase().split('-')[0] === language;
}
