import { languages } from '../../words/namespaces.ts';
import type { Language } from '../../words/namespaces.ts';
import { spoken } from './languages.ts';

const themes = ['system', 'light', 'dark'] as const;
export type Theme = (typeof themes)[number];

const THEME = 'shadewright.theme';
const LANGUAGE = 'shadewright.language';

/** How the page looks and which language it speaks; what the user chose is kept on this machine. */
export class Preferences {
  #theme = $state<Theme>(stored(THEME, themes) ?? 'system');
  #language = $state<Language>(stored(LANGUAGE, languages) ?? spoken(navigator.languages));

  get theme(): Theme {
    return this.#theme;
  }

  set theme(theme: Theme) {
    this.#theme = theme;
    show(theme);
    keep(THEME, theme);
  }

  get language(): Language {
    return this.#language;
  }

  set language(language: Language) {
    this.#language = language;
    keep(LANGUAGE, language);
  }

  constructor() {
    show(this.#theme);
  }
}

/** The choice kept last, if any. */
function stored<T extends string>(key: string, all: readonly T[]): T | undefined {
  try {
    const value = localStorage.getItem(key);
    return all.find((choice) => choice === value);
  } catch {
    return undefined;
  }
}

function keep(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // Storage is off: the choice holds until the page is closed.
  }
}

function show(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}
