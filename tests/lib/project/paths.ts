export type Key = string | number;
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
/** An object of the data, for changing it. */
export type Fields = Record<string, Json>;

/** Every path of the data that leads to a value `wanted` accepts. */
export function pathsTo(root: Json, wanted: (value: Json, path: Key[]) => boolean): Key[][] {
  const found: Key[][] = [];
  const visit = (value: Json, path: Key[]) => {
    if (path.length && wanted(value, path)) found.push(path);
    if (Array.isArray(value)) value.forEach((item, i) => visit(item, [...path, i]));
    else if (typeof value === 'object' && value !== null) {
      for (const [key, item] of Object.entries(value)) visit(item, [...path, key]);
    }
  };
  visit(root, []);
  return found;
}

export function at(root: Json, path: readonly Key[]): Json {
  return path.reduce<Json>((value, key) => (value as Fields)[key], root);
}

/** A copy of the data with the value at a path changed; `undefined` deletes it. */
export function changed(root: Json, path: readonly Key[], value: Json | undefined): Json {
  const copy = structuredClone(root);
  const parent = at(copy, path.slice(0, -1)) as Fields;
  const key = path[path.length - 1];
  if (value === undefined) Reflect.deleteProperty(parent, key);
  else parent[key] = value;
  return copy;
}

/** Matches the path as problems write it, whatever names they put beside the numbers. */
export function pathPattern(path: readonly Key[]): RegExp {
  const text = path.map((key, i) =>
    typeof key === 'number'
      ? `\\[${key}\\](?: "(?:[^"\\\\]|\\\\.)*")?`
      : `${i ? '\\.' : ''}${key.replace(/[^\w]/g, '\\$&')}`,
  );
  return new RegExp(`^${text.join('')}$`);
}

/** A path without its numbers: `openings[].width`. */
export function shape(path: readonly Key[]): string {
  return path.map((k, i) => (typeof k === 'number' ? '[]' : `${i ? '.' : ''}${k}`)).join('');
}

/** Random numbers from a seed (mulberry32, public domain, by T. Ettinger). */
export function seeded(seed: number) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    next,
    pick: <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)],
  };
}
