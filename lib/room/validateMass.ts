import type { Checker } from './checker.ts';
import { INSIDE_RESISTANCE } from './surfaces.ts';
import type { MassSurface, Room } from './types.ts';

/** Checks what stores heat, and that layers fit the parts they belong to. */
export function checkMass(check: Checker, room: Room): void {
  const { mass, floorArea } = room;
  if (mass.kind === 'value') {
    const fix = 'Take a class if it is not known.';
    check.positive('mass.massArea', mass.massArea, 'm2', fix);
    check.positive('mass.heatCapacity', mass.heatCapacity, 'J/K', fix);
    const perFloor = mass.heatCapacity / floorArea;
    if (perFloor > 0 && (perFloor < 20_000 || perFloor > 1_500_000)) {
      const value = `${Math.round(perFloor)} J/m2K of floor`;
      const allowed = '80,000 (very light) to 370,000 J/m2K (very heavy) are usual';
      check.warn('mass.heatCapacity', 'is unusual', value, 'Check the unit: J/K.', allowed);
    }
  }
  if (mass.kind !== 'layers') return;
  if (mass.surfaces.length === 0) {
    check.fail('mass.surfaces', 'has no surface', [], 'Add surfaces or take a class.');
  }
  mass.surfaces.forEach((surface, s) => {
    const field = (key: string) => `mass.surfaces[${s}].${key}`;
    check.positive(field('area'), surface.area, 'm2', 'Measure one face.');
    check.range(field('sunWeight'), surface.sunWeight ?? 1, 0, 100, '', '1 is even.');
    if (surface.layers.length === 0) {
      check.fail(field('layers'), 'has no layer', [], 'Add layers or leave the surface out.');
    }
    surface.layers.forEach((layer, l) => {
      const layerField = (key: string) => field(`layers[${l}].${key}`);
      const table = 'Take it from the build-up (EN ISO 10456 lists materials).';
      check.range(layerField('thickness'), layer.thickness, 0.0005, 2, 'm', table);
      check.range(layerField('conductivity'), layer.conductivity, 0.005, 500, 'W/mK', table);
      check.range(layerField('density'), layer.density, 5, 12_000, 'kg/m3', table);
      check.range(layerField('specificHeat'), layer.specificHeat, 200, 5000, 'J/kgK', table);
    });
    if (surface.part !== undefined) checkPart(check, room, surface, s, mass.surfaces);
  });
  if (!mass.surfaces.some((s) => (s.sunWeight ?? 1) > 0)) {
    check.fail('mass.surfaces', 'no surface takes the sun', 0, 'Raise a sun weight above 0.');
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
    const allowed = parts.map((p) => p.name).join(', ') || 'none: the envelope is given as a total';
    check.fail(`${field}.part`, 'names no opaque part', surface.part, 'Name a part.', allowed);
    return;
  }
  const covered = surfaces
    .filter((s) => s.part === surface.part)
    .reduce((sum, s) => sum + s.area, 0);
  if (covered > part.area * 1.0001) {
    const fix = 'Lower the surface or raise the part.';
    check.fail(`${field}.area`, 'covers more than its part', covered, fix, `${part.area} m2`);
  }
  const resistance = surface.layers.reduce((sum, l) => sum + l.thickness / l.conductivity, 0);
  const total = 1 / part.U - INSIDE_RESISTANCE;
  if (resistance > total) {
    const fix = 'Correct the layers or the U-value.';
    const value = `${resistance.toFixed(2)} m2K/W`;
    const allowed = `at most ${total.toFixed(2)} m2K/W`;
    check.fail(`${field}.layers`, "insulate more than the part's U-value", value, fix, allowed);
  }
}
