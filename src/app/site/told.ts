import type { Text } from '../../../lib/problem/index.ts';
import type { Wording } from '../../words/index.ts';

/** A sentence of the engine, or letters that are the same in every language. */
export function told(words: Wording, said: Text | string): string {
  return typeof said === 'string' ? said : words.text(said);
}
