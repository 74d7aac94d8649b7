import { z } from 'zod';
import { clockMinutes, freeText, idText, listOf, nameText, quantity, whole } from './fields.ts';

const CLOCK = 'Count minutes after midnight, local clock (14:30 is 870).';
const BUILD_UP =
  'Read it on the build-up of the construction, or take the design value of a handbook.';

const span = z.strictObject({ from: clockMinutes(CLOCK), to: clockMinutes(CLOCK) });

const layer = z.strictObject({
  name: freeText('Name the material.').optional(),
  thickness: quantity(0.0005, 2, 'm', BUILD_UP),
  conductivity: quantity(0.005, 500, 'W/mK', BUILD_UP),
  density: quantity(5, 12000, 'kg/m3', BUILD_UP),
  specificHeat: quantity(200, 5000, 'J/kgK', BUILD_UP),
});

const massSurface = z.strictObject({
  name: nameText('Name the surface.'),
  area: quantity(0.01, 5000, 'm2', 'Measure one face of it.'),
  layers: z.array(layer).min(1).max(20),
  part: nameText('Name the opaque part it is the inner side of.').optional(),
  sunWeight: quantity(0, 100, '', 'Take 1; more where the sun mostly falls on it.').optional(),
});

const mass = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('class'),
    class: z.enum(['veryLight', 'light', 'medium', 'heavy', 'veryHeavy']),
  }),
  z.strictObject({
    kind: z.literal('value'),
    heatCapacity: quantity(1e4, 1e10, 'J/K', 'Add up the heat capacities of the inner layers.'),
    massArea: quantity(0.1, 10000, 'm2', 'Take 2.5 to 3.5 times the floor area.'),
  }),
  z.strictObject({ kind: z.literal('layers'), surfaces: z.array(massSurface).min(1).max(50) }),
]);

const opaquePart = z.strictObject({
  name: nameText('Name the part: wall, roof, floor.'),
  area: quantity(0.01, 5000, 'm2', 'Measure it without its openings.'),
  U: quantity(0.02, 6, 'W/m2K', 'Take it from the build-up; 5.678 over R (ft2 F h/Btu) gives it.'),
  boundary: z.enum(['outdoor', 'ground', 'room']),
  temperature: quantity(-40, 60, 'C', 'Give the steady temperature behind the part.').optional(),
  solarAbsorptance: quantity(
    0,
    1,
    '',
    'Take 0.3 for white, 0.6 for wood, 0.9 for black.',
  ).optional(),
});

const envelope = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('parts'), parts: z.array(opaquePart).max(100) }),
  z.strictObject({
    kind: z.literal('total'),
    UA: quantity(0, 10000, 'W/K', 'Add up area times U of all opaque parts to the outdoor air.'),
    groundUA: quantity(
      0,
      10000,
      'W/K',
      'Add up area times U of the parts on the ground.',
    ).optional(),
  }),
]);

const infiltration = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('n50'),
    n50: quantity(0, 30, 'air changes an hour at 50 Pa', 'Read it in the blower-door report.'),
    shielding: quantity(0, 0.5, '', 'Take 0.07 in a moderately sheltered place (ISO 13789:2007).'),
  }),
  z.strictObject({
    kind: z.literal('ach'),
    ach: quantity(0, 20, '1/h', 'Give the yearly mean of air leaking in.'),
  }),
]);

const FLOW = "Read the flow in the ventilation unit's commissioning sheet.";

const ventilation = z.strictObject({
  flow: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('ach'), ach: quantity(0, 30, '1/h', FLOW) }),
    z.strictObject({ kind: z.literal('volume'), m3PerHour: quantity(0, 10000, 'm3/h', FLOW) }),
  ]),
  heatRecovery: quantity(0, 1, '', "Read it on the unit's data sheet; 0 without heat recovery."),
  bypassAbove: quantity(
    10,
    40,
    'C',
    'Give the indoor temperature that opens the bypass.',
  ).optional(),
});

const hourlyWatts = z
  .array(quantity(0, 100000, 'W', 'Give watts for each hour of the day, the first from midnight.'))
  .length(24);
const profiles = z.strictObject({ weekday: hourlyWatts, weekend: hourlyWatts });

const spans = z.array(span).max(24);
const occupied = z.strictObject({ weekday: spans, weekend: spans });

const conditioning = z
  .strictObject({
    setPoint: quantity(5, 35, 'C', 'Give the operative temperature that is held.'),
    maxPower: quantity(0, 1e6, 'W', 'Read it on the rating plate, or leave it out.').optional(),
  })
  .optional();

const airingRule = z.strictObject({
  id: idText('Give the rule an id of its own.'),
  name: freeText('Say what the rule is for.').optional(),
  openings: listOf(idText('Name an opening of this file.')).optional(),
  position: z.enum(['tilt', 'turn']),
  months: z
    .array(whole(1, 12, 'Number the months from 1 January.'))
    .min(1)
    .max(12)
    .optional(),
  clock: span.optional(),
  openAbove: quantity(5, 50, 'C', 'Give the room temperature at which sashes are opened.'),
  closeBelow: quantity(5, 50, 'C', 'Give the room temperature at which sashes are shut.'),
  margin: quantity(0, 20, 'K', 'Say how much cooler it must be outside.'),
  whenVacant: z.enum(['open', 'tilt', 'closed']),
  windLimit: quantity(0.1, 50, 'm/s', 'Give the wind speed at which sashes are shut.').optional(),
});

/** A room of the house. */
export const roomSchema = z.strictObject({
  id: idText('Give the room an id of its own.'),
  name: nameText('Give the room a name.'),
  use: z.enum(['living', 'bedroom', 'work', 'other']),
  floorArea: quantity(1, 10000, 'm2', 'Measure inside the walls; ft2 times 0.0929 gives m2.'),
  volume: quantity(2, 100000, 'm3', 'Floor area times the mean clear height.'),
  mass,
  envelope,
  thermalBridges: quantity(
    0,
    500,
    'W/K',
    'Add up length times psi of edges and joints, other than around windows.',
  ),
  infiltration,
  ventilation,
  people: profiles,
  appliances: profiles,
  heating: conditioning,
  cooling: conditioning,
  occupied,
  airing: listOf(airingRule, 50),
});
