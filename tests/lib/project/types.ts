// Compile-time checks: `npm run types` fails where the file's types part from those of the engine.
import type { Blind } from '../../../lib/blind/index.ts';
import type { MonthlyNormals } from '../../../lib/climate/index.ts';
import type { Glazing } from '../../../lib/glazing/index.ts';
import type { OpeningGeometry, Sides } from '../../../lib/opening/index.ts';
import type { Project, ProjectInput, ProjectOpening } from '../../../lib/project/index.ts';
import type {
  AdaptiveCategory,
  CriterionId,
  DinRegion,
  Room,
  Sash,
} from '../../../lib/room/index.ts';
import type { Schedule } from '../../../lib/schedule/index.ts';
import type { HorizonPoint } from '../../../lib/sky/index.ts';

/** True for identical types only: an optional field missing on one side is told. */
type Same<A, B> =
  (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
type Within<A, B> = [A] extends [B] ? true : false;

/** Each entry is an error of the compiler unless it is true. */
export const agree: {
  glazing: Same<Project['glazings'][number], Glazing>;
  blind: Same<Project['blinds'][number], Blind>;
  schedule: Same<Project['schedules'][number], Schedule>;
  room: Same<Project['rooms'][number], Room>;
  horizon: Same<Project['site']['horizon'][number], HorizonPoint>;
  normals: Same<Extract<Project['climate'], { kind: 'monthly' }>['normals'], MonthlyNormals>;
  sash: Same<NonNullable<ProjectOpening['airing']>, Sash>;
  reveal: Same<ProjectOpening['reveal'], Sides>;
  frame: Same<ProjectOpening['frame']['widths'], OpeningGeometry['frame']>;
  geometry: Within<Omit<ProjectOpening, 'frame'>, Omit<OpeningGeometry, 'frame'>>;
  criterion: Within<Project['settings']['criterion'], CriterionId>;
  category: Same<Project['settings']['adaptiveCategory'], AdaptiveCategory>;
  region: Same<Project['settings']['dinRegion'], DinRegion>;
  readAgain: Within<Project, ProjectInput>;
} = {
  glazing: true,
  blind: true,
  schedule: true,
  room: true,
  horizon: true,
  normals: true,
  sash: true,
  reveal: true,
  frame: true,
  geometry: true,
  criterion: true,
  category: true,
  region: true,
  readAgain: true,
};
