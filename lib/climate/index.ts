export type { MonthlyNormals, TypicalYear, YearSource } from './types.ts';
export type { ClimateData, ClimateSource, ClimateStation } from './station.ts';
export * from './read/index.ts';
export { splitByErbs } from './splitGlobal.ts';
export * from './build/index.ts';
