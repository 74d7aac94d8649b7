import type { PageChoices } from '../../client/index.ts';
import type { Language } from '../../words/index.ts';

/** How the user wants the page printed; units are those of the project. */
export type PaperSettings = Omit<PageChoices, 'system'> & { language: Language };

/** Letter paper where it is the usual one. */
const LETTER = /-(US|CA|MX|PH|CL|CO)$/;

export function firstSettings(language: Language, locale: string): PaperSettings {
  const size = LETTER.test(locale) ? 'letter' : 'a4';
  return { language, size, grey: false, order: false, appendix: false };
}
