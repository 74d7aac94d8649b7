import { verbatim } from '../problem/index.ts';
import type { Problem, Text } from '../problem/index.ts';
import { nearest } from './nearest.ts';
import { say, told } from './say.ts';
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
type Kind = (typeof COLLECTIONS)[Collection] | 'rule' | 'scheme' | 'station' | 'member';

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
  kindKey: Kind,
  known: readonly string[],
): Problem[] {
  const id = valueAt(root, path);
  if (typeof id !== 'string' || known.includes(id)) return [];
  const guess = nearest(id, known);
  const kind = say(`kind.${kindKey}`);
  const texts = {
    message: say('reference.none', { kind }),
    allowed: known.length ? listed(known) : say('reference.empty', { kind }),
    fix: guess
      ? say('didYouMean', { guess })
      : say(known.length ? 'reference.takeOrAdd' : 'reference.add', { kind }),
  };
  return [told(pathText(root, path), texts, id)];
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
    return dangling(root, ['groups', i, 'lead'], 'member', ['any', ...members]);
  });
}

function duplicates(root: unknown, library: ReferenceIds): Problem[] {
  const lists = (Object.keys(COLLECTIONS) as Collection[]).map((name) => ({
    path: [name] as PropertyKey[],
    kind: COLLECTIONS[name] as Kind,
    taken: name === 'glazings' || name === 'blinds' ? library[name] : [],
  }));
  const rules = (name: Collection, list: string) =>
    listAt(root, [name]).map((_, i) => ({
      path: [name, i, list],
      kind: 'rule' as Kind,
      taken: [],
    }));
  const inner = [...rules('schedules', 'rules'), ...rules('rooms', 'airing')];
  const schemes = { path: ['schemes'], kind: 'scheme' as Kind, taken: [] };
  return [...lists, ...inner, schemes].flatMap(({ path, kind, taken }) => {
    const seen = new Set<unknown>(taken);
    return listAt(root, path).flatMap((item, i) => {
      const id = valueAt(item, ['id']);
      if (typeof id !== 'string') return [];
      if (!seen.has(id)) {
        seen.add(id);
        return [];
      }
      const of = { kind: say(`kind.${kind}`) };
      const texts = {
        message: say(taken.includes(id) ? 'duplicate.ofLibrary' : 'duplicate.another', of),
        allowed: say('duplicate.allowed', of),
        fix: say('duplicate.fix'),
      };
      return [told(pathText(root, [...path, i, 'id']), texts, id)];
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

function listed(known: readonly string[]): Text {
  const names = known.slice(0, 60).join(', ');
  return known.length > 60 ? say('more', { names, more: known.length - 60 }) : verbatim(names);
}
