import glazingData from '../../data/glazings.json' with { type: 'json' };
import blindData from '../../data/blinds.json' with { type: 'json' };
import type { Blind } from '../../lib/blind/index.ts';
import type { Glazing } from '../../lib/glazing/index.ts';

/** Generic glazings that ship with the program. */
export const glazings = glazingData.glazings as Glazing[];

/** Generic frames that ship with the program. */
export const frames = glazingData.frames;

/** Generic blinds, shutters and insect screens that ship with the program. */
export const blinds = blindData.blinds as Blind[];
