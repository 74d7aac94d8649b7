export { readTypicalYear } from './read.ts';
export type { ReadOptions } from './read.ts';
export { guessTable } from './guess.ts';
export type { TableGuess } from './guess.ts';
export { previewTable } from './preview.ts';
export type { TableColumn, TablePreview } from './preview.ts';
export { previewFile } from './previewFile.ts';
export type { FilePreview } from './previewFile.ts';
export { checkYear } from './checks.ts';
export { findTimeShift } from './timeShift.ts';
export type { TimeShift } from './timeShift.ts';
export type { GlobalYear, SplitGlobal } from './finish.ts';
export type {
  Check,
  CheckId,
  ColumnUse,
  DateOrder,
  IrradianceUnit,
  Quantity,
  WeatherSite,
  TableLayout,
  TemperatureUnit,
  TimeColumns,
  WindUnit,
} from './types.ts';
