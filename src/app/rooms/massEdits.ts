import type { MassLayer, MassSurface, Room, RoomMass } from '../../../lib/room/index.ts';
import { lumpedMass } from '../../../lib/room/index.ts';
import { materials } from '../../library/materials.ts';
import type { Material } from '../../library/materials.ts';
import type { Wording } from '../../words/index.ts';
import { freeName } from '../openings/edits.ts';

/** Edits of what stores heat in a room. */

/** Says what stores heat by class, by figures or by layers, starting from what there was. */
export function setMassKind(words: Wording, room: Room, kind: RoomMass['kind']): void {
  if (kind === room.mass.kind) return;
  if (kind === 'class') room.mass = { kind, class: 'light' };
  if (kind === 'value') {
    const { heatCapacity, massArea } = lumpedMass(room);
    room.mass = { kind, heatCapacity: Math.round(heatCapacity), massArea: round(massArea, 1) };
  }
  if (kind === 'layers') room.mass = { kind, surfaces: usualSurfaces(words, room) };
}

/**
 * A timber-framed room lined with gypsum board on a wooden floor, as large as this one (common
 * practice): a square room's walls, and furniture of its floor area.
 */
function usualSurfaces(words: Wording, { floorArea, volume }: Room): MassSurface[] {
  const t = words.of('rooms');
  const walls = 4 * Math.sqrt(floorArea) * (volume / floorArea);
  const lined = (name: string, area: number, material: string, more = {}): MassSurface => ({
    name,
    area: round(area, 1),
    layers: [layerOf(materialOf(material))],
    ...more,
  });
  return [
    lined(t('new.floor'), floorArea, 'timber', { sunWeight: 2 }),
    lined(t('new.walls'), walls, 'gypsum-board'),
    lined(t('new.ceiling'), floorArea, 'gypsum-board'),
    lined(t('new.furniture'), floorArea, 'timber', { sunWeight: 0.5 }),
  ];
}

const materialOf = (id: string) => materials.find((m) => m.id === id)!;

/** A layer of a material in its usual thickness; it keeps the name of the list of materials. */
export function layerOf(material: Material): MassLayer {
  const { name, thickness, conductivity, density, specificHeat } = material;
  return { name, thickness, conductivity, density, specificHeat };
}

/** The material that ships whose figures a layer has; undefined where they are its own. */
export function materialOfLayer(layer: MassLayer): Material | undefined {
  return materials.find(
    (m) =>
      m.conductivity === layer.conductivity &&
      m.density === layer.density &&
      m.specificHeat === layer.specificHeat &&
      (layer.name === undefined || layer.name.startsWith(m.name.split(',')[0])),
  );
}

/** What a layer is called: a material that ships has its name in the language of the page. */
export function layerName(words: Wording, { name = '' }: MassLayer): string {
  const material = materials.find((m) => m.name === name);
  return material ? words.named('material', material.id, name) : name;
}

/** Makes a layer of another material; its thickness stays. */
export function setMaterial(layer: MassLayer, id: string): void {
  const material = materials.find((m) => m.id === id);
  if (material) Object.assign(layer, layerOf(material), { thickness: layer.thickness });
}

/** Adds an inner surface as large as the floor. */
export function addSurface(words: Wording, room: Room): void {
  if (room.mass.kind !== 'layers') return;
  const { surfaces } = room.mass;
  surfaces.push({
    name: freeName(words.of('rooms')('new.surface'), surfaces),
    area: round(room.floorArea, 1),
    layers: [layerOf(materialOf('gypsum-board'))],
  });
}

/** Takes a surface away; the last that takes the sun stays. */
export function removeSurface(room: Room, at: number): void {
  if (room.mass.kind !== 'layers') return;
  const left = room.mass.surfaces.filter((_, i) => i !== at);
  if (takesSun(left)) room.mass.surfaces = left;
}

export function takesSun(surfaces: readonly MassSurface[]): boolean {
  return surfaces.some((s) => (s.sunWeight ?? 1) > 0);
}

/** Adds a layer behind the others; the first is the one the room touches. */
export function addLayer(surface: MassSurface): void {
  surface.layers.push(layerOf(materialOf('timber')));
}

const round = (value: number, digits: number) => Number(value.toFixed(digits));
