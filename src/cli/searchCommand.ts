import { join } from 'node:path';
import { Command } from 'commander';
import { ESCAPE_CAUTION, WIND_CAUTION } from '../../lib/blind/index.ts';
import {
  familyLines,
  searchJson,
  searchLines,
  searchNotes,
  searchTable,
  tableText,
  togetherLine,
} from '../../lib/findings/index.ts';
import { InputError, formatProblem, showValue } from '../../lib/problem/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { roomCautions } from '../../lib/room/index.ts';
import { runSearch, searchTargets, targetNamed, withFound } from '../../lib/search/index.ts';
import type { SearchFindings, SearchTarget } from '../../lib/search/index.ts';
import { createEngine } from '../../lib/study/index.ts';
import type { Engine, StudyInput } from '../../lib/study/index.ts';
import { blinds, glazings } from '../library/index.ts';
import type { Output } from './fail.ts';
import { writeText } from './files.ts';
import { readInput } from './input.ts';

const HELP = `
Searches clock hours by season, sun and room temperature thresholds and slats that follow the sun.
Prints for each target the rules to set at a remote, a timer or a control, on the quarter hour, with
what they come to; then for each kind of schedule the best one against:
  with hindsight          a blind that knows the year: a reference no plain rule is counted better than
  as planned              the schedule in the project
  always up, always down in season
The best schedule keeps the criterion of the rooms behind the target with the least view and useful
sun given up and the fewest moves. Each target is searched with the others as planned; with
--in-turn with the schedules found before it, so that all of them hold together.

Examples:
  npm run search -- data/examples/studio.shadewright.json --target west
  npm run search -- my-house.shadewright.json --in-turn --out results/

Exit codes: 0 done; 2 a file or option is not right, each problem on a line of its own with
where it is, what is allowed and how to mend it; 1 a fault of the program.
Not a code check: local codes and a locally licensed professional decide.`;

interface Options {
  target?: string;
  weather?: string;
  inTurn?: boolean;
  reserve?: string;
  out?: string;
  json?: boolean;
}

/** The command that finds blind schedules for the facades and groups of a project. */
export function searchCommand(output: Output): Command {
  return new Command('npm run search --')
    .description('Plain blind schedules for each facade or group of a house, found by search.')
    .argument('<project>', 'project file, such as data/examples/studio.shadewright.json')
    .option(
      '--target <id>',
      'a wall or a group; absent: each group, and each facade with a blind outside all groups or\n' +
        'none at all and a room behind it that breaks its criterion',
    )
    .option('--in-turn', 'search each target with the schedules found before it')
    .option(
      '--reserve <percent>',
      "percent of the criterion's limit to keep in hand; 0 where absent",
    )
    .option(
      '--weather <file>',
      'hourly weather to use instead of the climate named in the project: a TMY3 or PVGIS\n' +
        'typical-year CSV, or another delimited text with one row an hour',
    )
    .option('--out <folder>', 'also write search.json there')
    .option('--json', 'print the findings as JSON and nothing else')
    .addHelpText('after', HELP)
    .action((path: string, options: Options) => {
      const reserve = reserveOf(options.reserve);
      const { project, warnings, year } = readInput(path, options.weather);
      const input = { project, library: { glazings, blinds }, year };
      const engine = createEngine();
      const print = options.json ? () => undefined : output.print;
      const targets = targetsOf(engine, input, options.target);
      const inTurn = options.inTurn ?? false;
      const all = searchAll(engine, input, targets, { inTurn, reserve }, print);
      const json = `${JSON.stringify(searchJson(all, project), null, 2)}\n`;
      if (options.json) output.print(json.trimEnd());
      else {
        if (all.length > 1) print(together(engine, input, all, inTurn));
        print(`\n${project.name}`);
        print(`${project.site.name}; weather: ${year.source.name}. ${year.source.note.english}`);
        for (const warning of warnings) print(`note: ${formatProblem(warning)}`);
        printTables(output, project, all);
      }
      if (!options.out) return;
      const file = join(options.out, 'search.json');
      writeText(file, json);
      print(`\nWritten: ${file}`);
    });
}

function targetsOf(engine: Engine, input: StudyInput, named: string | undefined): SearchTarget[] {
  if (named !== undefined) return [targetNamed(input.project, named)];
  const { rooms } = engine.run(input);
  const broken = rooms.filter((r) => r.with.chosen.met === false).map((r) => r.id);
  return searchTargets(input.project, new Set(broken));
}

/** The reserve as a part of the limit. */
function reserveOf(percent: string | undefined): number {
  if (percent === undefined) return 0;
  const value = Number(percent);
  if (percent.trim() !== '' && value >= 0 && value < 100) return value / 100;
  throw new InputError({
    path: '--reserve',
    message: 'is out of range',
    value: showValue(percent),
    allowed: '0 to under 100 %',
    fix: 'Give a percentage of the limit: 10 keeps a tenth of it in hand.',
  });
}

/** Searches one target after another and prints each card as it is found. */
function searchAll(
  engine: Engine,
  input: StudyInput,
  targets: readonly SearchTarget[],
  { inTurn, reserve }: { inTurn: boolean; reserve: number },
  print: (text: string) => void,
): SearchFindings[] {
  if (targets.length === 0) {
    print('No facade has a blind, and every room keeps its criterion: there is nothing to search.');
  }
  const all: SearchFindings[] = [];
  for (const target of targets) {
    const project = inTurn ? withFound(input.project, all) : input.project;
    const findings = runSearch({ ...input, project }, target, { reserve }, engine);
    for (const line of searchLines(findings)) print(line);
    all.push(findings);
  }
  return all;
}

function together(
  engine: Engine,
  input: StudyInput,
  all: readonly SearchFindings[],
  inTurn: boolean,
): string {
  const { rooms } = engine.run({ ...input, project: withFound(input.project, all) });
  return togetherLine(
    rooms.map(({ with: { chosen } }) => ({
      hours: chosen.hoursOver,
      kept: chosen.met !== false,
    })),
    inTurn,
  );
}

function printTables(output: Output, project: Project, all: readonly SearchFindings[]): void {
  for (const findings of all) {
    output.print(`\n${tableText(searchTable(findings))}`);
    for (const line of familyLines(findings)) output.print(`  ${line}`);
  }
  output.print('');
  const notes = new Set(all.flatMap((f) => f.warnings.map(({ english }) => english)));
  for (const sentence of notes) output.print(`note: ${sentence}`);
  for (const note of searchNotes(all, project)) output.print(note);
  for (const caution of cautionsOf(project, all)) output.print(`caution: ${caution}`);
}

/** Cautions that go with blinds; escape routes first, by name. */
function cautionsOf({ openings }: Project, all: readonly SearchFindings[]): string[] {
  const own = new Set(all.flatMap((f) => f.openings));
  const routes = openings.filter((o) => o.escapeRoute && own.has(o.id)).map((o) => o.name);
  return [
    ...(routes.length > 0 ? [`${routes.join(', ')}: escape route. ${ESCAPE_CAUTION}`] : []),
    WIND_CAUTION,
    ...Object.values(roomCautions).map(({ english }) => english),
  ];
}
