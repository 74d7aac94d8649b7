import type { ProjectOpening } from '../../../lib/project/index.ts';

/** Kinds of openings as they are offered. */
export const KINDS: readonly ProjectOpening['kind'][] = ['window', 'door', 'fixed', 'rooflight'];
