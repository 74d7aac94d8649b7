import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import { parseProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { blinds, glazings } from '../../library/index.ts';

/** A house that ships with the program. */
export interface Example {
  id: string;
  name: string;
  about: string;
  load: () => Promise<Project>;
}

export const examples: readonly Example[] = [
  {
    id: 'studio',
    name: 'Studio on a wooded slope',
    about: 'Burlington, Vermont: cold winters, glass to the south, east and west',
    load: async () => openingExample(),
  },
  {
    id: 'bellingham',
    name: 'House by the bay',
    about: 'Bellingham, Washington: mild, heavy floor',
    load: async () =>
      read((await import('../../../data/examples/bellingham.shadewright.json')).default),
  },
  {
    id: 'albuquerque',
    name: 'House with deep roofs',
    about: 'Albuquerque, New Mexico: hot and dry, fixed shade',
    load: async () =>
      read((await import('../../../data/examples/albuquerque.shadewright.json')).default),
  },
];

/** The house the app opens on. */
export function openingExample(): Project {
  return read(studio);
}

/** Stations are not looked up here, as their file is long: the engine does that. */
function read(data: { climate: { kind: string; station?: string } }): Project {
  const { station = '' } = data.climate;
  return parseProject(data, { glazings, blinds, stations: [{ id: station }] });
}
