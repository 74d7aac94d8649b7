import { z } from 'zod';
import { isTimeZone } from '../time/index.ts';
import { freeText, hints, idText, listOf, nameText, quantity, twelve, whole } from './fields.ts';

const ALBEDO = 'Take 0.2 for grass and soil, 0.5 to 0.8 under snow.';
const ALBEDO_HINT = { allowed: '0 to 1, or a list of twelve such values', where: ALBEDO };
const HORIZON = 'Read the height of trees and hills with a clinometer, a compass bearing for each.';
const MONTHLY = 'Take the monthly values of a public climate summary for the place.';

const timeZone = z
  .string()
  .max(64)
  .refine(isTimeZone, { error: 'is no time zone of the IANA database' })
  .register(hints, {
    allowed: 'a name of the IANA time zone database, such as America/New_York',
    where: 'Name a large city of the same zone.',
  });

/** Where the house stands. */
export const siteSchema = z.strictObject({
  name: nameText('Give the place a name.'),
  latitude: quantity(-90, 90, 'degrees, north positive', 'Read it on a map; south is negative.'),
  longitude: quantity(-180, 180, 'degrees, east positive', 'Read it on a map; west is negative.'),
  elevation: quantity(-450, 6000, 'm above sea level', 'Read it on a map; feet times 0.3048.'),
  timeZone,
  albedo: z
    .union([quantity(0, 1, '', ALBEDO), twelve(0, 1, '', ALBEDO)])
    .register(hints, ALBEDO_HINT)
    .default(0.2),
  horizon: listOf(
    z.strictObject({
      azimuth: quantity(0, 360, 'degrees clockwise from north', HORIZON),
      altitude: quantity(0, 90, 'degrees above the horizontal', HORIZON),
    }),
    720,
  ).default([]),
  windExposure: quantity(
    0,
    1.5,
    '',
    "Wind at the facade over the station's wind at 10 m: 1 in the open, 0.3 to 0.6 among trees or houses.",
  ).default(0.55),
});

const seed = whole(0, 4294967295, 'Any whole number; another one gives another year.');

const normals = z.strictObject({
  ghiKWhPerM2Day: twelve(0, 14, 'kWh/m2 a day', MONTHLY),
  dryBulbMean: twelve(-80, 50, 'C', MONTHLY),
  dryBulbDailyMin: twelve(-90, 50, 'C', MONTHLY),
  dryBulbDailyMax: twelve(-80, 60, 'C', MONTHLY),
  wind: twelve(0, 30, 'm/s', MONTHLY).optional(),
  dhiKWhPerM2Day: twelve(0, 10, 'kWh/m2 a day', MONTHLY).optional(),
  dniKWhPerM2Day: twelve(0, 16, 'kWh/m2 a day', MONTHLY).optional(),
  dailyMeanTempStd: twelve(0, 20, 'K', MONTHLY).optional(),
  dailyClearnessStd: twelve(0, 0.5, '', MONTHLY).optional(),
});

/** Where the typical year comes from. */
export const climateSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('station'),
    station: idText('Name a station of the library.'),
    seed,
  }),
  z.strictObject({
    kind: z.literal('monthly'),
    normals,
    seed,
    note: freeText('Say where the monthly values come from.'),
  }),
  z.strictObject({
    kind: z.literal('file'),
    fileName: nameText('Name the hourly file that is given beside the project.'),
    note: freeText('Say what the hourly file is and where it comes from.'),
  }),
]);
