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
import type { FieldKey, FieldUnit } from './fields.ts';

const clearPane = z.strictObject({
  thickness: quantity(0.001, 0.05, 'm', 'pane.thickness'),
  extinction: quantity(0, 200, '1/m', 'pane.extinction'),
  refractiveIndex: quantity(1.2, 2, '', 'pane.refractiveIndex'),
});

const angular = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('coated'),
    q: quantity(1, 10, '', 'glazing.q'),
  }),
  z.strictObject({ kind: z.literal('clear'), panes: z.array(clearPane).min(1).max(4) }),
]);

/** A glazing unit of the project's own. */
export const glazingSchema = z.strictObject({
  id: idText('glazing.id'),
  name: nameText('glazing.name'),
  panes: whole(1, 4, 'glazing.panes'),
  g: quantity(0.05, 0.92, '', ['read.glazingSheet', 'glazing.g']),
  solarTransmittance: quantity(0.01, 0.92, '', ['read.glazingSheet', 'glazing.solarTransmittance']),
  visibleTransmittance: quantity(0, 1, '', ['read.glazingSheet', 'glazing.visibleTransmittance']),
  Ug: quantity(0.3, 6, 'W/m2K', ['read.glazingSheet', 'glazing.Ug']),
  diffusing: z.boolean().optional(),
  angular,
  source: sourceText('read.source'),
});

const blindCommon = {
  id: idText('blind.id'),
  name: nameText('blind.name'),
  position: z.enum(['external', 'between', 'internal']),
  ventFactor: quantity(0, 1, '', 'blind.ventFactor').optional(),
  windLimit: quantity(1, 40, 'm/s', 'blind.windLimit').optional(),
  source: sourceText('read.source'),
};

const share = (what: FieldKey) => quantity(0, 1, '', ['read.blindSheet', what]);

/** A blind, fabric, screen or shutter of the project's own. */
export const blindSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    ...blindCommon,
    kind: z.literal('slats'),
    slatWidth: quantity(0.005, 0.5, 'm', 'blind.slatWidth'),
    slatSpacing: quantity(0.003, 0.5, 'm', 'blind.slatSpacing'),
    reflectanceUpper: share('blind.reflectanceUpper'),
    reflectanceLower: share('blind.reflectanceLower'),
    slatTransmittance: share('blind.slatTransmittance'),
    angleMin: quantity(-90, 90, 'degrees', 'blind.angleMin'),
    angleMax: quantity(-90, 90, 'degrees', 'blind.angleMax'),
  }),
  z.strictObject({
    ...blindCommon,
    kind: z.literal('fabric'),
    openness: share('blind.openness'),
    diffuseTransmittance: share('blind.diffuseTransmittance'),
    reflectance: share('blind.reflectance'),
  }),
  z.strictObject({
    ...blindCommon,
    kind: z.literal('shutter'),
    transmittance: share('blind.leak'),
    reflectance: share('blind.outerReflectance'),
  }),
]);

/** A span of dates, both days included; may run over the turn of the year. */
export const dateSpan = {
  from: monthDay('when.from'),
  to: monthDay('when.to'),
};

const trigger = (min: number, max: number, unit: FieldUnit, where: FieldKey) =>
  z
    .strictObject({ at: quantity(min, max, unit, where), release: quantity(min, max, unit, where) })
    .optional();

const conditions = z.strictObject({
  months: z
    .array(whole(1, 12, 'when.month'))
    .min(1)
    .max(12)
    .optional(),
  dates: z.strictObject(dateSpan).optional(),
  weekdays: z
    .array(whole(1, 7, 'when.weekday'))
    .min(1)
    .max(7)
    .optional(),
  clock: z
    .strictObject({ from: clockMinutes('when.clock'), to: clockMinutes('when.clock') })
    .optional(),
  grid: listOf(
    z.strictObject({
      month: whole(1, 12, 'when.month'),
      from: clockMinutes('when.clock'),
      to: clockMinutes('when.clock'),
    }),
    1200,
  ).optional(),
  sunOnFacade: z.boolean().optional(),
  irradianceAbove: trigger(0, 1500, 'W/m2', 'when.irradiance'),
  irradianceBelow: trigger(0, 1500, 'W/m2', 'when.irradiance'),
  outdoorAbove: trigger(-60, 60, 'celsius', 'when.outdoor'),
  outdoorBelow: trigger(-60, 60, 'celsius', 'when.outdoor'),
  roomAbove: trigger(0, 60, 'celsius', 'when.room'),
  roomBelow: trigger(0, 60, 'celsius', 'when.room'),
});

const loweredShare = quantity(0.05, 1, '', 'schedule.share');
const slatAngle = quantity(-90, 90, 'degrees', 'schedule.angle');

const action = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('raise') }),
  z.strictObject({ kind: z.literal('lower'), share: loweredShare.optional() }),
  z.strictObject({ kind: z.literal('tilt'), angle: slatAngle, share: loweredShare.optional() }),
  z.strictObject({ kind: z.literal('track'), share: loweredShare.optional() }),
]);

/** A blind schedule: rules in order, the first that holds decides. */
export const scheduleSchema = z.strictObject({
  id: idText('schedule.id'),
  name: nameText('schedule.name'),
  rules: listOf(
    z.strictObject({
      id: idText('rule.id'),
      name: freeText('rule.name').optional(),
      when: conditions,
      then: action,
    }),
    100,
  ),
  minMinutesBetweenMoves: quantity(0, 1440, 'min', 'schedule.minMinutesBetweenMoves'),
});
