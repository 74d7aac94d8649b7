export type Theme = 'system' | 'light' | 'dark';

const KEY = 'shadewright.theme';

/** How the page looks; kept on this machine. */
export class Preferences {
  #theme = $state<Theme>(stored());

  get theme(): Theme {
    return this.#theme;
  }

  set theme(theme: Theme) {
    this.#theme = theme;
    show(theme);
    try {
      localStorage.setItem(KEY, theme);
    } catch {
      // Storage is off: the choice holds until the page is closed.
    }
  }

  constructor() {
    show(this.#theme);
  }
}

function stored(): Theme {
  try {
    const value = localStorage.getItem(KEY);
    return value === 'light' || value === 'dark' ? value : 'system';
  } catch {
    return 'system';
  }
}

function show(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}
