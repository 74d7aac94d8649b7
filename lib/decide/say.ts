import problems from '../../data/words/en/problems.json' with { type: 'json' };
import { sayFrom } from '../problem/index.ts';

/** Sentences from the language file `problems`. */
export const say = /* @__PURE__ */ sayFrom('problems', problems);
