export { decide } from './decide.ts';
export type { DecideOptions, Decision } from './decide.ts';
export {
  MEASURES,
  OVERHANG_DEPTH,
  STOCK,
  applyMeasure,
  commonSchedule,
  fittingOpenings,
  hemisphereOf,
  openingsAt,
  stockExternal,
  withOpenings,
  withStockBlinds,
} from './measures.ts';
export type { MeasureId, MeasureOptions, MeasureTarget } from './measures.ts';
export { externalsOn, plannedExternal, withoutBlinds } from './plans.ts';
export { createRuns } from './runs.ts';
export type { Runs } from './runs.ts';
export { TREATMENTS, facadeMatrix, facadesOf } from './matrix.ts';
export type { Cell, FacadeInHand, FacadeMatrix, Others, PlanContext, Treatment } from './matrix.ts';
export {
  gainOfOpenings,
  meanViewHoursLost,
  occupiedDaylight,
  roomFigures,
  stepsByAction,
  sunUpSteps,
} from './figures.ts';
export type { RoomFigures } from './figures.ts';
export { openingFigures } from './firstLast.ts';
export type { OpeningFigures } from './firstLast.ts';
export { WORTH_HOURS, WORTH_SHARE, facadeVerdicts, verdictKind, verdictPlans } from './verdicts.ts';
export type { FacadeVerdict, Reference, VerdictKind, VerdictPlans } from './verdicts.ts';
export { searchSets } from './houseSet.ts';
export type { BlindSet, SetFindings, SetOptions } from './houseSet.ts';
export { blockJudge, blocksOf } from './blocks.ts';
export type { Block } from './blocks.ts';
export { Judged } from './judged.ts';
export type { Choice, Creep, Judge, Outcome } from './judged.ts';
export { MOST_EXACT, searchBlinds } from './smallest.ts';
export type { SearchResult } from './smallest.ts';
