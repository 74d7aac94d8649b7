import { basename, join } from 'node:path';
import { Command, Option } from 'commander';
import { decide } from '../../lib/decide/index.ts';
import { InputError, formatProblem } from '../../lib/problem/index.ts';
import { checkProject } from '../../lib/project/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { createEngine } from '../../lib/study/index.ts';
import type { UnitSystem } from '../../lib/units/index.ts';
import { PAGE_WORDS, clientPage, pageFacts } from '../client/index.ts';
import type { PageFacts, PaperSize } from '../client/index.ts';
import { stations } from '../library/climates.ts';
import { blinds, glazings } from '../library/index.ts';
import { yearOf } from '../library/year.ts';
import { Words, languages } from '../words/index.ts';
import type { Language } from '../words/index.ts';
import { exportFiles } from './exportFolder.ts';
import type { Output } from './fail.ts';
import { readText, writeBytes, writeText } from './files.ts';
import { pngPictures } from './pngPictures.ts';
import { printPdf } from './printPdf.ts';
import { chromiumPath } from './tab.ts';

const HELP = `
--pdf prints the client page of the workbench: the answer first, hours too hot before and after, the
windows round the house, one hot day, what the shading costs, schedules to put by the remote, cautions,
assumptions and sources. It needs a Chromium on this machine and builds the app where that is due.
--out writes project.shadewright.json, decision.json, monthly.csv, hourly.csv, order-list.csv and
charts/ (SVG and CSV); it needs no browser. --png adds each chart as PNG and needs a Chromium too.
Figures in CSV files are SI with units in the heads.

Examples:
  npm run report -- data/examples/studio.shadewright.json --pdf studio.pdf
  npm run report -- my-house.shadewright.json --pdf haus.pdf --language de --order-list --appendix
  npm run report -- my-house.shadewright.json --pdf house.pdf --size letter --units imperial
  npm run report -- my-house.shadewright.json --weather denver.csv --out results/

Exit codes: 0 done; 2 a file or option is not right, each problem on a line of its own with
where it is, what is allowed and how to mend it; 1 a fault of the program.
Not a code check: local codes and a locally licensed professional decide.`;

interface Options {
  pdf?: string;
  out?: string;
  png?: boolean;
  weather?: string;
  size: PaperSize;
  units?: UnitSystem;
  language: Language;
  greyscale?: boolean;
  orderList?: boolean;
  appendix?: boolean;
  title?: string;
  question?: string;
  notes?: string;
}

/** The command that makes the client page and a folder of data. */
export function reportCommand(output: Output, dist?: string): Command {
  return new Command('npm run report --')
    .description('The client page of a house as PDF, and its data as a tidy folder.')
    .argument('<project>', 'project file, such as data/examples/studio.shadewright.json')
    .option('--pdf <file>', 'write the client page there')
    .option('--out <folder>', 'write the data there')
    .option('--png', 'with --out: write the charts as PNG too')
    .option(
      '--weather <file>',
      'hourly weather to use instead of the climate named in the project: a TMY3 or PVGIS\n' +
        'typical-year CSV, or another delimited text with one row an hour',
    )
    .addOption(new Option('--size <paper>', 'paper').choices(['a4', 'letter']).default('a4'))
    .addOption(
      new Option('--units <system>', 'units; those of the project where absent').choices([
        'metric',
        'imperial',
      ]),
    )
    .addOption(new Option('--language <code>', 'language').choices(languages).default('en'))
    .option('--greyscale', 'for printers without colour')
    .option('--order-list', 'print the blind order list with it')
    .option('--appendix', 'print the technical appendix with it')
    .option('--title <text>', 'title of the page instead of the name of the project')
    .option('--question <text>', 'question at the head of the page')
    .option('--notes <text>', 'notes for the client')
    .addHelpText('after', HELP)
    .action((path: string, options: Options) => report(output, path, options, dist));
}

async function report(
  output: Output,
  path: string,
  options: Options,
  dist: string | undefined,
): Promise<void> {
  if (!options.pdf && !options.out) throw new InputError(NOTHING_ASKED);
  if (options.png && !options.out) throw new InputError(NO_FOLDER);
  if (options.pdf) chromiumPath('--pdf');
  if (options.png) chromiumPath('--png');
  const { facts, result, year } = factsOf(output, path, options);
  const words = await Words.load(options.language, PAGE_WORDS);
  const page = clientPage(facts, words, {
    system: options.units ?? facts.project.units,
    size: options.size,
    grey: options.greyscale ?? false,
    order: options.orderList ?? false,
    appendix: options.appendix ?? false,
  });
  output.print(page.sheet.answer.headline);
  if (options.out) {
    const files = exportFiles(facts, page, words, result, year);
    for (const [name, text] of files) writeText(join(options.out, name), text);
    const pictures = options.png ? await pngPictures(svgOf(files)) : new Map<string, Uint8Array>();
    for (const [name, bytes] of pictures) writeBytes(join(options.out, name), bytes, '--out');
    const names = [...files.keys(), ...pictures.keys()];
    output.print(`Written: ${names.map((name) => join(options.out!, name)).join(', ')}`);
  }
  if (options.pdf) {
    writeBytes(options.pdf, await printPdf(page, dist, (text) => output.print(text)), '--pdf');
    output.print(`Written: ${options.pdf}`);
  }
}

const NOTHING_ASKED = {
  path: 'options',
  message: 'nothing to make was asked for',
  value: 'neither --pdf nor --out',
  allowed: '--pdf FILE, --out FOLDER, or both',
  fix: 'Say where the page or the data should go.',
};

const NO_FOLDER = {
  path: '--png',
  message: 'has no folder to write to',
  value: '--png without --out',
  allowed: '--png together with --out FOLDER',
  fix: 'Add --out FOLDER.',
};

function svgOf(files: ReadonlyMap<string, string>): Map<string, string> {
  return new Map([...files].filter(([name]) => name.endsWith('.svg')));
}

/** Reads the project, runs its year and decides. */
function factsOf(output: Output, path: string, options: Options) {
  const library = { glazings, blinds, stations };
  const checked = checkProject(readText(path, 'project file'), library);
  if (!checked.project) throw new InputError(checked.problems);
  for (const warning of checked.warnings) output.complain(`note: ${formatProblem(warning)}`);
  const project = withPage(checked.project, options);
  const { weather } = options;
  const hourly =
    weather === undefined
      ? undefined
      : { text: readText(weather, '--weather'), fileName: basename(weather) };
  const year = yearOf(project, stations, hourly);
  const { climate } = project;
  const station =
    climate.kind === 'station' && !hourly
      ? stations.find((s) => s.id === climate.station)
      : undefined;
  const result = createEngine().run({ project, library, year });
  const given: Omit<PageFacts, 'study' | 'hours'> = {
    project,
    fileName: basename(path),
    date: new Date(),
    glazings,
    blinds,
    decision: decide({ project, library, year }),
    ...(station ? { normals: station.normals } : {}),
  };
  return { facts: pageFacts(given, result, year), result, year };
}

function withPage(project: Project, { title, question, notes }: Options): Project {
  const given = Object.entries({ title, question, notes }).filter(([, text]) => text !== undefined);
  if (given.length === 0) return project;
  return { ...project, page: { ...project.page, ...Object.fromEntries(given) } };
}
