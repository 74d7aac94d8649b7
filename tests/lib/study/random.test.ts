import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkProject } from '../../../lib/project/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import { HOURS } from '../../../lib/time/index.ts';
import { randomProject } from '../project/randomProject.ts';
import { clearYear, library } from './support.ts';

/** The sun outside the atmosphere at its nearest, W/m2. */
const MOST_SUN = 1361 * 1.035;

describe('random houses anywhere on earth', () => {
  it('have finite figures, none negative, none beyond the sun itself', () => {
    fc.assert(
      fc.property(randomProject, (input) => {
        const { project } = checkProject(input, library);
        if (!project) return;
        const { latitude, longitude, elevation } = project.site;
        const place = { latitude, longitude, elevation: Math.max(elevation, 0) };
        const result = createEngine().run({ project, library, year: clearYear(place) });
        for (const opening of result.openings) {
          // Snow all round can send a steep pane as much again as the sun does.
          const most = 2 * MOST_SUN;
          for (const series of Object.values(opening.hourly)) {
            for (let hour = 0; hour < HOURS; hour++) {
              if (!(series[hour] >= 0 && series[hour] < most)) {
                throw new Error(`${opening.name} hour ${hour}: ${series[hour]}`);
              }
            }
          }
        }
        for (const room of result.rooms) {
          for (const run of [room.runs.without, room.runs.with]) {
            expect(run.year.operative.every(Number.isFinite), room.name).toBe(true);
          }
        }
      }),
      { numRuns: 25, seed: 20 },
    );
  });
});
