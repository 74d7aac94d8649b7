import { join } from 'node:path';
import { Command } from 'commander';
import type { TypicalYear } from '../../lib/climate/index.ts';
import {
  causeSentences,
  criteriaTable,
  hourlyCsv,
  monthsTable,
  openingNames,
  peaksTable,
  roomTable,
  studyJson,
  sumsTable,
  tableText,
} from '../../lib/findings/index.ts';
import { formatProblem } from '../../lib/problem/index.ts';
import type { Problem } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { roomCautions } from '../../lib/room/index.ts';
import { createEngine, roomDetail } from '../../lib/study/index.ts';
import type { RoomResult, StudyResult } from '../../lib/study/index.ts';
import { stations } from '../library/climates.ts';
import { blinds, glazings } from '../library/index.ts';
import type { Output } from './fail.ts';
import { writeText } from './files.ts';
import { readInput } from './input.ts';

const HELP = `
Prints tables in kWh of all panes of an opening:
  Incident      on the plane of the glass with nothing near it to shade it
  Sunlit        on the glass in its reveal, under its overhang, between its fins
  Gain without  solar heat that enters through the bare glass
  Gain with     the same with insect screen and blind as scheduled
  Stopped       the part of the gain that screen and blind keep out
and for each room its overheating hours, criteria, heating need and what heats it when it is too hot.
Summer is June to August, December to February south of the equator.
The strongest hour is given in W per m2 of glass with its local date and clock.

Examples:
  npm run study -- data/examples/studio.shadewright.json
  npm run study -- my-house.shadewright.json --weather denver.csv --out results/

Exit codes: 0 done; 2 a file or option is not right, each problem on a line of its own with
where it is, what is allowed and how to mend it; 1 a fault of the program.
Not a code check: local codes and a locally licensed professional decide.`;

/** The command that runs one project through one year. */
export function studyCommand(output: Output): Command {
  return new Command('npm run study --')
    .description(
      'Sun through each opening of a house over a typical year, without and with its shading.',
    )
    .argument('<project>', 'project file, such as data/examples/studio.shadewright.json')
    .option(
      '--weather <file>',
      'hourly weather to use instead of the climate named in the project: a TMY3 or PVGIS\n' +
        'typical-year CSV, or another delimited text with one row an hour',
    )
    .option('--out <folder>', 'also write hourly.csv (one row an hour) and results.json there')
    .addHelpText('after', HELP)
    .action((path: string, options: { weather?: string; out?: string }) => {
      const { project, warnings, year } = readInput(path, options.weather);
      const library = { glazings, blinds, stations };
      const result = createEngine().run({ project, library, year });
      printStudy(output, project, year, result, warnings);
      if (options.out) writeResults(output, options.out, project, year, result);
    });
}

function printStudy(
  output: Output,
  project: Project,
  year: TypicalYear,
  result: StudyResult,
  warnings: readonly Problem[],
): void {
  output.print(project.name);
  output.print(`${project.site.name}; weather: ${year.source.name}. ${year.source.note.english}`);
  for (const warning of warnings) output.print(`note: ${formatProblem(warning)}`);
  for (const { english } of result.warnings) output.print(`note: ${english}`);
  const tables = [
    sumsTable(result, 'year'),
    sumsTable(result, 'summer'),
    sumsTable(result, 'winter'),
    peaksTable(result),
    monthsTable(result),
  ];
  for (const table of tables) output.print(`\n${tableText(table)}`);
  for (const room of result.rooms) printRoom(output, project, result, room);
}

function printRoom(output: Output, project: Project, result: StudyResult, room: RoomResult): void {
  const limit = project.settings.overheatingLimit;
  output.print(`\n${tableText(roomTable(room, limit))}`);
  for (const shading of ['without', 'with'] as const) {
    const detail = roomDetail(room.runs[shading], limit);
    output.print(`${shading === 'without' ? 'Without' : 'With'} shading:`);
    for (const line of causeSentences(detail, openingNames(result))) output.print(`  ${line}`);
    const { usefulShare, heatingDays } = detail.useful;
    output.print(
      `  On the ${heatingDays} days that need heat without sun, ${Math.round(usefulShare * 100)} % ` +
        'of the sun that comes in saves heating.',
    );
  }
  output.print(`\n${tableText(criteriaTable(room))}`);
  for (const { english } of Object.values(roomCautions)) output.print(`caution: ${english}`);
}

function writeResults(
  output: Output,
  folder: string,
  project: Project,
  year: TypicalYear,
  result: StudyResult,
): void {
  const hourly = join(folder, 'hourly.csv');
  const results = join(folder, 'results.json');
  writeText(hourly, hourlyCsv(result, year));
  const json = studyJson(result, project.name, project.settings.overheatingLimit);
  writeText(results, `${JSON.stringify(json, null, 2)}\n`);
  output.print(`\nWritten: ${hourly}, ${results}`);
}
