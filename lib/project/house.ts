import { FORMAT, VERSION } from './format.ts';
import type { House, Project } from './schema.ts';

/** What of a project a study rests on, to be kept as a scheme. */
export function houseOf(project: Project): House {
  const { format: _f, version: _v, page: _p, schemes: _s, ...house } = project;
  return house;
}

/** A kept house as a project of its own. */
export function projectOf(house: House): Project {
  return { format: FORMAT, version: VERSION, ...house };
}

/** Price of an external blind by opening id, where one is given. */
export function blindPrices({ openings }: House): Record<string, number> {
  return Object.fromEntries(
    openings.flatMap(({ id, blindPrice }) => (blindPrice === undefined ? [] : [[id, blindPrice]])),
  );
}
