import type { Blind } from '../../../lib/blind/index.ts';
import type { Project, ProjectOpening } from '../../../lib/project/index.ts';
import { blindById } from '../openings/parts.ts';

/** The wind at which a target's blinds are raised, and where the figure is from. */
export interface WindLimit {
  /** m/s. */
  limit: number;
  /** The opening whose limit it is. */
  opening: string;
  /** What the figure is: the opening's own entry, or the blind's. */
  from: 'opening' | 'blind';
  blind: Blind;
}

/** The lowest limit of the members, which all of them obey; undefined where none has one. */
export function windLimitOf(
  project: Project,
  members: readonly ProjectOpening[],
): WindLimit | undefined {
  return members
    .flatMap((opening): WindLimit[] => {
      const blind = blindById(project, opening.blind?.blind);
      const own = opening.blind?.windLimit;
      const limit = own ?? blind?.windLimit;
      if (!blind || limit === undefined) return [];
      const from = own === undefined ? 'blind' : 'opening';
      return [{ limit, opening: opening.name, from, blind }];
    })
    .sort((a, b) => a.limit - b.limit)[0];
}
