import type { ProjectOpening } from '../../../lib/project/index.ts';

/** Kinds of openings in the words of the page. */
export const KINDS: readonly { value: ProjectOpening['kind']; text: string }[] = [
  { value: 'window', text: 'Window' },
  { value: 'door', text: 'Glazed door' },
  { value: 'fixed', text: 'Fixed pane' },
  { value: 'rooflight', text: 'Roof-light' },
];
