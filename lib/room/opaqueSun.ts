import type { OpaquePart } from './types.ts';

/** Outside surface resistance, m2K/W: ISO 6946:2017, table 7. */
const OUTSIDE_RESISTANCE = 0.04;

/**
 * Heat that sun on an opaque part would lead inwards if it were steady, W: absorptance x irradiance
 * x area x U x outside surface resistance (EN ISO 13790:2008, 11.3.2). The sum over all parts is
 * `opaqueSun` of the drivers; the room's layers delay it.
 *
 * @param irradiance on the part's outer face, W/m2
 */
export function opaqueSunHeat(part: OpaquePart, irradiance: number): number {
  if (part.boundary !== 'outdoor') return 0;
  return (part.solarAbsorptance ?? 0) * irradiance * part.area * part.U * OUTSIDE_RESISTANCE;
}
