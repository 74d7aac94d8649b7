import { decimalText, verbatim } from '../problem/index.ts';
import type { Problem } from '../problem/index.ts';
import { infiltrationRate, ventilationFlow } from './air.ts';
import { Checker } from './checker.ts';
import { SURFACE_PER_FLOOR } from './mass.ts';
import { rangeText, say } from './say.ts';
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
  const floor = check.positive('floorArea', floorArea, 'm2', 'floor');
  const air = check.positive('volume', volume, 'm3', 'volume');
  if (!floor || !air) return;
  const height = volume / floorArea;
  if (height < 1.8 || height > 8) {
    const told = say('room.inQuotes', { value: decimalText(height, 1), unit: 'm' });
    check.warn('volume', 'oddHeight', { told }, 'oddHeightFix', rangeText(1.8, 8, 'm'));
  }
}

function checkEnvelope(check: Checker, room: Room): void {
  const { envelope } = room;
  check.range('thermalBridges', room.thermalBridges, 0, 500, 'W/K', 'bridges');
  if (envelope.kind === 'total') {
    check.range('envelope.UA', envelope.UA, 0, 10_000, 'W/K', 'buildUp');
    check.range('envelope.groundUA', envelope.groundUA ?? 0, 0, 10_000, 'W/K', 'buildUp');
    return;
  }
  const names = new Set<string>();
  envelope.parts.forEach((part, i) => {
    const field = (key: string) => `envelope.parts[${i}].${key}`;
    check.positive(field('area'), part.area, 'm2', 'partArea');
    check.range(field('U'), part.U, 0.02, 6, 'W/m2K', 'buildUp');
    check.range(field('temperature'), part.temperature ?? 10, -40, 60, 'C', 'yearlyMean');
    const absorptance = part.solarAbsorptance ?? 0;
    check.range(field('solarAbsorptance'), absorptance, 0, 1, undefined, 'absorptance');
    if (names.has(part.name)) {
      check.fail(field('name'), 'twice', { given: part.name }, 'twiceFix');
    }
    names.add(part.name);
  });
}

function checkOpenings(check: Checker, room: Room, openings: readonly RoomOpening[]): void {
  openings.forEach((o, i) => {
    const field = (key: string) => `openings[${i}].${key}`;
    check.positive(field('area'), o.area, 'm2', 'openingArea');
    check.range(field('U'), o.U, 0.2, 6.5, 'W/m2K', 'openingU');
    check.range(field('screenFlowFactor'), o.screenFlowFactor, 0, 1, undefined, 'flowFactor');
    check.range(field('blindFlowFactor'), o.blindFlowFactor, 0, 1, undefined, 'flowFactor');
  });
  const glazed = openings.reduce((sum, o) => sum + o.area, 0);
  const inner = SURFACE_PER_FLOOR * room.floorArea;
  if (glazed > inner) {
    const most = { most: decimalText(inner, 1), times: SURFACE_PER_FLOOR };
    const allowed = say('room.openingsAllowed', most);
    check.fail('openings', 'openingsTooLarge', { given: glazed }, 'openingsFix', allowed);
    return;
  }
  if (room.envelope.kind !== 'parts') return;
  const walls = room.envelope.parts
    .filter((p) => p.boundary === 'outdoor')
    .reduce((sum, p) => sum + p.area, 0);
  if (glazed > walls) {
    const allowed = say('room.usuallyAtMost', { most: decimalText(walls, 1) });
    check.warn('openings', 'largerThanWalls', { given: glazed }, 'largerThanWallsFix', allowed);
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
    check.fail('envelope', 'noLoss', { given: envelope }, 'noLossFix');
  }
}

function checkAir(check: Checker, room: Room): void {
  const { infiltration, ventilation } = room;
  if (infiltration.kind === 'n50') {
    check.range('infiltration.n50', infiltration.n50, 0, 30, '1/h', 'blowerDoor');
    check.range('infiltration.shielding', infiltration.shielding, 0, 0.5, undefined, 'shielding');
  } else {
    check.range('infiltration.ach', infiltration.ach, 0, 20, '1/h', 'yearlyMean');
  }
  const { flow } = ventilation;
  if (flow.kind === 'ach') check.range('ventilation.flow.ach', flow.ach, 0, 30, '1/h', 'plan');
  else check.range('ventilation.flow.m3PerHour', flow.m3PerHour, 0, 10_000, 'm3/h', 'plan');
  check.range('ventilation.heatRecovery', ventilation.heatRecovery, 0, 1, undefined, 'recovery');
  check.range('ventilation.bypassAbove', ventilation.bypassAbove ?? 23, 10, 40, 'C', 'plan');
  const rate =
    infiltrationRate(infiltration) + ventilationFlow(ventilation, room.volume) / room.volume;
  if (rate === 0) {
    check.fail('ventilation', 'noAir', { given: rate }, 'noAirFix');
  } else if (rate < 0.1) {
    const allowed = say('room.littleAirAllowed');
    check.warn('ventilation', 'littleAir', { given: rate }, 'littleAirFix', allowed);
  }
  if (infiltration.kind === 'n50' && infiltration.n50 > 3) {
    check.warn('infiltration.n50', 'leaky', { given: infiltration.n50 }, 'leakyFix');
  }
}

function checkGains(check: Checker, room: Room): void {
  for (const key of ['people', 'appliances'] as const) {
    const profiles: DayProfiles = room[key];
    for (const day of ['weekday', 'weekend'] as const) {
      const field = `${key}.${day}`;
      const watts = profiles[day];
      if (watts.length !== 24) {
        check.fail(field, 'hours24', { given: watts.length }, 'hours24Fix', verbatim('24'));
        continue;
      }
      watts.forEach((w, h) => check.range(`${field}[${h}]`, w, 0, 100_000, 'W', 'watts'));
    }
  }
  const { weekday } = room.people;
  const { weekday: machines } = room.appliances;
  const mean = [...weekday, ...machines].reduce((a, b) => a + b, 0) / 24 / room.floorArea;
  if (mean > 20) {
    const unit = say('unit.W/m2');
    const told = say('room.inQuotes', { value: decimalText(mean, 1), unit });
    check.warn('people', 'machines', { told }, 'machinesFix');
  }
}

function checkSetPoints(check: Checker, room: Room): void {
  const checkOne = (key: 'heating' | 'cooling', device: HeatingOrCooling | undefined) => {
    if (device === undefined) return;
    check.range(`${key}.setPoint`, device.setPoint, 5, 35, 'C', 'setPoint');
    if (device.maxPower === undefined) return;
    check.range(`${key}.maxPower`, device.maxPower, 0, 1_000_000, 'W', 'power');
  };
  checkOne('heating', room.heating);
  checkOne('cooling', room.cooling);
  const { heating, cooling } = room;
  if (heating && cooling && cooling.setPoint <= heating.setPoint) {
    const allowed = say('range.over', { min: heating.setPoint, unit: say('unit.C') });
    const value = { given: cooling.setPoint };
    check.fail('cooling.setPoint', 'coolingUnder', value, 'coolingUnderFix', allowed);
  }
}

function checkOccupied(check: Checker, room: Room): void {
  for (const day of ['weekday', 'weekend'] as const) {
    room.occupied[day].forEach((span, i) => check.span(`occupied.${day}[${i}]`, span));
  }
}
