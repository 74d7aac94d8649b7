import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import { checkProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { blinds, glazings } from '../../library/index.ts';

/** The house the app opens on. Stations are not looked up here: the engine does that. */
export function openingExample(): Project {
  const station = { id: studio.climate.station };
  const { project, problems } = checkProject(studio, { glazings, blinds, stations: [station] });
  if (!project) throw new Error(`The example house is broken: ${JSON.stringify(problems)}`);
  return project;
}
