import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import type { Project } from '../../../lib/project/index.ts';

/** A house that ships with the program. */
export interface Example {
  id: string;
  name: string;
  about: string;
  load: () => Promise<Project>;
}

// They are complete and sound as they are, which a test holds them to: nothing to check here.
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
      (await import('../../../data/examples/bellingham.shadewright.json')).default as Project,
  },
  {
    id: 'albuquerque',
    name: 'House with deep roofs',
    about: 'Albuquerque, New Mexico: hot and dry, fixed shade',
    load: async () =>
      (await import('../../../data/examples/albuquerque.shadewright.json')).default as Project,
  },
];

/** The house the app opens on. */
export function openingExample(): Project {
  return studio as Project;
}
