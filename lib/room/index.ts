export type {
  AiringRule,
  ClockSpan,
  DayProfiles,
  HeatingOrCooling,
  Infiltration,
  MassClass,
  MassLayer,
  MassSurface,
  OccupiedHours,
  OpaquePart,
  Room,
  RoomEnvelope,
  RoomMass,
  RoomOpening,
  RoomUse,
  Sash,
  Ventilation,
} from './types.ts';
export { compileRoom } from './compile.ts';
export type { CompileOptions, RoomModel, RoomModelKind } from './compile.ts';
export { createRoom } from './step.ts';
export type { HeatBalance, RoomInput, RoomState, RoomStep, SteppingRoom } from './stepping.ts';
export { CLOSURE_LIMIT, emptyInput, runRoom, runYear } from './run.ts';
export type { RoomDrivers, RoomYear } from './run.ts';
export { airHeatCapacity, airExchange, infiltrationRate, ventilationFlow } from './air.ts';
export type { AirExchange } from './air.ts';
export { airingFlow, airingSpeed, openingRatio, sashArea, TURNED_ANGLE } from './airing.ts';
export { arealCapacity, lumpedMass, massClasses } from './mass.ts';
export type { LumpedMass } from './mass.ts';
export { unbalanced, yearBalance } from './balance.ts';
export type { YearBalance } from './balance.ts';
export { overheatingCauses, sourceRises } from './causes.ts';
export type { Cause, CauseKind, CauseReport, OpeningSun, SourceRise } from './causes.ts';
export { usefulGains } from './gains.ts';
export type { UsefulGains } from './gains.ts';
export {
  bedroomNights,
  degreeHours,
  DIN_REGIONS,
  dinDegreeHours,
  NO_CODE_CHECK,
  SHARE_GRADES,
  shareAbove,
} from './criteria.ts';
export type { CriterionId, CriterionResult, DinRegion, ShareOptions } from './criteria.ts';
export {
  ADAPTIVE_BANDS,
  adaptiveComfort,
  adaptiveHours,
  dailyMeans,
  runningMeans,
} from './adaptive.ts';
export type { AdaptiveCategory, AdaptiveResult } from './adaptive.ts';
export { hotEpisodes } from './episodes.ts';
export type { HotEpisodes } from './episodes.ts';
export { roomCautions } from './cautions.ts';
export { defaultRoom, nightAiring, roomDefaults, roomDefaultSources } from './defaults.ts';
export { validateRoom } from './validate.ts';
export type { RoomCheck } from './validate.ts';
export { opaqueSunHeat } from './opaqueSun.ts';
