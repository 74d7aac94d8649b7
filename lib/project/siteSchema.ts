import { z } from 'zod';
import { isTimeZone } from '../time/index.ts';
import {
  because,
  freeText,
  hints,
  idText,
  listOf,
  nameText,
  quantity,
  say,
  twelve,
  whole,
} from './fields.ts';

const ALBEDO_HINT = { allowed: say('range.albedo'), where: say('site.albedo') };

const timeZone = z
  .string()
  .max(64)
  .refine(isTimeZone, because('noTimeZone'))
  .register(hints, {
    allowed: say('form.timeZone'),
    where: say('site.timeZone'),
  });

/** Where the house stands. */
export const siteSchema = z.strictObject({
  name: nameText('site.name'),
  latitude: quantity(-90, 90, 'northPositive', 'site.latitude'),
  longitude: quantity(-180, 180, 'eastPositive', 'site.longitude'),
  elevation: quantity(-450, 6000, 'aboveSea', 'site.elevation'),
  timeZone,
  albedo: z
    .union([quantity(0, 1, '', 'site.albedo'), twelve(0, 1, '', 'site.albedo')])
    .register(hints, ALBEDO_HINT)
    .default(0.2),
  horizon: listOf(
    z.strictObject({
      azimuth: quantity(0, 360, 'clockwise', 'site.horizon'),
      altitude: quantity(0, 90, 'aboveHorizontal', 'site.horizon'),
    }),
    720,
  ).default([]),
  windExposure: quantity(0, 1.5, '', 'site.windExposure').default(0.55),
});

const seed = whole(0, 4294967295, 'climate.seed');

const normals = z.strictObject({
  ghiKWhPerM2Day: twelve(0, 14, 'perDay', 'climate.monthly'),
  dryBulbMean: twelve(-80, 50, 'celsius', 'climate.monthly'),
  dryBulbDailyMin: twelve(-90, 50, 'celsius', 'climate.monthly'),
  dryBulbDailyMax: twelve(-80, 60, 'celsius', 'climate.monthly'),
  wind: twelve(0, 30, 'm/s', 'climate.monthly').optional(),
  dhiKWhPerM2Day: twelve(0, 10, 'perDay', 'climate.monthly').optional(),
  dniKWhPerM2Day: twelve(0, 16, 'perDay', 'climate.monthly').optional(),
  dailyMeanTempStd: twelve(0, 20, 'K', 'climate.monthly').optional(),
  dailyClearnessStd: twelve(0, 0.5, '', 'climate.monthly').optional(),
});

/** Where the typical year comes from. */
export const climateSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('station'),
    station: idText('climate.station'),
    seed,
  }),
  z.strictObject({
    kind: z.literal('monthly'),
    normals,
    seed,
    note: freeText('climate.monthlyNote'),
  }),
  z.strictObject({
    kind: z.literal('file'),
    fileName: nameText('climate.fileName'),
    note: freeText('climate.fileNote'),
  }),
]);
