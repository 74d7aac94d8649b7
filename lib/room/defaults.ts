import type { AiringRule, DayProfiles, OccupiedHours, OpaquePart, Room, RoomUse } from './types.ts';

/** Figures of a very well insulated, airtight house for what the user has not yet given. */
export const roomDefaults = {
  /** m */
  height: 2.5,
  massClass: 'light',
  /** W/m2K */
  wallU: 0.12,
  roofU: 0.1,
  floorU: 0.12,
  /** W/K */
  thermalBridges: 0,
  /** 1/h */
  n50: 0.6,
  shielding: 0.07,
  /** 1/h */
  airChange: 0.35,
  heatRecovery: 0.8,
  /** C */
  bypassAbove: 23,
  /** W */
  heatPerPerson: 70,
  /** W/m2 */
  appliancesAlways: 1,
  appliancesInUse: 2,
  /** C */
  heatingSetPoint: 20,
  /** C and K */
  airingOpenAbove: 23,
  airingCloseBelow: 20,
  airingMargin: 1,
  /** Degrees */
  tiltAngle: 8,
  screenFlowFactor: 0.6,
  blindFlowFactor: 0.5,
} as const;

/** Where each default comes from. */
export const roomDefaultSources: Readonly<Record<keyof typeof roomDefaults, string>> = {
  height: 'common practice: a storey of 2.4 to 2.7 m clear height',
  massClass:
    'EN ISO 13790:2008, table 12 (light: 110 kJ/m2K); taken because a light room overheats first',
  wallU: 'common practice in very low energy houses: 0.10 to 0.15 W/m2K',
  roofU: 'common practice in very low energy houses: 0.08 to 0.12 W/m2K',
  floorU: 'common practice in very low energy houses: 0.10 to 0.15 W/m2K',
  thermalBridges: 'common practice: joints planned free of thermal bridges (psi at most 0.01 W/mK)',
  n50: 'common practice: usual limit for very low energy houses, measured by EN ISO 9972',
  shielding:
    'EN ISO 13789:2007, table C.4: several facades exposed, moderately shielded (from memory)',
  airChange: 'common practice: 0.3 to 0.4 air changes an hour in dwellings with fan ventilation',
  heatRecovery: 'common practice: 0.75 to 0.9; the unit has it on its data sheet',
  bypassAbove: 'common practice: summer bypass opens at 22 to 24 C inside',
  heatPerPerson:
    'sensible heat of a person seated at light work: 70 to 75 W (ASHRAE Handbook Fundamentals, nonresidential loads; from memory)',
  appliancesAlways: 'common practice: standing load of refrigeration and standby, 1 W/m2',
  appliancesInUse: 'common practice: cooking, light and screens in use, 2 W/m2 more',
  heatingSetPoint: 'EN 16798-1:2019, table B.2: living spaces, category II, winter (from memory)',
  airingOpenAbove: 'common practice: occupants open at about 23 C',
  airingCloseBelow: 'common practice: occupants shut before it feels cool, about 20 C',
  airingMargin: 'common practice: opened when it is felt to be cooler outside',
  tiltAngle: 'common practice: a bottom-hung sash stands 6 to 10 degrees open',
  screenFlowFactor:
    'common practice: a fine insect mesh takes a third to a half of a slow airing flow',
  blindFlowFactor: 'common practice: about half behind a lowered blind; shutters leave less',
};

/** A room of one use with defaults for all that is not given. Its walls are an estimate to be replaced. */
export function defaultRoom(id: string, name: string, use: RoomUse, floorArea: number): Room {
  const d = roomDefaults;
  return {
    id,
    name,
    use,
    floorArea,
    volume: floorArea * d.height,
    mass: { kind: 'class', class: d.massClass },
    envelope: { kind: 'parts', parts: estimatedParts(floorArea) },
    thermalBridges: d.thermalBridges,
    infiltration: { kind: 'n50', n50: d.n50, shielding: d.shielding },
    ventilation: {
      flow: { kind: 'ach', ach: d.airChange },
      heatRecovery: d.heatRecovery,
      bypassAbove: d.bypassAbove,
    },
    people: peopleOf(use),
    appliances: appliancesOf(use, floorArea),
    heating: { setPoint: d.heatingSetPoint },
    occupied: occupiedOf(use),
    airing: [],
  };
}

/** Airing through tilted sashes at night, the first thing to compare blinds with. */
export function nightAiring(): AiringRule {
  return {
    id: 'night-airing',
    name: 'Night airing, tilted',
    position: 'tilt',
    clock: { from: 22 * 60, to: 7 * 60 },
    openAbove: roomDefaults.airingOpenAbove,
    closeBelow: roomDefaults.airingCloseBelow,
    margin: roomDefaults.airingMargin,
    whenVacant: 'tilt',
  };
}

/** A detached room 3 to 2 in plan with a fifth of its walls glazed: an estimate of our own. */
function estimatedParts(floorArea: number): OpaquePart[] {
  const perimeter = 5 * Math.sqrt(floorArea / 1.5);
  const { height, wallU, roofU, floorU } = roomDefaults;
  const walls = Math.round(perimeter * height * 0.8 * 10) / 10;
  return [
    { name: 'Walls', area: walls, U: wallU, boundary: 'outdoor' },
    { name: 'Roof', area: floorArea, U: roofU, boundary: 'outdoor' },
    { name: 'Floor', area: floorArea, U: floorU, boundary: 'ground' },
  ];
}

/** People in each hour by use, common practice: two adults, one at home by day. */
function peopleOf(use: RoomUse): DayProfiles {
  const persons: Record<RoomUse, { weekday: number[]; weekend: number[] }> = {
    living: { weekday: day([7, 2], [9, 1], [17, 2], [23, 0]), weekend: day([8, 2], [23, 0]) },
    bedroom: {
      weekday: day([0, 2], [7, 0], [22, 2]),
      weekend: day([0, 2], [8, 0], [23, 2]),
    },
    work: { weekday: day([8, 1], [18, 0]), weekend: day() },
    other: { weekday: day([7, 1], [9, 0], [17, 1], [22, 0]), weekend: day([8, 1], [22, 0]) },
  };
  const watts = (counts: number[]) => counts.map((n) => n * roomDefaults.heatPerPerson);
  return { weekday: watts(persons[use].weekday), weekend: watts(persons[use].weekend) };
}

function appliancesOf(use: RoomUse, floorArea: number): DayProfiles {
  const inUse: Record<RoomUse, { weekday: number[]; weekend: number[] }> = {
    living: { weekday: day([17, 1], [23, 0]), weekend: day([10, 1], [23, 0]) },
    bedroom: { weekday: day([21, 0.5], [23, 0]), weekend: day([21, 0.5], [23, 0]) },
    work: { weekday: day([8, 1], [18, 0]), weekend: day() },
    other: { weekday: day([17, 0.5], [22, 0]), weekend: day([10, 0.5], [22, 0]) },
  };
  const watts = (shares: number[]) =>
    shares.map(
      (share) => (roomDefaults.appliancesAlways + share * roomDefaults.appliancesInUse) * floorArea,
    );
  return { weekday: watts(inUse[use].weekday), weekend: watts(inUse[use].weekend) };
}

function occupiedOf(use: RoomUse): OccupiedHours {
  const span = (from: number, to: number) => [{ from: from * 60, to: to * 60 }];
  if (use === 'bedroom') return { weekday: span(22, 7), weekend: span(23, 8) };
  if (use === 'work') return { weekday: span(8, 18), weekend: [] };
  return { weekday: span(7, 23), weekend: span(8, 23) };
}

/** 24 values from changes [hour, value]; 0 before the first. */
function day(...changes: [hour: number, value: number][]): number[] {
  const values = Array<number>(24).fill(0);
  for (const [hour, value] of changes) values.fill(value, hour);
  return values;
}
