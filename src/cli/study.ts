import { basename, join } from 'node:path';
import { Command } from 'commander';
import {
  hourlyCsv,
  monthsTable,
  peaksTable,
  studyJson,
  sumsTable,
  tableText,
} from '../../lib/findings/index.ts';
import { checkProject } from '../../lib/project/index.ts';
import { InputError, formatProblem } from '../../lib/problem/index.ts';
import { createEngine } from '../../lib/study/index.ts';
import { stations } from '../library/climates.ts';
import { blinds, glazings } from '../library/index.ts';
import { yearOf } from '../library/year.ts';
import { readText, writeText } from './files.ts';
import { EXIT, runCommand } from './fail.ts';

interface Options {
  weather?: string;
  out?: string;
}

const program = new Command('npm run study --')
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
  .addHelpText(
    'after',
    `
Prints tables in kWh of all panes of an opening:
  Incident      on the plane of the glass with nothing near it to shade it
  Sunlit        on the glass in its reveal, under its overhang, between its fins
  Gain without  solar heat that enters through the bare glass
  Gain with     the same with insect screen and blind as scheduled
  Stopped       the part of the gain that screen and blind keep out
Summer is June to August, December to February south of the equator.
The strongest hour is given in W per m2 of glass with its local date and clock.

Examples:
  npm run study -- data/examples/studio.shadewright.json
  npm run study -- my-house.shadewright.json --weather denver.csv --out results/

Exit codes: 0 done; 2 a file or option is not right, each problem on a line of its own with
where it is, what is allowed and how to mend it; 1 a fault of the program.
Not a code check: local codes and a locally licensed professional decide.`,
  )
  .exitOverride((error) => {
    process.exit(error.exitCode === 0 ? EXIT.done : EXIT.input);
  });

function study(path: string, options: Options): void {
  const library = { glazings, blinds, stations };
  const { project, problems, warnings } = checkProject(readText(path, 'project file'), library);
  if (!project) throw new InputError(problems);
  const hourly = options.weather
    ? { text: readText(options.weather, '--weather'), fileName: basename(options.weather) }
    : undefined;
  const year = yearOf(project, stations, hourly);
  const result = createEngine().run({ project, library, year });

  console.log(`${project.name}`);
  console.log(`${project.site.name}; weather: ${year.source.name}. ${year.source.note}`);
  for (const warning of warnings) console.log(`note: ${formatProblem(warning)}`);
  for (const sentence of result.warnings) console.log(`note: ${sentence}`);
  const tables = [
    sumsTable(result, 'year'),
    sumsTable(result, 'summer'),
    sumsTable(result, 'winter'),
    peaksTable(result),
    monthsTable(result),
  ];
  for (const table of tables) console.log(`\n${tableText(table)}`);

  if (options.out) {
    writeText(join(options.out, 'hourly.csv'), hourlyCsv(result, year));
    const json = JSON.stringify(studyJson(result, project.name), null, 2);
    writeText(join(options.out, 'results.json'), `${json}\n`);
    console.log(
      `\nWritten: ${join(options.out, 'hourly.csv')}, ${join(options.out, 'results.json')}`,
    );
  }
}

// A reader that stops early (`| head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? EXIT.done : EXIT.fault);
});

program.action((path: string, options: Options) => runCommand(() => study(path, options)));
await program.parseAsync();
