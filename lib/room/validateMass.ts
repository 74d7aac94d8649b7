import { decimalText, verbatim } from '../problem/index.ts';
import type { Checker } from './checker.ts';
import { say } from './say.ts';
import { INSIDE_RESISTANCE } from './surfaces.ts';
import type { MassSurface, Room } from './types.ts';

/** Checks what stores heat, and that layers fit the parts they belong to. */
export function checkMass(check: Checker, room: Room): void {
  const { mass, floorArea } = room;
  if (mass.kind === 'value') {
    check.positive('mass.massArea', mass.massArea, 'm2', 'takeClass');
    check.positive('mass.heatCapacity', mass.heatCapacity, 'J/K', 'takeClass');
    const perFloor = mass.heatCapacity / floorArea;
    if (perFloor > 0 && (perFloor < 20_000 || perFloor > 1_500_000)) {
      const told = say('room.perFloor', { value: Math.round(perFloor) });
      const allowed = say('room.usualMass');
      check.warn('mass.heatCapacity', 'unusual', { told }, 'unusualFix', allowed);
    }
  }
  if (mass.kind !== 'layers') return;
  if (mass.surfaces.length === 0) {
    check.fail('mass.surfaces', 'noSurface', { given: [] }, 'noSurfaceFix');
  }
  mass.surfaces.forEach((surface, s) => {
    const field = (key: string) => `mass.surfaces[${s}].${key}`;
    check.positive(field('area'), surface.area, 'm2', 'oneFace');
    check.range(field('sunWeight'), surface.sunWeight ?? 1, 0, 100, undefined, 'even');
    if (surface.layers.length === 0) {
      check.fail(field('layers'), 'noLayer', { given: [] }, 'noLayerFix');
    }
    surface.layers.forEach((layer, l) => {
      const layerField = (key: string) => field(`layers[${l}].${key}`);
      check.range(layerField('thickness'), layer.thickness, 0.0005, 2, 'm', 'layer');
      check.range(layerField('conductivity'), layer.conductivity, 0.005, 500, 'W/mK', 'layer');
      check.range(layerField('density'), layer.density, 5, 12_000, 'kg/m3', 'layer');
      check.range(layerField('specificHeat'), layer.specificHeat, 200, 5000, 'J/kgK', 'layer');
    });
    if (surface.part !== undefined) checkPart(check, room, surface, s, mass.surfaces);
  });
  if (!mass.surfaces.some((s) => (s.sunWeight ?? 1) > 0)) {
    check.fail('mass.surfaces', 'noSun', { given: 0 }, 'noSunFix');
  }
}

function checkPart(
  check: Checker,
  room: Room,
  surface: MassSurface,
  at: number,
  surfaces: readonly MassSurface[],
): void {
  const field = `mass.surfaces[${at}]`;
  const parts = room.envelope.kind === 'parts' ? room.envelope.parts : [];
  const part = parts.find((p) => p.name === surface.part);
  if (!part) {
    const names = parts.map((p) => p.name).join(', ');
    const allowed = names ? verbatim(names) : say('room.noParts');
    check.fail(`${field}.part`, 'noPart', { given: surface.part }, 'namePart', allowed);
    return;
  }
  const covered = surfaces
    .filter((s) => s.part === surface.part)
    .reduce((sum, s) => sum + s.area, 0);
  if (covered > part.area * 1.0001) {
    const allowed = say('room.area', { most: part.area });
    check.fail(`${field}.area`, 'coversMore', { given: covered }, 'coversMoreFix', allowed);
  }
  const resistance = surface.layers.reduce((sum, l) => sum + l.thickness / l.conductivity, 0);
  const total = 1 / part.U - INSIDE_RESISTANCE;
  if (resistance > total) {
    const unit = say('unit.m2K/W');
    const told = say('room.inQuotes', { value: decimalText(resistance, 2), unit });
    const allowed = say('room.atMost', { most: decimalText(total, 2), unit });
    check.fail(`${field}.layers`, 'insulates', { told }, 'insulatesFix', allowed);
  }
}
