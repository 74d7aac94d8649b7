import climateData from '../../data/climates.json' with { type: 'json' };
import type { ClimateStation } from '../../lib/climate/index.ts';

/** Places whose monthly normals ship with the program; a file of its own as it is the largest. */
export const stations = climateData.stations as ClimateStation[];
