import type { Project } from '../../../lib/project/index.ts';
import type { StudySummary } from '../../worker/api.ts';
import type { RingOpening } from '../charts/ring/layout.ts';
import { wallOf } from './edits.ts';

/** The openings of a project as the ring shows them, with the gains of the last run. */
export function ringOpenings(
  project: Project,
  summary: Pick<StudySummary, 'openings'>,
): RingOpening[] {
  const results = new Map(summary.openings.map((o) => [o.id, o.sums]));
  return project.openings.flatMap((opening) => {
    const wall = wallOf(project, opening.wall);
    if (!wall) return [];
    const sums = results.get(opening.id);
    return [
      {
        id: opening.id,
        name: opening.name,
        wall: wall.id,
        wallName: wall.name,
        azimuth: wall.azimuth,
        tilt: wall.tilt,
        width: opening.width * opening.count,
        without: sums?.without.summer,
        with: sums?.with.summer,
      },
    ];
  });
}
