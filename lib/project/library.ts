import type { Blind } from '../blind/index.ts';
import type { Glazing } from '../glazing/index.ts';
import type { ReferenceIds } from './references.ts';

/** A place of the library whose climate a project may take. */
export interface LibraryStation {
  id: string;
  name?: string;
  /** Degrees; where given, a project far from it is told so. */
  latitude?: number;
  longitude?: number;
}

/** What ships with the program and a project may refer to by id. */
export interface ProjectLibrary {
  glazings: readonly Glazing[];
  blinds: readonly Blind[];
  stations: readonly LibraryStation[];
}

export function referenceIds(library: ProjectLibrary): ReferenceIds {
  const ids = (list: readonly { id: string }[]) => list.map((item) => item.id);
  return {
    glazings: ids(library.glazings),
    blinds: ids(library.blinds),
    stations: ids(library.stations),
  };
}
