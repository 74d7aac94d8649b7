import { basename, join } from 'node:path';
import { Command, InvalidArgumentError } from 'commander';
import {
  houseSpreadTable,
  schemesTable,
  sureJson,
  sureLines,
  sureNotes,
  sureTable,
  tableText,
} from '../../lib/findings/index.ts';
import { InputError, formatProblem } from '../../lib/problem/index.ts';
import { checkProject } from '../../lib/project/index.ts';
import { roomCautions } from '../../lib/room/index.ts';
import { LEAST_YEARS, decidedFor, keptSchemes, stockSchemes } from '../../lib/sure/index.ts';
import { stations } from '../library/climates.ts';
import { blinds, glazings } from '../library/index.ts';
import { sureWeather } from '../library/sureWeather.ts';
import { createNodePool } from '../pool/node.ts';
import type { Progress } from '../pool/pool.ts';
import type { PoolHouse } from '../pool/tasks.ts';
import type { Output } from './fail.ts';
import { readText, writeText } from './files.ts';

const HELP = `
Makes the verdict on each facade again in other typical years of the same climate, in warmer and
sunnier ones, with glass and blinds off their data sheet, and with occupants who forget. A verdict
that comes out another way in any case is a close call. Then it sets the house as planned beside no
blinds, internal and external blinds everywhere, the smallest set and overhangs.

Examples:
  npm run sure -- data/examples/studio.shadewright.json
  npm run sure -- my-house.shadewright.json --weather denver.csv --years 40 --out results/

Exit codes: 0 done; 2 a file or option is not right; 1 a fault of the program.
Not a code check: local codes and a locally licensed professional decide.`;

interface Options {
  weather?: string;
  out?: string;
  json?: boolean;
  years: number;
  workers?: number;
}

/** The command that says how sure the verdicts on a project are, and compares its schemes. */
export function sureCommand(output: Output): Command {
  return new Command('npm run sure --')
    .description('How sure the verdict on each facade is; schemes of shading side by side.')
    .argument('<project>', 'project file, such as data/examples/studio.shadewright.json')
    .option(
      '--weather <file>',
      'hourly weather to use instead of the climate named in the project; the other years are\n' +
        'then built from its monthly means',
    )
    .option('--years <number>', 'typical years, 20 to 200', wholeNumber, LEAST_YEARS)
    .option('--workers <number>', 'workers at most; all cores where absent', wholeNumber)
    .option('--out <folder>', 'also write sure.json there')
    .option('--json', 'print the findings as JSON and nothing else')
    .addHelpText('after', HELP)
    .action((path: string, options: Options) => run(path, options, output));
}

async function run(path: string, options: Options, output: Output): Promise<void> {
  const library = { glazings, blinds, stations };
  const { project, problems, warnings } = checkProject(readText(path, 'project file'), library);
  if (!project) throw new InputError(problems);
  const { weather: file } = options;
  const house: PoolHouse = {
    project,
    ...(file && { file: { text: readText(file, '--weather'), fileName: basename(file) } }),
  };
  const weather = sureWeather(project, stations, house.file);
  const decided = decidedFor({ project, library, weather });
  const pool = createNodePool({ workers: options.workers });
  try {
    const { years } = options;
    const findings = await pool.sure(house, decided, { years }, { onProgress: showProgress });
    const all = [...stockSchemes(project, library, decided), ...keptSchemes(project)];
    const schemes = await pool.schemes(house, all);
    const json = `${JSON.stringify(sureJson(findings, schemes, project), null, 2)}\n`;
    if (options.json) output.print(json.trimEnd());
    else {
      for (const line of sureLines(findings, project)) output.print(line);
      output.print(`\n${project.name}`);
      for (const warning of warnings) output.print(`note: ${formatProblem(warning)}`);
      const tables = [
        sureTable(findings, project),
        houseSpreadTable(findings),
        schemesTable(schemes),
      ];
      for (const table of tables) output.print(`\n${tableText(table)}`);
      output.print('');
      for (const note of sureNotes(findings)) output.print(note);
      for (const { english } of Object.values(roomCautions)) output.print(`caution: ${english}`);
    }
    if (!options.out) return;
    const target = join(options.out, 'sure.json');
    writeText(target, json);
    if (!options.json) output.print(`\nWritten: ${target}`);
  } finally {
    await pool.close();
  }
}

/** One line that is written over, where somebody looks on. */
function showProgress({ done, of }: Progress): void {
  if (!process.stderr.isTTY) return;
  process.stderr.write(`\r${done} of ${of} cases${done === of ? '\n' : ''}`);
}

function wholeNumber(text: string): number {
  const value = Number(text);
  if (Number.isInteger(value) && value > 0) return value;
  throw new InvalidArgumentError('a whole number over 0 is needed');
}
