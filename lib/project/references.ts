import type { Problem } from '../problem/index.ts';
import { show } from './issues.ts';
import { nearest } from './nearest.ts';
import { isRecord, pathText, valueAt } from './walk.ts';

/** What ships with the program and a project may refer to by id. */
export interface ReferenceIds {
  glazings: readonly string[];
  blinds: readonly string[];
  stations: readonly string[];
}

const COLLECTIONS = {
  walls: 'wall',
  rooms: 'room',
  openings: 'opening',
  glazings: 'glazing',
  blinds: 'blind',
  schedules: 'schedule',
  groups: 'group',
} as const;
type Collection = keyof typeof COLLECTIONS;

/**
 * Ids used twice and references to nothing. Reads the raw data, so that these are told together
 * with whatever else is wrong in the file.
 */
export function referenceProblems(root: unknown, library: ReferenceIds): Problem[] {
  const known = (collection: Collection): string[] => {
    const shipped = collection === 'glazings' || collection === 'blinds' ? library[collection] : [];
    return [...ids(root, [collection]), ...shipped];
  };
  return [
    ...duplicates(root, library),
    ...references(root).flatMap(({ path, to }) =>
      to === 'station'
        ? dangling(root, path, 'station', library.stations)
        : isList(root, to)
          ? dangling(root, path, COLLECTIONS[to], known(to))
          : [],
    ),
    ...leads(root),
  ];
}

/** A list that is no list is told once, not again for everything that refers into it. */
function isList(root: unknown, collection: Collection): boolean {
  const list = valueAt(root, [collection]);
  return list === undefined || Array.isArray(list);
}

interface Reference {
  path: PropertyKey[];
  to: Collection | 'station';
}

function references(root: unknown): Reference[] {
  const found: Reference[] = [{ path: ['climate', 'station'], to: 'station' }];
  const add = (path: PropertyKey[], to: Collection) => found.push({ path, to });
  listAt(root, ['openings']).forEach((_, i) => {
    const at = ['openings', i];
    add([...at, 'wall'], 'walls');
    add([...at, 'room'], 'rooms');
    add([...at, 'glazing'], 'glazings');
    add([...at, 'insectScreen', 'blind'], 'blinds');
    add([...at, 'blind', 'blind'], 'blinds');
    add([...at, 'blind', 'schedule'], 'schedules');
    add([...at, 'blind', 'group'], 'groups');
  });
  listAt(root, ['groups']).forEach((_, i) => add(['groups', i, 'schedule'], 'schedules'));
  listAt(root, ['rooms']).forEach((_, i) => {
    listAt(root, ['rooms', i, 'airing']).forEach((__, j) => {
      const at = ['rooms', i, 'airing', j, 'openings'];
      listAt(root, at).forEach((___, k) => add([...at, k], 'openings'));
    });
  });
  return found;
}

function dangling(
  root: unknown,
  path: PropertyKey[],
  kind: string,
  known: readonly string[],
): Problem[] {
  const id = valueAt(root, path);
  if (typeof id !== 'string' || known.includes(id)) return [];
  const guess = nearest(id, known);
  return [
    {
      path: pathText(root, path),
      message: `names no ${kind} there is`,
      value: show(id),
      allowed: known.length ? listed(known) : `none: no ${kind} is given`,
      fix: guess
        ? `Did you mean "${guess}"?`
        : known.length
          ? `Take one of these, or add the missing ${kind}.`
          : `Add the missing ${kind}.`,
    },
  ];
}

/** The leading opening of a group must be one of its own. */
function leads(root: unknown): Problem[] {
  const openings = listAt(root, ['openings']);
  return listAt(root, ['groups']).flatMap((group, i) => {
    if (!isRecord(group) || group.lead === 'any') return [];
    const members = openings
      .filter((o) => valueAt(o, ['blind', 'group']) === group.id)
      .map((o) => valueAt(o, ['id']))
      .filter((id) => typeof id === 'string');
    return dangling(root, ['groups', i, 'lead'], 'opening of this group', ['any', ...members]);
  });
}

function duplicates(root: unknown, library: ReferenceIds): Problem[] {
  const lists = (Object.keys(COLLECTIONS) as Collection[]).map((name) => ({
    path: [name] as PropertyKey[],
    kind: COLLECTIONS[name] as string,
    taken: name === 'glazings' || name === 'blinds' ? library[name] : [],
  }));
  const rules = (name: Collection, list: string) =>
    listAt(root, [name]).map((_, i) => ({ path: [name, i, list], kind: 'rule', taken: [] }));
  const inner = [...rules('schedules', 'rules'), ...rules('rooms', 'airing')];
  return [...lists, ...inner].flatMap(({ path, kind, taken }) => {
    const seen = new Set<unknown>(taken);
    return listAt(root, path).flatMap((item, i) => {
      const id = valueAt(item, ['id']);
      if (typeof id !== 'string') return [];
      if (!seen.has(id)) {
        seen.add(id);
        return [];
      }
      return [
        {
          path: pathText(root, [...path, i, 'id']),
          message: taken.includes(id)
            ? `is the id of a ${kind} of the library`
            : `is the id of another ${kind} already`,
          value: show(id),
          allowed: `an id no other ${kind} has`,
          fix: 'Give it another id, and change what refers to it.',
        },
      ];
    });
  });
}

function listAt(root: unknown, path: PropertyKey[]): unknown[] {
  const list = valueAt(root, path);
  return Array.isArray(list) ? list : [];
}

function ids(root: unknown, path: PropertyKey[]): string[] {
  return listAt(root, path)
    .map((item) => valueAt(item, ['id']))
    .filter((id) => typeof id === 'string');
}

function listed(known: readonly string[]): string {
  const shown = known.slice(0, 60).join(', ');
  return known.length > 60 ? `${shown} and ${known.length - 60} more` : shown;
}
