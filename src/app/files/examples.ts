import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import type shell from '../../../data/words/en/shell.json';
import type { Project } from '../../../lib/project/index.ts';

/** A house that ships with the program; what it is called in a menu is in the language files. */
export interface Example {
  id: keyof (typeof shell)['examples'];
  load: () => Promise<Project>;
}

// They are complete and sound as they are, which a test holds them to: nothing to check here.
export const examples: readonly Example[] = [
  {
    id: 'studio',
    load: async () => openingExample(),
  },
  {
    id: 'bellingham',
    load: async () =>
      (await import('../../../data/examples/bellingham.shadewright.json')).default as Project,
  },
  {
    id: 'albuquerque',
    load: async () =>
      (await import('../../../data/examples/albuquerque.shadewright.json')).default as Project,
  },
];

/** The house the app opens on. */
export function openingExample(): Project {
  return studio as Project;
}
