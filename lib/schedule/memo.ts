/** Gives what was made for a source and key before, or makes it. */
export type Memo<Source extends object, T> = (source: Source, key: string, make: () => T) => T;

/**
 * Keeps results by the object they were made from and a key; of each object's results the one
 * longest unused goes first. The objects must not be changed afterwards.
 */
export function createMemo<Source extends object, T>(most: number): Memo<Source, T> {
  const bySource = new WeakMap<Source, Map<string, T>>();
  return (source, key, make) => {
    let kept = bySource.get(source);
    if (!kept) bySource.set(source, (kept = new Map()));
    const result = kept.get(key) ?? make();
    kept.delete(key);
    kept.set(key, result);
    if (kept.size > most) kept.delete(kept.keys().next().value!);
    return result;
  };
}
