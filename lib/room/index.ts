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
export type { HeatBalance, RoomInput, RoomState, RoomStep, SteppingRoom } from './step.ts';
export { CLOSURE_LIMIT, runRoom } from './run.ts';
export type { RoomDrivers, RoomYear } from './run.ts';
export { airHeatCapacity, airExchange, infiltrationRate, ventilationFlow } from './air.ts';
export type { AirExchange } from './air.ts';
export { airingFlow, airingSpeed, openingRatio, sashArea, TURNED_ANGLE } from './airing.ts';
export { arealCapacity, lumpedMass, massClasses } from './mass.ts';
export type { LumpedMass } from './mass.ts';
