import data from '../../data/materials.json' with { type: 'json' };
import type { MassLayer } from '../../lib/room/index.ts';

/** A material of inner layers, with a usual thickness, m. */
export interface Material extends Required<MassLayer> {
  id: string;
  source: string;
}

/** Materials that ship with the program. */
export const materials = data.materials as readonly Material[];
