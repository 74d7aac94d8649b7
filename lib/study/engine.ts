import type { TypicalYear } from '../climate/index.ts';
import type { Project } from '../project/index.ts';
import { StageCache } from './cache.ts';
import { collect } from './collect.ts';
import { readyControllers, readyOpening } from './blindStages.ts';
import { moveAll, readyRooms, runRooms } from './roomStages.ts';
import { lightOpening, lightSite } from './lightStages.ts';
import { studyPlace } from './place.ts';
import { resolveHouse } from './resolve.ts';
import type { Library } from './resolve.ts';
import type { StudyResult } from './results.ts';

/** Everything a study depends on. */
export interface StudyInput {
  /** A project that has been checked (lib/project). */
  project: Project;
  library: Library;
  /** Known by identity: new weather must come in a new object. */
  year: TypicalYear;
}

/** Runs studies and keeps the stages that a change of input leaves as they are. */
export interface Engine {
  run(input: StudyInput): StudyResult;
  cache: StageCache;
}

/**
 * An engine with its own stage cache. The stages are sun, sky, facade, opening, glass, screen,
 * schedule, blind and room; each is computed again only when its own inputs or an earlier stage
 * change.
 */
export function createEngine(cache = new StageCache()): Engine {
  return {
    cache,
    run({ project, library, year }) {
      const place = studyPlace(project.site, year);
      const house = resolveHouse(project, library);
      const site = lightSite(cache, project, place, year, house);
      const lit = house.openings.map((opening) =>
        lightOpening(cache, site, opening, project.site.horizon),
      );
      const controllers = readyControllers(cache, site, house, lit);
      const openings = lit.map((opening) => readyOpening(cache, site, opening, controllers));
      const models = readyRooms(cache, site, house, place);
      const moved = moveAll(cache, site, controllers, openings, models);
      const rooms = runRooms(cache, site, models, moved);
      return collect(cache, { project, place, house, site, year }, moved.openings, rooms);
    },
  };
}
