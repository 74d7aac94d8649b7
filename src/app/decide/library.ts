import type { Library } from '../../../lib/study/index.ts';
import { blinds, glazings } from '../../library/index.ts';

/** The glazings and blinds that ship with the program. */
export const ownLibrary: Library = { glazings, blinds };
