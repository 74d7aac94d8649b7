import type { Problem } from '../../../lib/problem/index.ts';
import type shell from '../../../data/words/en/shell.json';

/** A word to the user that stays until it is answered or put away. */
export interface Notice {
  tone: 'note' | 'problem';
  /** What happened: its sentence in the language files ... */
  told: Exclude<keyof (typeof shell)['notice'], 'away'>;
  /** ... and the file or project it is about. */
  of?: { file: string } | { name: string };
  problems?: readonly Problem[];
  actions?: readonly Action[];
}

export interface Action {
  does: keyof (typeof shell)['action'];
  act: () => void;
}
