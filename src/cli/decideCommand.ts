import { join } from 'node:path';
import { Command } from 'commander';
import { ESCAPE_CAUTION, WIND_CAUTION } from '../../lib/blind/index.ts';
import type { TypicalYear } from '../../lib/climate/index.ts';
import { decide } from '../../lib/decide/index.ts';
import type { Decision } from '../../lib/decide/index.ts';
import {
  decideJson,
  decideNotes,
  firstLastTable,
  frontTable,
  matrixTable,
  tableText,
  verdictLines,
} from '../../lib/findings/index.ts';
import { formatProblem } from '../../lib/problem/index.ts';
import type { Problem } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { roomCautions } from '../../lib/room/index.ts';
import { blinds, glazings } from '../library/index.ts';
import type { Output } from './fail.ts';
import { writeText } from './files.ts';
import { readInput } from './input.ts';

const HELP = `
Prints a verdict on each facade with its reason, then:
  each blind by itself   hours over it saves as the only blind and as the last one, and its price in
                         sun, view and moves
  the measures           one facade treated, all others bare, and all others as planned
  the front              the best external blinds by number
A facade needs an external blind when its rooms break the chosen criterion with that facade bare and
keep it with the blind, and nothing cheaper on it alone keeps it.

Examples:
  npm run decide -- data/examples/studio.shadewright.json
  npm run decide -- my-house.shadewright.json --weather denver.csv --out results/

Exit codes: 0 done; 2 a file or option is not right, each problem on a line of its own with
where it is, what is allowed and how to mend it; 1 a fault of the program.
Not a code check: local codes and a locally licensed professional decide.`;

interface Options {
  weather?: string;
  out?: string;
  json?: boolean;
}

/** The command that says which facades of a project need external blinds. */
export function decideCommand(output: Output): Command {
  return new Command('npm run decide --')
    .description('Which facades of a house need external blinds, and which do not.')
    .argument('<project>', 'project file, such as data/examples/studio.shadewright.json')
    .option(
      '--weather <file>',
      'hourly weather to use instead of the climate named in the project: a TMY3 or PVGIS\n' +
        'typical-year CSV, or another delimited text with one row an hour',
    )
    .option('--out <folder>', 'also write decision.json there')
    .option('--json', 'print the decision as JSON and nothing else')
    .addHelpText('after', HELP)
    .action((path: string, options: Options) => {
      const { project, warnings, year } = readInput(path, options.weather);
      const decision = decide({ project, library: { glazings, blinds }, year });
      const json = `${JSON.stringify(decideJson(decision, project), null, 2)}\n`;
      if (options.json) output.print(json.trimEnd());
      else printDecision(output, project, year, decision, warnings);
      if (!options.out) return;
      const file = join(options.out, 'decision.json');
      writeText(file, json);
      if (!options.json) output.print(`\nWritten: ${file}`);
    });
}

function printDecision(
  output: Output,
  project: Project,
  year: TypicalYear,
  decision: Decision,
  warnings: readonly Problem[],
): void {
  for (const line of verdictLines(decision, project)) output.print(line);
  output.print(`\n${project.name}`);
  output.print(`${project.site.name}; weather: ${year.source.name}. ${year.source.note.english}`);
  for (const warning of warnings) output.print(`note: ${formatProblem(warning)}`);
  for (const { english } of decision.warnings) output.print(`note: ${english}`);
  const tables = [
    firstLastTable(decision, project),
    matrixTable(decision, project, 'bare'),
    matrixTable(decision, project, 'planned'),
    frontTable(decision, project),
  ];
  for (const table of tables) output.print(`\n${tableText(table)}`);
  output.print('');
  for (const note of decideNotes(decision)) output.print(note);
  for (const caution of cautionsOf(decision, project)) output.print(`caution: ${caution}`);
}

/** Cautions that go with external blinds; escape routes first, by name. */
function cautionsOf({ verdicts }: Decision, { openings }: Project): string[] {
  const routes = verdicts.flatMap((v) => (v.kind === 'none' ? [] : v.escapeRoutes));
  const names = routes.map((id) => openings.find((o) => o.id === id)!.name);
  return [
    ...(names.length > 0 ? [`${names.join(', ')}: escape route. ${ESCAPE_CAUTION}`] : []),
    WIND_CAUTION,
    ...Object.values(roomCautions).map(({ english }) => english),
  ];
}
