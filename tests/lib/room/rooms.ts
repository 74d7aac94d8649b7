import type {
  AiringRule,
  MassLayer,
  OpaquePart,
  Room,
  RoomOpening,
} from '../../../lib/room/types.ts';
import type { FdRoom, FdWall } from './finiteDifferenceRoom.ts';

// Materials with the design values of EN ISO 10456:2007, table 3.
const board = { conductivity: 0.25, density: 900, specificHeat: 1000 };
const wood = { conductivity: 0.13, density: 500, specificHeat: 1600 };
const osb = { conductivity: 0.13, density: 650, specificHeat: 1700 };
const screed = { conductivity: 1.35, density: 2000, specificHeat: 1000 };
const concrete = { conductivity: 2.3, density: 2300, specificHeat: 1000 };
const brick = { conductivity: 0.8, density: 1800, specificHeat: 1000 };
const plaster = { conductivity: 0.57, density: 1300, specificHeat: 1000 };
const insulation = { conductivity: 0.036, density: 40, specificHeat: 1030 };

interface TestWall {
  name: string;
  area: number;
  /** From the room outwards; to the middle of a partition. */
  layers: MassLayer[];
  /** How many of them the user gives; all where absent. */
  given?: number;
  inside?: boolean;
}

const layer = (material: Omit<MassLayer, 'thickness'>, thickness: number): MassLayer => ({
  ...material,
  thickness,
});

const FLOOR = 38;

const timberWall: TestWall = {
  name: 'walls',
  area: 50,
  layers: [
    layer(board, 0.0125),
    layer(insulation, 0.06),
    layer(osb, 0.015),
    layer(insulation, 0.24),
    layer(wood, 0.02),
  ],
};
const timberRoof: TestWall = {
  name: 'roof',
  area: FLOOR,
  layers: [layer(board, 0.0125), layer(insulation, 0.36), layer(osb, 0.022)],
};
const stud: TestWall = {
  name: 'partitions',
  area: 36,
  layers: [layer(board, 0.025), layer(insulation, 0.03)],
  inside: true,
};

/** Three build-ups of one studio of 38 m2: 7.6 x 5 m, 2.6 m high. */
export const buildUps: Record<'light' | 'medium' | 'heavy', TestWall[]> = {
  light: [
    timberWall,
    timberRoof,
    {
      name: 'floor',
      area: FLOOR,
      layers: [layer(wood, 0.022), layer(insulation, 0.3), layer(osb, 0.018)],
    },
    stud,
  ],
  medium: [
    timberWall,
    timberRoof,
    { name: 'floor', area: FLOOR, layers: [layer(screed, 0.08), layer(insulation, 0.3)], given: 1 },
    stud,
  ],
  heavy: [
    {
      name: 'walls',
      area: 50,
      layers: [
        layer(plaster, 0.015),
        layer(brick, 0.175),
        layer(insulation, 0.28),
        layer(plaster, 0.01),
      ],
      given: 2,
    },
    {
      name: 'roof',
      area: FLOOR,
      layers: [layer(concrete, 0.18), layer(insulation, 0.34)],
      given: 1,
    },
    {
      name: 'floor',
      area: FLOOR,
      layers: [layer(screed, 0.06), layer(concrete, 0.16), layer(insulation, 0.28)],
      given: 2,
    },
    {
      name: 'partitions',
      area: 36,
      layers: [layer(plaster, 0.015), layer(brick, 0.0575)],
      inside: true,
    },
  ],
};

/** The U-value a user would read off for a build-up: ISO 6946 with 0.13 and 0.04 m2K/W. */
export function uValue(wall: TestWall): number {
  const resistance = wall.layers.reduce((sum, l) => sum + l.thickness / l.conductivity, 0);
  return 1 / (0.13 + resistance + 0.04);
}

export const windowArea = 12;
export const windowU = 0.85;
/** Air changes: 0.04 leak and 0.35 of ventilation with 80 % of the heat given back, bypass off. */
const volume = FLOOR * 2.6;
export const steadyAir = (1200 / 3600) * volume * (0.04 + 0.35 * 0.2);

export const opening: RoomOpening = {
  id: 'west',
  area: windowArea,
  U: windowU,
  airing: { kind: 'turn', width: 1, height: 2, tiltAngle: 8 },
  screenFlowFactor: 1,
  blindFlowFactor: 1,
};

/** Night airing through the tilted sash, as a rule and for the finite-difference room. */
export const nightRule: AiringRule = {
  id: 'night',
  position: 'tilt',
  clock: { from: 22 * 60, to: 7 * 60 },
  openAbove: 23,
  closeBelow: 21,
  margin: 1,
  whenVacant: 'open',
};

export const INTERNAL_GAIN = 190;

/** Steady 190 W of people and appliances, heated to 20 C, no airing. */
export function studio(kind: keyof typeof buildUps): Room {
  const walls = buildUps[kind];
  const parts = walls
    .filter((w) => !w.inside)
    .map((w): OpaquePart => ({ name: w.name, area: w.area, U: uValue(w), boundary: 'outdoor' }));
  return {
    id: kind,
    name: kind,
    use: 'living',
    floorArea: FLOOR,
    volume,
    mass: {
      kind: 'layers',
      surfaces: walls.map((w) => ({
        name: w.name,
        area: w.area,
        layers: w.layers.slice(0, w.given),
        ...(w.inside ? {} : { part: w.name }),
      })),
    },
    envelope: { kind: 'parts', parts },
    thermalBridges: 0,
    infiltration: { kind: 'ach', ach: 0.04 },
    ventilation: { flow: { kind: 'ach', ach: 0.35 }, heatRecovery: 0.8 },
    people: { weekday: Array(24).fill(90), weekend: Array(24).fill(90) },
    appliances: { weekday: Array(24).fill(100), weekend: Array(24).fill(100) },
    heating: { setPoint: 20 },
    occupied: { weekday: [{ from: 0, to: 0 }], weekend: [{ from: 0, to: 0 }] },
    airing: [],
  };
}

/**
 * The same studio for the finite-difference model, aired at night where asked: clear area of the
 * sash times the opening ratio at 8 degrees, worked by hand: 2.6e-7 x 512 - 1.19e-4 x 64 + 1.86e-2 x 8
 * = 0.14132.
 */
export function fdStudio(kind: keyof typeof buildUps, aired = false): FdRoom {
  return {
    walls: buildUps[kind].map((w): FdWall => ({
      area: w.area,
      layers: w.layers,
      boundary: w.inside ? 'adiabatic' : 'outdoor',
      convection: 2.5,
    })),
    windows: { area: windowArea, U: windowU, convection: 2.5 },
    floorArea: FLOOR,
    airCapacity: 10_000 * FLOOR,
    ventilation: steadyAir,
    heatingSetPoint: 20,
    ...(aired
      ? {
          airing: {
            area: 2 * 0.14132,
            height: 2,
            openAbove: nightRule.openAbove,
            closeBelow: nightRule.closeBelow,
            margin: nightRule.margin,
            allowed: (hour: number) => hour % 24 >= 22 || hour % 24 < 7,
          },
        }
      : {}),
  };
}
