import type { z } from 'zod';
import { openingSchema, wallSchema } from './openingSchema.ts';
import { blindSchema, glazingSchema, scheduleSchema } from './partsSchema.ts';
import { roomSchema } from './roomSchema.ts';
import type { House, Project } from './schema.ts';
import { climateSchema } from './siteSchema.ts';
import { valueAt } from './walk.ts';

/** One sound entry of a list with its place in the file. */
export interface Part<T> {
  at: number;
  item: T;
}

/** Those parts of a project that are sound by themselves, whatever is wrong elsewhere in the file. */
export interface SoundParts {
  climate?: Project['climate'];
  walls: Part<Project['walls'][number]>[];
  openings: Part<Project['openings'][number]>[];
  glazings: Part<Project['glazings'][number]>[];
  blinds: Part<Project['blinds'][number]>[];
  schedules: Part<Project['schedules'][number]>[];
  rooms: Part<Project['rooms'][number]>[];
}

/** Every part of a project that is sound as a whole. */
export function partsOf(project: House): SoundParts {
  const all = <T>(list: readonly T[]): Part<T>[] => list.map((item, at) => ({ at, item }));
  return {
    climate: project.climate,
    walls: all(project.walls),
    openings: all(project.openings),
    glazings: all(project.glazings),
    blinds: all(project.blinds),
    schedules: all(project.schedules),
    rooms: all(project.rooms),
  };
}

/** Takes the sound parts out of raw data, so that their own rules can be checked all the same. */
export function soundParts(root: unknown): SoundParts {
  return {
    climate: climateSchema.safeParse(valueAt(root, ['climate'])).data,
    walls: sound(root, 'walls', wallSchema),
    openings: sound(root, 'openings', openingSchema),
    glazings: sound(root, 'glazings', glazingSchema),
    blinds: sound(root, 'blinds', blindSchema),
    schedules: sound(root, 'schedules', scheduleSchema),
    rooms: sound(root, 'rooms', roomSchema),
  };
}

function sound<T>(root: unknown, name: string, schema: z.ZodType<T>): Part<T>[] {
  const list = valueAt(root, [name]);
  if (!Array.isArray(list)) return [];
  return list.flatMap((value, at) => {
    const result = schema.safeParse(value);
    return result.success ? [{ at, item: result.data }] : [];
  });
}
