import { InputError, problem } from '../problem/index.ts';
import type { TextKey, TextValue } from '../problem/index.ts';
import { sayEntry as say } from '../words/index.ts';
import type { EntryBook } from '../words/index.ts';
import type { QuantityName } from './quantities.ts';

/** The error for an entry that cannot be read, with what could be. */
export function notUnderstood(
  path: string,
  text: string,
  quantity: QuantityName,
  why: TextKey<EntryBook> = 'notUnderstood',
  values?: Record<string, TextValue>,
): InputError {
  const texts = { message: say(why, values), fix: say(`like.${quantity}`) };
  return new InputError(problem(path, texts, text));
}
