export { createEngine } from './engine.ts';
export type { Engine, StudyInput } from './engine.ts';
export { StageCache } from './cache.ts';
export type { StageCost } from './cache.ts';
export { resolveHouse } from './resolve.ts';
export { daysInSeason } from './screen.ts';
export type { House, Library } from './resolve.ts';
export type { StudyPlace } from './place.ts';
export type { BlindYear } from './blindYear.ts';
export type {
  FacadeResult,
  GainSums,
  HourlyGains,
  OpeningResult,
  RoomResult,
  StudyResult,
} from './results.ts';
export { shareStopped, summerMonths, winterMonths } from './summary.ts';
export type { EnergySums, Peak } from './summary.ts';
export type { BlindInPlace, Controller, HouseOpening, HouseWall, ScreenInPlace } from './types.ts';
export { roomDetail } from './roomOutcome.ts';
export type { RoomDetail, RoomOutcome } from './roomOutcome.ts';
export type { RoomRun } from './roomRun.ts';
