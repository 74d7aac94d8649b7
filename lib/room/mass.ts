import type { MassClass, MassLayer, Room } from './types.ts';

/**
 * Heat capacity per floor area (J/m2K) and mass area per floor area by class: EN ISO 13790:2008,
 * table 12.
 */
export const massClasses: Readonly<
  Record<MassClass, { capacityPerFloor: number; areaPerFloor: number }>
> = {
  veryLight: { capacityPerFloor: 80_000, areaPerFloor: 2.5 },
  light: { capacityPerFloor: 110_000, areaPerFloor: 2.5 },
  medium: { capacityPerFloor: 165_000, areaPerFloor: 2.5 },
  heavy: { capacityPerFloor: 260_000, areaPerFloor: 3 },
  veryHeavy: { capacityPerFloor: 370_000, areaPerFloor: 3.5 },
};

/** Inner surface of a room per floor area, EN ISO 13790:2008, 7.2.2.2. */
export const SURFACE_PER_FLOOR = 4.5;

/** Layers deeper than this do not count in the daily heat capacity, m: EN ISO 13790:2008, 12.3.1.2. */
const COUNTED_DEPTH = 0.1;

/** Conductivity below which a layer is insulation and ends the capacity counted, W/mK; common practice. */
const INSULATION_CONDUCTIVITY = 0.08;

/** Heat capacity C_m in J/K and mass area A_m in m2. */
export interface LumpedMass {
  heatCapacity: number;
  massArea: number;
}

/** The room's mass as one figure: by class, as given, or counted from its layers. */
export function lumpedMass(room: Pick<Room, 'floorArea' | 'mass'>): LumpedMass {
  const { mass, floorArea } = room;
  if (mass.kind === 'class') {
    const { capacityPerFloor, areaPerFloor } = massClasses[mass.class];
    return { heatCapacity: capacityPerFloor * floorArea, massArea: areaPerFloor * floorArea };
  }
  if (mass.kind === 'value') return { heatCapacity: mass.heatCapacity, massArea: mass.massArea };
  let capacity = 0;
  let squares = 0;
  for (const surface of mass.surfaces) {
    const perArea = arealCapacity(surface.layers);
    capacity += surface.area * perArea;
    squares += surface.area * perArea * perArea;
  }
  return { heatCapacity: capacity, massArea: capacity ** 2 / squares };
}

/**
 * Heat capacity that takes part in the daily swing, J/m2K: layers from the room up to the first
 * insulating layer and no deeper than 0.1 m (EN ISO 13790:2008, 12.3.1.2).
 */
export function arealCapacity(layers: readonly MassLayer[]): number {
  let capacity = 0;
  let left = COUNTED_DEPTH;
  for (const layer of layers) {
    if (layer.conductivity < INSULATION_CONDUCTIVITY) break;
    capacity += Math.min(layer.thickness, left) * layer.density * layer.specificHeat;
    left -= layer.thickness;
    if (left <= 0) break;
  }
  return capacity;
}

/** Plasterboard and concrete of EN ISO 10456:2007, table 3. */
const BOARD = { conductivity: 0.25, density: 900, specificHeat: 1000 };
const CONCRETE = { conductivity: 1.65, density: 2200, specificHeat: 1000 };

/** Areal capacity from which a surface is taken as masonry rather than board, J/m2K; our choice. */
const MASONRY_FROM = 60_000;

/** A single layer that stores as much as a lumped mass does per area. */
export function equivalentLayer(mass: LumpedMass): MassLayer {
  const perArea = mass.heatCapacity / mass.massArea;
  const material = perArea < MASONRY_FROM ? BOARD : CONCRETE;
  return { ...material, thickness: perArea / (material.density * material.specificHeat) };
}
