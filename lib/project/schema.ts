import { z } from 'zod';
import { freeText, idText, listOf, nameText, quantity, whole } from './fields.ts';
import { openingSchema, wallSchema } from './openingSchema.ts';
import { blindSchema, glazingSchema, scheduleSchema } from './partsSchema.ts';
import { roomSchema } from './roomSchema.ts';
import { climateSchema, siteSchema } from './siteSchema.ts';

/** Blinds moved together by one remote channel. */
export const groupSchema = z.strictObject({
  id: idText('group.id'),
  name: nameText('group.name'),
  channel: whole(1, 999, 'group.channel'),
  schedule: idText('blindUse.schedule'),
  lead: idText('group.lead'),
});

/** Which sky model and which overheating criterion count; the figures belong to the criteria. */
const settingsSchema = z.strictObject({
  skyModel: z.enum(['perez', 'hay-davies']).default('perez'),
  criterion: z.enum(['shareAbove', 'adaptive', 'bedroomNights', 'din4108']).default('shareAbove'),
  overheatingLimit: quantity(18, 40, 'celsius', 'settings.overheatingLimit').default(25),
  overheatingShare: quantity(0, 1, '', 'settings.overheatingShare').default(0.1),
  adaptiveCategory: z.enum(['I', 'II', 'III']).default('II'),
  dinRegion: z.enum(['A', 'B', 'C']).default('B'),
});

/** Words of the client page that the user has set; the program's own where absent or blank. */
const pageSchema = z.strictObject({
  title: freeText('page.title').optional(),
  question: freeText('page.question').optional(),
  notes: freeText('page.notes').optional(),
});

/** All that a study rests on. All figures are SI; `units` only says how they are shown. */
const house = {
  name: nameText('project.name'),
  notes: freeText('project.notes').default(''),
  units: z.enum(['metric', 'imperial']).default('metric'),
  site: siteSchema,
  year: whole(1970, 2100, 'project.year').default(2026),
  climate: climateSchema,
  walls: listOf(wallSchema, 200),
  openings: listOf(openingSchema, 200),
  glazings: listOf(glazingSchema, 200).default([]),
  blinds: listOf(blindSchema, 200).default([]),
  schedules: listOf(scheduleSchema, 200).default([]),
  groups: listOf(groupSchema, 200).default([]),
  rooms: listOf(roomSchema, 100),
  settings: settingsSchema.prefault({}),
};

/** Schemes of shading that are kept to be compared, each with the whole house as it was then. */
export const MOST_KEPT = 12;
const schemeSchema = z.strictObject({ id: idText('scheme.id'), house: z.strictObject(house) });

/** The project file, version 1. */
export const projectSchema = z.strictObject({
  format: z.literal('shadewright-project'),
  version: z.literal(1),
  ...house,
  page: pageSchema.optional(),
  schemes: listOf(schemeSchema, MOST_KEPT).optional(),
});

/** A project as the program uses it: checked, with every default filled in. */
export type Project = z.output<typeof projectSchema>;
/** The part of a project that a study rests on. */
export type House = Omit<Project, 'format' | 'version' | 'page' | 'schemes'>;
/** A project as a file may have it: fields with a default may be absent. */
export type ProjectInput = z.input<typeof projectSchema>;
export type ProjectSite = Project['site'];
export type ProjectClimate = Project['climate'];
export type ProjectWall = Project['walls'][number];
export type ProjectOpening = Project['openings'][number];
export type ProjectGroup = Project['groups'][number];
export type ProjectSettings = Project['settings'];
