import { join } from 'node:path';
import type { TypicalYear } from '../../lib/climate/index.ts';
import { decideJson, hourlyCsv } from '../../lib/findings/index.ts';
import { serializeProject } from '../../lib/project/index.ts';
import type { StudyResult } from '../../lib/study/index.ts';
import { Teller, monthlyCsv, orderCsv, pictureCsv, svgText } from '../client/index.ts';
import type { ClientPage, PageFacts } from '../client/index.ts';
import type { Words } from '../words/index.ts';

/** What goes into the folder, by the path of each file in it. */
export function exportFiles(
  facts: PageFacts,
  page: ClientPage,
  words: Words,
  result: StudyResult,
  year: TypicalYear,
): Map<string, string> {
  const teller = new Teller(words, 'metric');
  const { project, decision } = facts;
  const { sheet } = page;
  return new Map([
    ['project.shadewright.json', serializeProject(project)],
    ['decision.json', `${JSON.stringify(decideJson(decision, project), null, 2)}\n`],
    ['monthly.csv', monthlyCsv(facts, teller)],
    ['hourly.csv', hourlyCsv(result, year)],
    ['order-list.csv', orderCsv(facts, teller)],
    [join('charts', 'year.svg'), svgText(sheet.year)],
    [join('charts', 'year.csv'), pictureCsv(sheet.year.table)],
    [join('charts', 'facades.svg'), svgText(sheet.ring)],
    [join('charts', 'hot-day.svg'), svgText(sheet.day)],
    [join('charts', 'hot-day.csv'), pictureCsv(sheet.day.table)],
  ]);
}
