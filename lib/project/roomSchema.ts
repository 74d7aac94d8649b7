import { z } from 'zod';
import { clockMinutes, freeText, idText, listOf, nameText, quantity, whole } from './fields.ts';

const span = z.strictObject({ from: clockMinutes('when.clock'), to: clockMinutes('when.clock') });

const layer = z.strictObject({
  name: freeText('mass.layerName').optional(),
  thickness: quantity(0.0005, 2, 'm', 'read.buildUp'),
  conductivity: quantity(0.005, 500, 'W/mK', 'read.buildUp'),
  density: quantity(5, 12000, 'kg/m3', 'read.buildUp'),
  specificHeat: quantity(200, 5000, 'J/kgK', 'read.buildUp'),
});

const massSurface = z.strictObject({
  name: nameText('mass.surface'),
  area: quantity(0.01, 5000, 'm2', 'mass.area'),
  layers: z.array(layer).min(1).max(20),
  part: nameText('mass.part').optional(),
  sunWeight: quantity(0, 100, '', 'mass.sunWeight').optional(),
});

const mass = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('class'),
    class: z.enum(['veryLight', 'light', 'medium', 'heavy', 'veryHeavy']),
  }),
  z.strictObject({
    kind: z.literal('value'),
    heatCapacity: quantity(1e4, 1e10, 'J/K', 'mass.heatCapacity'),
    massArea: quantity(0.1, 10000, 'm2', 'mass.massArea'),
  }),
  z.strictObject({ kind: z.literal('layers'), surfaces: z.array(massSurface).min(1).max(50) }),
]);

const opaquePart = z.strictObject({
  name: nameText('envelope.name'),
  area: quantity(0.01, 5000, 'm2', 'envelope.area'),
  U: quantity(0.02, 6, 'W/m2K', 'envelope.U'),
  boundary: z.enum(['outdoor', 'ground', 'room']),
  temperature: quantity(-40, 60, 'celsius', 'envelope.temperature').optional(),
  solarAbsorptance: quantity(0, 1, '', 'envelope.solarAbsorptance').optional(),
});

const envelope = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('parts'), parts: z.array(opaquePart).max(100) }),
  z.strictObject({
    kind: z.literal('total'),
    UA: quantity(0, 10000, 'W/K', 'envelope.UA'),
    groundUA: quantity(0, 10000, 'W/K', 'envelope.groundUA').optional(),
  }),
]);

const infiltration = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('n50'),
    n50: quantity(0, 30, 'at50Pa', 'air.n50'),
    shielding: quantity(0, 0.5, '', 'air.shielding'),
  }),
  z.strictObject({
    kind: z.literal('ach'),
    ach: quantity(0, 20, '1/h', 'air.ach'),
  }),
]);

const ventilation = z.strictObject({
  flow: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('ach'), ach: quantity(0, 30, '1/h', 'air.flow') }),
    z.strictObject({
      kind: z.literal('volume'),
      m3PerHour: quantity(0, 10000, 'm3/h', 'air.flow'),
    }),
  ]),
  heatRecovery: quantity(0, 1, '', 'air.heatRecovery'),
  bypassAbove: quantity(10, 40, 'celsius', 'air.bypassAbove').optional(),
});

const hourlyWatts = z.array(quantity(0, 100000, 'W', 'room.watts')).length(24);
const profiles = z.strictObject({ weekday: hourlyWatts, weekend: hourlyWatts });

const spans = z.array(span).max(24);
const occupied = z.strictObject({ weekday: spans, weekend: spans });

const conditioning = z
  .strictObject({
    setPoint: quantity(5, 35, 'celsius', 'conditioning.setPoint'),
    maxPower: quantity(0, 1e6, 'W', 'conditioning.maxPower').optional(),
  })
  .optional();

const airingRule = z.strictObject({
  id: idText('rule.id'),
  name: freeText('rule.name').optional(),
  openings: listOf(idText('airing.opening')).optional(),
  position: z.enum(['tilt', 'turn']),
  months: z
    .array(whole(1, 12, 'when.month'))
    .min(1)
    .max(12)
    .optional(),
  clock: span.optional(),
  openAbove: quantity(5, 50, 'celsius', 'airing.openAbove'),
  closeBelow: quantity(5, 50, 'celsius', 'airing.closeBelow'),
  margin: quantity(0, 20, 'K', 'airing.margin'),
  whenVacant: z.enum(['open', 'tilt', 'closed']),
  windLimit: quantity(0.1, 50, 'm/s', 'airing.windLimit').optional(),
});

/** A room of the house. */
export const roomSchema = z.strictObject({
  id: idText('room.id'),
  name: nameText('room.name'),
  use: z.enum(['living', 'bedroom', 'work', 'other']),
  floorArea: quantity(1, 10000, 'm2', 'room.floorArea'),
  volume: quantity(2, 100000, 'm3', 'room.volume'),
  mass,
  envelope,
  thermalBridges: quantity(0, 500, 'W/K', 'room.thermalBridges'),
  infiltration,
  ventilation,
  people: profiles,
  appliances: profiles,
  heating: conditioning,
  cooling: conditioning,
  occupied,
  airing: listOf(airingRule, 50),
});
