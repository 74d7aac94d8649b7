import type { Problem } from '../../../lib/problem/index.ts';

/** A word to the user that stays until it is answered or put away. */
export interface Notice {
  tone: 'note' | 'problem';
  text: string;
  problems?: readonly Problem[];
  actions?: readonly { label: string; act: () => void }[];
}
