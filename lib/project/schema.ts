import { z } from 'zod';
import { freeText, idText, listOf, nameText, quantity, whole } from './fields.ts';
import { openingSchema, wallSchema } from './openingSchema.ts';
import { blindSchema, glazingSchema, scheduleSchema } from './partsSchema.ts';
import { roomSchema } from './roomSchema.ts';
import { climateSchema, siteSchema } from './siteSchema.ts';

/** Blinds moved together by one remote channel. */
export const groupSchema = z.strictObject({
  id: idText('Give the group an id of its own.'),
  name: nameText('Give the group a name.'),
  channel: whole(1, 999, 'Number of the channel on the remote.'),
  schedule: idText('Name a schedule of this file.'),
  lead: idText('Take "any", or the id of the opening whose sensor counts.'),
});

/** Which sky model and which overheating criterion count; the figures belong to the criteria. */
const settingsSchema = z.strictObject({
  skyModel: z.enum(['perez', 'hay-davies']).default('perez'),
  criterion: z.enum(['shareAbove', 'adaptive', 'bedroomNights', 'din4108']).default('shareAbove'),
  overheatingLimit: quantity(
    18,
    40,
    'C',
    'Operative temperature over which an hour counts as too hot; 25 is usual in very low energy housing.',
  ).default(25),
  overheatingShare: quantity(
    0,
    1,
    '',
    'Share of the hours that may be over the limit: 0.1 the usual most, 0.05 good practice.',
  ).default(0.1),
  adaptiveCategory: z.enum(['I', 'II', 'III']).default('II'),
  dinRegion: z.enum(['A', 'B', 'C']).default('B'),
});

/** Words of the client page that the user has set; the program's own where absent or blank. */
const pageSchema = z.strictObject({
  title: freeText(
    'Write the title of the client page; empty for the name of the project.',
  ).optional(),
  question: freeText('Write the question the page answers.').optional(),
  notes: freeText('Write what else the client should read.').optional(),
});

/** The project file, version 1. All figures are SI; `units` only says how they are shown. */
export const projectSchema = z.strictObject({
  format: z.literal('shadewright-project'),
  version: z.literal(1),
  name: nameText('Give the project a name.'),
  notes: freeText('Write anything that helps to read the project.').default(''),
  units: z.enum(['metric', 'imperial']).default('metric'),
  site: siteSchema,
  year: whole(
    1970,
    2100,
    'Calendar year for weekdays and clock changes; the weather does not change with it.',
  ).default(2026),
  climate: climateSchema,
  walls: listOf(wallSchema, 200),
  openings: listOf(openingSchema, 200),
  glazings: listOf(glazingSchema, 200).default([]),
  blinds: listOf(blindSchema, 200).default([]),
  schedules: listOf(scheduleSchema, 200).default([]),
  groups: listOf(groupSchema, 200).default([]),
  rooms: listOf(roomSchema, 100),
  settings: settingsSchema.prefault({}),
  page: pageSchema.optional(),
});

/** A project as the program uses it: checked, with every default filled in. */
export type Project = z.output<typeof projectSchema>;
/** A project as a file may have it: fields with a default may be absent. */
export type ProjectInput = z.input<typeof projectSchema>;
export type ProjectSite = Project['site'];
export type ProjectClimate = Project['climate'];
export type ProjectWall = Project['walls'][number];
export type ProjectOpening = Project['openings'][number];
export type ProjectGroup = Project['groups'][number];
export type ProjectSettings = Project['settings'];
