import { z } from 'zod';
import {
  clockMinutes,
  freeText,
  idText,
  listOf,
  monthDay,
  nameText,
  quantity,
  sourceText,
  whole,
} from './fields.ts';

const SOURCE = 'Say where the figures come from: a data sheet, a standard, or `common practice`.';
const DATA_SHEET = "Read it on the glazing's data sheet.";
const BLIND_SHEET = "Read it on the blind's or fabric's data sheet.";

const clearPane = z.strictObject({
  thickness: quantity(
    0.001,
    0.05,
    'm',
    'Read the pane thickness on the data sheet (4 mm is 0.004).',
  ),
  extinction: quantity(0, 200, '1/m', 'Take 4 for water-white glass up to 32 for greenish glass.'),
  refractiveIndex: quantity(1.2, 2, '', 'Take 1.526 for soda-lime glass.'),
});

const angular = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('coated'),
    q: quantity(1, 10, '', 'Take 4 for most coated glass (Karlsson & Roos 2000).'),
  }),
  z.strictObject({ kind: z.literal('clear'), panes: z.array(clearPane).min(1).max(4) }),
]);

/** A glazing unit of the project's own. */
export const glazingSchema = z.strictObject({
  id: idText('Give the glazing an id of its own.'),
  name: nameText('Give the glazing a name.'),
  panes: whole(1, 4, 'Count the panes.'),
  g: quantity(
    0.05,
    0.92,
    '',
    `${DATA_SHEET} It is called g or SHGC of the glass, as a share (50 % is 0.5).`,
  ),
  solarTransmittance: quantity(
    0.01,
    0.92,
    '',
    `${DATA_SHEET} Direct solar transmittance, as a share.`,
  ),
  visibleTransmittance: quantity(0, 1, '', `${DATA_SHEET} Light transmittance, as a share.`),
  Ug: quantity(0.3, 6, 'W/m2K', `${DATA_SHEET} From Btu/h ft2 F multiply by 5.678.`),
  diffusing: z.boolean().optional(),
  angular,
  source: sourceText(SOURCE),
});

const blindCommon = {
  id: idText('Give the blind an id of its own.'),
  name: nameText('Give the blind a name.'),
  position: z.enum(['external', 'between', 'internal']),
  ventFactor: quantity(
    0,
    1,
    '',
    'Take 0 for a closed cavity, 1 for one as free to the outdoor air as an external blind.',
  ).optional(),
  windLimit: quantity(
    1,
    40,
    'm/s',
    "Read the wind limit in the blind's data sheet (8 to 13 m/s is common practice).",
  ).optional(),
  source: sourceText(SOURCE),
};

const share = (what: string) => quantity(0, 1, '', `${BLIND_SHEET} ${what}, as a share.`);

/** A blind, fabric, screen or shutter of the project's own. */
export const blindSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    ...blindCommon,
    kind: z.literal('slats'),
    slatWidth: quantity(0.005, 0.5, 'm', 'Measure across one slat (80 mm is 0.08).'),
    slatSpacing: quantity(0.003, 0.5, 'm', 'Measure from slat to slat (72 mm is 0.072).'),
    reflectanceUpper: share('Solar reflectance of the upper side'),
    reflectanceLower: share('Solar reflectance of the lower side'),
    slatTransmittance: share('Solar transmittance of the slat itself, 0 for metal'),
    angleMin: quantity(-90, 90, 'degrees', 'Take the smallest angle the drive reaches.'),
    angleMax: quantity(-90, 90, 'degrees', 'Take the largest angle the drive reaches.'),
  }),
  z.strictObject({
    ...blindCommon,
    kind: z.literal('fabric'),
    openness: share('Openness factor'),
    diffuseTransmittance: share('Solar transmittance less the openness'),
    reflectance: share('Solar reflectance of the side towards the sun'),
  }),
  z.strictObject({
    ...blindCommon,
    kind: z.literal('shutter'),
    transmittance: share('What leaks past it'),
    reflectance: share('Solar reflectance of the outer side'),
  }),
]);

/** A span of dates, both days included; may run over the turn of the year. */
export const dateSpan = {
  from: monthDay('Give the first day.'),
  to: monthDay('Give the last day.'),
};

const trigger = (min: number, max: number, unit: string, where: string) =>
  z
    .strictObject({ at: quantity(min, max, unit, where), release: quantity(min, max, unit, where) })
    .optional();

const IRRADIANCE = 'Give the global irradiance on the facade (150 to 300 W/m2 is common practice).';
const OUTDOOR = 'Give the outdoor temperature in degrees Celsius.';
const ROOM = "Give the room's operative temperature in degrees Celsius.";
const CLOCK = 'Count minutes after midnight, local clock (14:30 is 870).';

const conditions = z.strictObject({
  months: z
    .array(whole(1, 12, 'Number the months from 1 January.'))
    .min(1)
    .max(12)
    .optional(),
  dates: z.strictObject(dateSpan).optional(),
  weekdays: z
    .array(whole(1, 7, 'Number the days from 1 Monday to 7 Sunday.'))
    .min(1)
    .max(7)
    .optional(),
  clock: z.strictObject({ from: clockMinutes(CLOCK), to: clockMinutes(CLOCK) }).optional(),
  grid: listOf(
    z.strictObject({
      month: whole(1, 12, 'Number the months from 1 January.'),
      from: clockMinutes(CLOCK),
      to: clockMinutes(CLOCK),
    }),
    1200,
  ).optional(),
  sunOnFacade: z.boolean().optional(),
  irradianceAbove: trigger(0, 1500, 'W/m2', IRRADIANCE),
  irradianceBelow: trigger(0, 1500, 'W/m2', IRRADIANCE),
  outdoorAbove: trigger(-60, 60, 'C', OUTDOOR),
  outdoorBelow: trigger(-60, 60, 'C', OUTDOOR),
  roomAbove: trigger(0, 60, 'C', ROOM),
  roomBelow: trigger(0, 60, 'C', ROOM),
});

const loweredShare = quantity(0.05, 1, '', 'Give the part of the glass height covered, 1 for all.');
const slatAngle = quantity(-90, 90, 'degrees', 'Take 0 for flat slats, 90 for closed ones.');

const action = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('raise') }),
  z.strictObject({ kind: z.literal('lower'), share: loweredShare.optional() }),
  z.strictObject({ kind: z.literal('tilt'), angle: slatAngle, share: loweredShare.optional() }),
  z.strictObject({ kind: z.literal('track'), share: loweredShare.optional() }),
]);

/** A blind schedule: rules in order, the first that holds decides. */
export const scheduleSchema = z.strictObject({
  id: idText('Give the schedule an id of its own.'),
  name: nameText('Give the schedule a name.'),
  rules: listOf(
    z.strictObject({
      id: idText('Give the rule an id of its own.'),
      name: freeText('Say what the rule is for.').optional(),
      when: conditions,
      then: action,
    }),
    100,
  ),
  minMinutesBetweenMoves: quantity(
    0,
    1440,
    'min',
    'Give the least time between two moves (15 to 30 minutes is common practice).',
  ),
});
