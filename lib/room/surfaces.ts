import { equivalentLayer, lumpedMass, SURFACE_PER_FLOOR } from './mass.ts';
import type { MassLayer, MassSurface, OpaquePart, Room, RoomOpening } from './types.ts';

/** The inside surface resistance inside every U-value, m2K/W: ISO 6946:2017, table 7. */
export const INSIDE_RESISTANCE = 0.13;

/** Least resistance left behind the layers, m2K/W: keeps a mistyped build-up solvable. */
const LEAST_RESISTANCE = 0.02;

/** What lies behind a surface: W/K to outdoor air or to a steady temperature (C). */
export interface Backing {
  conductance: number;
  outdoor: boolean;
  temperature: number;
}

/** One inner surface of the room with what is behind it. */
export interface Surface {
  area: number;
  layers: readonly MassLayer[];
  backing: Backing[];
  /** Weight per m2 in sharing out the sun; 0 for glass. */
  sunWeight: number;
  glass: boolean;
}

/** An opaque part as the network needs it: `area` and `U` with where its heat goes. */
interface Skin {
  name?: string;
  area: number;
  U: number;
  outdoor: boolean;
  temperature: number;
  /** Loses nothing: it leads to a room as warm as this one. */
  tight: boolean;
}

/**
 * Inner surfaces of a room. Lumped mass becomes one slab of its mass area; the rest of the inner
 * surface, 4.5 m2 per m2 of floor in all (EN ISO 13790:2008), has no mass; both carry the envelope's
 * losses by area.
 *
 * @param ground temperature under ground parts that have none of their own, C
 */
export function roomSurfaces(
  room: Room,
  openings: readonly RoomOpening[],
  ground: number,
): Surface[] {
  const windowArea = openings.reduce((sum, o) => sum + o.area, 0);
  const opaque =
    room.mass.kind === 'layers'
      ? layeredSurfaces(room.mass.surfaces, skins(room, ground, layeredArea(room.mass.surfaces)))
      : lumpedSurfaces(room, windowArea, ground);
  return [...opaque, ...openings.map(glassSurface)].filter((s) => s.area > 0);
}

function glassSurface(o: RoomOpening): Surface {
  const skin = { area: o.area, U: o.U, outdoor: true, temperature: 0, tight: false };
  return {
    area: o.area,
    layers: [],
    backing: [backing(skin, o.area, 0)],
    sunWeight: 0,
    glass: true,
  };
}

function lumpedSurfaces(room: Room, windowArea: number, ground: number): Surface[] {
  const mass = lumpedMass(room);
  const given =
    room.envelope.kind === 'parts' ? room.envelope.parts.reduce((sum, p) => sum + p.area, 0) : 0;
  const inner = Math.max(SURFACE_PER_FLOOR * room.floorArea - windowArea, mass.massArea, given);
  const parts = skins(room, ground, inner);
  const share = mass.massArea / inner;
  const layer = equivalentLayer(mass);
  const behindSlab = layer.thickness / layer.conductivity;
  return [
    {
      area: mass.massArea,
      layers: [layer],
      backing: leaking(parts).map((p) => backing(p, p.area * share, behindSlab)),
      sunWeight: 1,
      glass: false,
    },
    bare(
      inner - mass.massArea,
      leaking(parts).map((p) => backing(p, p.area * (1 - share), 0)),
    ),
  ];
}

function layeredSurfaces(surfaces: MassSurface[], parts: Skin[]): Surface[] {
  const nameless = parts.filter((p) => p.name === undefined);
  const all = layeredArea(surfaces);
  const result = surfaces.map((s): Surface => {
    const resistance = s.layers.reduce((sum, l) => sum + l.thickness / l.conductivity, 0);
    const own = parts.filter((p) => p.name !== undefined && p.name === s.part);
    return {
      area: s.area,
      layers: s.layers,
      backing: [
        ...leaking(own).map((p) => backing(p, s.area, resistance)),
        ...leaking(nameless).map((p) => backing(p, (p.area * s.area) / all, resistance)),
      ],
      sunWeight: s.sunWeight ?? 1,
      glass: false,
    };
  });
  for (const part of parts) {
    if (part.name === undefined) continue;
    const rest = part.area - layeredArea(surfaces.filter((s) => s.part === part.name));
    if (rest > 1e-9)
      result.push(
        bare(
          rest,
          leaking([part]).map((p) => backing(p, rest, 0)),
        ),
      );
  }
  return result;
}

/** A surface without mass. */
function bare(area: number, backings: Backing[]): Surface {
  return { area, layers: [], backing: backings, sunWeight: 1, glass: false };
}

function layeredArea(surfaces: readonly MassSurface[]): number {
  return surfaces.reduce((sum, s) => sum + s.area, 0);
}

/** The envelope's parts; a total UA is spread over `area` m2 of inner surface. */
function skins(room: Room, ground: number, area: number): Skin[] {
  const { envelope } = room;
  if (envelope.kind === 'parts') return envelope.parts.map((p) => partSkin(p, ground));
  const groundUA = envelope.groundUA ?? 0;
  const skin = { area, tight: false };
  return [
    { ...skin, U: envelope.UA / area, outdoor: true, temperature: 0 },
    { ...skin, U: groundUA / area, outdoor: false, temperature: ground },
  ];
}

function partSkin(part: OpaquePart, ground: number): Skin {
  return {
    name: part.name,
    area: part.area,
    U: part.U,
    outdoor: part.boundary === 'outdoor',
    temperature: part.temperature ?? ground,
    tight: part.boundary === 'room' && part.temperature === undefined,
  };
}

function leaking(parts: Skin[]): Skin[] {
  return parts.filter((p) => !p.tight && p.U > 0);
}

/** Conductance behind a surface and its layers: the part's U without what lies in front of it. */
function backing(skin: Skin, area: number, layersResistance: number): Backing {
  const resistance = Math.max(1 / skin.U - INSIDE_RESISTANCE - layersResistance, LEAST_RESISTANCE);
  return { conductance: area / resistance, outdoor: skin.outdoor, temperature: skin.temperature };
}
