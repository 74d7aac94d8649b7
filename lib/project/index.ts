export { checkProject, parseProject } from './check.ts';
export type { ProjectCheck } from './check.ts';
export type { LibraryStation, ProjectLibrary } from './library.ts';
export { blindPrices, houseOf, projectOf } from './house.ts';
export { MOST_KEPT, projectSchema } from './schema.ts';
export type {
  House,
  Project,
  ProjectClimate,
  ProjectGroup,
  ProjectInput,
  ProjectOpening,
  ProjectSettings,
  ProjectSite,
  ProjectWall,
} from './schema.ts';
export { FORMAT, VERSION } from './format.ts';
export { migrate } from './migrate.ts';
export type { Migration } from './migrate.ts';
export { serializeProject } from './serialize.ts';
export {
  DEFAULT_GLAZING,
  DEFAULT_STATION,
  defaultProject,
  freeId,
  newOpening,
  newWall,
} from './defaults.ts';
export { defaultSources } from './defaultSources.ts';
export { fieldHints } from './formHint.ts';
export type { FieldHint } from './fields.ts';
export { geometryOf, planeOf } from './geometry.ts';
