/** Results kept for one owner, 4.4 kB each where they are sets of steps: enough for a search. */
const MOST = 256;

const kept = new WeakMap<object, Map<string, unknown>>();

/**
 * What `make` gave for a key, made once for each owner (a calendar, an array of readings) and
 * dropped with it; the oldest go first where there are many. Owners are known by identity, so they
 * must not be changed after their first use. A key stands for one type.
 */
export function memo<T>(owner: object, key: string, make: () => T): T {
  let results = kept.get(owner);
  if (!results) kept.set(owner, (results = new Map()));
  let result = results.get(key) as T | undefined;
  if (result === undefined) {
    if (results.size >= MOST) results.delete(results.keys().next().value!);
    results.set(key, (result = make()));
  }
  return result;
}
