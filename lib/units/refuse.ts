import entry from '../../data/words/en/entry.json' with { type: 'json' };
import { InputError, problem, sayFrom } from '../problem/index.ts';
import type { TextKey, TextValue } from '../problem/index.ts';
import type { QuantityName } from './quantities.ts';

const say = sayFrom('entry', entry);

/** The error for an entry that cannot be read, with what could be. */
export function notUnderstood(
  path: string,
  text: string,
  quantity: QuantityName,
  why: TextKey<typeof entry> = 'notUnderstood',
  values?: Record<string, TextValue>,
): InputError {
  const texts = { message: say(why, values), fix: say(`like.${quantity}`) };
  return new InputError(problem(path, texts, text));
}
