import type { Problem } from '../problem/index.ts';
import { infiltrationRate, ventilationFlow } from './air.ts';
import { Checker } from './checker.ts';
import { SURFACE_PER_FLOOR } from './mass.ts';
import type { DayProfiles, HeatingOrCooling, Room, RoomOpening } from './types.ts';
import { checkAiring } from './validateAiring.ts';
import { checkMass } from './validateMass.ts';

/** What keeps a room from being run, and what looks like a slip. */
export interface RoomCheck {
  problems: Problem[];
  warnings: Problem[];
}

/** Checks a room with its openings. @param path field path of the room, such as `rooms[0]` */
export function validateRoom(
  room: Room,
  openings: readonly RoomOpening[] = [],
  path = 'room',
): RoomCheck {
  const check = new Checker(path);
  checkSize(check, room);
  checkMass(check, room);
  checkEnvelope(check, room);
  checkOpenings(check, room, openings);
  checkLosses(check, room, openings);
  checkAir(check, room);
  checkGains(check, room);
  checkSetPoints(check, room);
  checkOccupied(check, room);
  checkAiring(check, room, openings);
  return { problems: check.problems, warnings: check.warnings };
}

function checkSize(check: Checker, room: Room): void {
  const { floorArea, volume } = room;
  const floor = check.positive('floorArea', floorArea, 'm2', 'Measure the floor inside the walls.');
  const air = check.positive('volume', volume, 'm3', 'Take floor area times clear height.');
  if (!floor || !air) return;
  const height = volume / floorArea;
  if (height < 1.8 || height > 8) {
    const fix = 'Check floor area and volume.';
    check.warn('volume', 'gives an odd clear height', `${height.toFixed(1)} m`, fix, '1.8 to 8 m');
  }
}

function checkEnvelope(check: Checker, room: Room): void {
  const { envelope } = room;
  const build = 'Take it from the build-up.';
  check.range('thermalBridges', room.thermalBridges, 0, 500, 'W/K', 'Take 0 if all are avoided.');
  if (envelope.kind === 'total') {
    check.range('envelope.UA', envelope.UA, 0, 10_000, 'W/K', build);
    check.range('envelope.groundUA', envelope.groundUA ?? 0, 0, 10_000, 'W/K', build);
    return;
  }
  const names = new Set<string>();
  envelope.parts.forEach((part, i) => {
    const field = (key: string) => `envelope.parts[${i}].${key}`;
    check.positive(field('area'), part.area, 'm2', 'Measure it, openings taken off.');
    check.range(field('U'), part.U, 0.02, 6, 'W/m2K', build);
    check.range(field('temperature'), part.temperature ?? 10, -40, 60, 'C', 'Give a yearly mean.');
    const share = 'Take 0.3 for white, 0.6 for wood or brick, 0.9 for black.';
    check.range(field('solarAbsorptance'), part.solarAbsorptance ?? 0, 0, 1, '', share);
    if (names.has(part.name)) {
      check.fail(field('name'), 'stands twice', part.name, 'Give each part a name of its own.');
    }
    names.add(part.name);
  });
}

function checkOpenings(check: Checker, room: Room, openings: readonly RoomOpening[]): void {
  openings.forEach((o, i) => {
    const field = (key: string) => `openings[${i}].${key}`;
    check.positive(field('area'), o.area, 'm2', 'Measure the opening.');
    check.range(field('U'), o.U, 0.2, 6.5, 'W/m2K', "Read it on the window's data sheet.");
    const factor = 'Give the share of the flow that is left.';
    check.range(field('screenFlowFactor'), o.screenFlowFactor, 0, 1, '', factor);
    check.range(field('blindFlowFactor'), o.blindFlowFactor, 0, 1, '', factor);
  });
  const glazed = openings.reduce((sum, o) => sum + o.area, 0);
  const inner = SURFACE_PER_FLOOR * room.floorArea;
  if (glazed > inner) {
    const fix = 'Check the sizes of the openings and the floor area.';
    const allowed = `at most ${inner.toFixed(1)} m2, ${SURFACE_PER_FLOOR} times the floor area`;
    check.fail('openings', 'are larger than all the room has walls for', glazed, fix, allowed);
    return;
  }
  if (room.envelope.kind !== 'parts') return;
  const walls = room.envelope.parts
    .filter((p) => p.boundary === 'outdoor')
    .reduce((sum, p) => sum + p.area, 0);
  if (glazed > walls) {
    const fix = 'Check whether a wall or the roof is missing.';
    const allowed = `usually at most ${walls.toFixed(1)} m2`;
    check.warn('openings', 'are larger than all outdoor walls and roofs', glazed, fix, allowed);
  }
}

function checkLosses(check: Checker, room: Room, openings: readonly RoomOpening[]): void {
  const { envelope } = room;
  const losing =
    openings.length > 0 ||
    room.thermalBridges > 0 ||
    (envelope.kind === 'total'
      ? envelope.UA + (envelope.groundUA ?? 0) > 0
      : envelope.parts.some((p) => p.boundary !== 'room' || p.temperature !== undefined));
  if (!losing) {
    check.fail('envelope', 'leads nowhere: the room can lose no heat', envelope, 'Add its walls.');
  }
}

function checkAir(check: Checker, room: Room): void {
  const { infiltration, ventilation } = room;
  if (infiltration.kind === 'n50') {
    const blower = 'Take it from the blower door test.';
    check.range('infiltration.n50', infiltration.n50, 0, 30, '1/h', blower);
    const table = 'Take 0.07 if in doubt (EN ISO 13789).';
    check.range('infiltration.shielding', infiltration.shielding, 0, 0.5, '', table);
  } else {
    check.range('infiltration.ach', infiltration.ach, 0, 20, '1/h', 'Give a yearly mean.');
  }
  const { flow } = ventilation;
  const plan = 'Take it from the ventilation plan.';
  if (flow.kind === 'ach') check.range('ventilation.flow.ach', flow.ach, 0, 30, '1/h', plan);
  else check.range('ventilation.flow.m3PerHour', flow.m3PerHour, 0, 10_000, 'm3/h', plan);
  const sheet = 'Read it on the data sheet; 0 without heat recovery.';
  check.range('ventilation.heatRecovery', ventilation.heatRecovery, 0, 1, '', sheet);
  check.range('ventilation.bypassAbove', ventilation.bypassAbove ?? 23, 10, 40, 'C', plan);
  const rate =
    infiltrationRate(infiltration) + ventilationFlow(ventilation, room.volume) / room.volume;
  if (rate === 0) {
    const fix = 'Give leaks or a ventilation: nobody can live in a room without fresh air.';
    check.fail('ventilation', 'and leaks bring in no air at all', rate, fix);
  } else if (rate < 0.1) {
    const fix = 'Check leaks and ventilation.';
    check.warn('ventilation', 'and leaks bring in very little air', rate, fix, '0.1 1/h or more');
  }
  if (infiltration.kind === 'n50' && infiltration.n50 > 3) {
    const fix = 'Check the figure of the blower door test.';
    check.warn('infiltration.n50', 'is that of a leaky house', infiltration.n50, fix);
  }
}

function checkGains(check: Checker, room: Room): void {
  for (const key of ['people', 'appliances'] as const) {
    const profiles: DayProfiles = room[key];
    for (const day of ['weekday', 'weekend'] as const) {
      const field = `${key}.${day}`;
      const watts = profiles[day];
      if (watts.length !== 24) {
        check.fail(field, 'must have 24 values', watts.length, 'Give one for each hour.', '24');
        continue;
      }
      const gain = 'Give the heat in watts.';
      watts.forEach((w, h) => check.range(`${field}[${h}]`, w, 0, 100_000, 'W', gain));
    }
  }
  const { weekday } = room.people;
  const { weekday: machines } = room.appliances;
  const mean = [...weekday, ...machines].reduce((a, b) => a + b, 0) / 24 / room.floorArea;
  if (mean > 20) {
    const fix = 'Check the profiles of people and appliances.';
    const value = `${mean.toFixed(1)} W/m2`;
    check.warn('people', 'and appliances heat like an office full of machines', value, fix);
  }
}

function checkSetPoints(check: Checker, room: Room): void {
  const checkOne = (key: 'heating' | 'cooling', device: HeatingOrCooling | undefined) => {
    if (device === undefined) return;
    const fix = 'Give the temperature the room is held at.';
    check.range(`${key}.setPoint`, device.setPoint, 5, 35, 'C', fix);
    if (device.maxPower === undefined) return;
    check.range(`${key}.maxPower`, device.maxPower, 0, 1_000_000, 'W', 'Leave it out if unknown.');
  };
  checkOne('heating', room.heating);
  checkOne('cooling', room.cooling);
  const { heating, cooling } = room;
  if (heating && cooling && cooling.setPoint <= heating.setPoint) {
    const fix = 'Set cooling well above heating.';
    const allowed = `over ${heating.setPoint} C`;
    check.fail('cooling.setPoint', 'is not above heating', cooling.setPoint, fix, allowed);
  }
}

function checkOccupied(check: Checker, room: Room): void {
  for (const day of ['weekday', 'weekend'] as const) {
    room.occupied[day].forEach((span, i) => check.span(`occupied.${day}[${i}]`, span));
  }
}
