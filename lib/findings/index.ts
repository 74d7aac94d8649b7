export { compassWord } from './compass.ts';
export { decideJson } from './decideJson.ts';
export {
  decideNotes,
  firstLastTable,
  frontTable,
  matrixTable,
  setLines,
  verdictLines,
  verdictReason,
  verdictWords,
} from './decideTables.ts';
export { hourlyCsv } from './hourlyCsv.ts';
export { studyJson } from './studyJson.ts';
export {
  causeSentences,
  causeShares,
  criteriaTable,
  openingNames,
  roomTable,
} from './roomTables.ts';
export {
  familyLines,
  searchJson,
  searchLines,
  searchNotes,
  searchTable,
  togetherLine,
} from './searchTables.ts';
export { monthsTable, peaksTable, sumsTable } from './studyTables.ts';
export {
  houseSpreadTable,
  schemesTable,
  sureJson,
  sureLines,
  sureNotes,
  sureTable,
} from './sureTables.ts';
export { tableText } from './table.ts';
export type { Table } from './table.ts';
