// Writes the tables of static/docs/decide.md: one room with one window in three climates, turned to
// eight sides, with every measure on it. The page around the tables is written by hand. Run with
// `npm run facades`.
import { readFileSync, writeFileSync } from 'node:fs';
import { createRuns, facadeMatrix, facadeVerdicts, searchSets } from '../../lib/decide/index.ts';
import type { FacadeMatrix, FacadeVerdict, Treatment } from '../../lib/decide/index.ts';
import { compassWord, verdictWords } from '../../lib/findings/index.ts';
import { defaultProject, newOpening, newWall } from '../../lib/project/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { defaultRoom, nightAiring } from '../../lib/room/index.ts';
import { StageCache, createEngine } from '../../lib/study/index.ts';
import { stations } from '../library/climates.ts';
import { blinds, glazings } from '../library/index.ts';
import { yearOf } from '../library/year.ts';

const page = new URL('../../static/docs/decide.md', import.meta.url);

const CLIMATES = [
  ['cool coast', 'bellingham-wa'],
  ['hot-dry', 'albuquerque-nm'],
  ['cold-bright', 'bismarck-nd'],
] as const;
const AZIMUTHS = [0, 45, 90, 135, 180, 225, 270, 315];
const COLUMNS: [Treatment, string][] = [
  ['bare', 'bare'],
  ['screen', 'insect screen'],
  ['internal', 'internal blind'],
  ['between', 'between panes'],
  ['overhang', 'overhang 0.8 m'],
  ['lowerG', 'lower g'],
  ['nightAiring', 'night airing'],
  ['externalFabric', 'external fabric'],
  ['externalSlats', 'external slats'],
];

/** A living room of 25 m2 with one window, opened wide by day when it is warm, shut at night. */
function house(station: string, azimuth: number): Project {
  const base = defaultProject();
  const place = stations.find((s) => s.id === station)!;
  const { name, latitude, longitude, elevation, timeZone } = place;
  const wall = newWall(azimuth);
  const night = nightAiring();
  const byDay = {
    ...night,
    id: 'day',
    name: 'Open wide by day',
    position: 'turn' as const,
    clock: { from: 420, to: 1320 },
  };
  return {
    ...base,
    site: { ...base.site, name, latitude, longitude, elevation, timeZone },
    climate: { kind: 'station', station, seed: 1 },
    walls: [wall],
    rooms: [
      {
        ...defaultRoom('room', 'Living room', 'living', 25),
        mass: { kind: 'class', class: 'medium' },
        airing: [byDay],
      },
    ],
    openings: [
      { ...newOpening('window', { wall: wall.id, room: 'room' }), width: 2.6, height: 1.5 },
    ],
  };
}

interface Row {
  azimuth: number;
  matrix: FacadeMatrix;
  verdict: FacadeVerdict;
}

function rowOf(station: string, azimuth: number): Row {
  const project = house(station, azimuth);
  const input = { project, library: { glazings, blinds }, year: yearOf(project, stations) };
  const runs = createRuns(createEngine(new StageCache()), input);
  const sets = searchSets(runs.engine, input, { hemisphere: runs.hemisphere });
  const options = { hemisphere: runs.hemisphere };
  const [verdict] = facadeVerdicts(runs, sets, options);
  return { azimuth, matrix: facadeMatrix(runs, options)[0], verdict };
}

function table(heads: readonly string[], rows: readonly string[][]): string[] {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(heads), `|${heads.map(() => ' --- |').join('')}`, ...rows.map(line)];
}

function climateTables(words: string, station: string): string[] {
  const rows = AZIMUTHS.map((azimuth) => rowOf(station, azimuth));
  const { name } = stations.find((s) => s.id === station)!;
  const cell = ({ matrix }: Row, t: Treatment) => matrix.cells.planned[t];
  const whole = (value: number | undefined) => (value === undefined ? '' : value.toFixed(0));
  const side = ({ azimuth }: Row) => compassWord(azimuth);
  return [
    `### ${name}: ${words}`,
    '',
    'Hours over 25 °C; bold where the criterion (10 % of the year, 876 h) is kept:',
    '',
    ...table(
      ['Window to', ...COLUMNS.map(([, head]) => head), 'Verdict'],
      rows.map((row) => [
        side(row),
        ...COLUMNS.map(([t]) => {
          const found = cell(row, t);
          if (!found) return '';
          return found.kept ? `**${found.hours}**` : String(found.hours);
        }),
        verdictWords(row.verdict),
      ]),
    ),
    '',
    'Sun through the window and heating of the room, kWh:',
    '',
    ...table(
      [
        'Window to',
        'summer, bare',
        'summer, overhang',
        'summer, external slats',
        'winter lost, overhang',
        'winter lost, lower g',
        'winter lost, external slats',
        'heating, bare',
        'heating, overhang',
        'heating, lower g',
        'heating, external slats',
      ],
      rows.map((row) => [
        side(row),
        ...(['bare', 'overhang', 'externalSlats'] as const).map((t) =>
          whole(cell(row, t)?.summerGain),
        ),
        ...(['overhang', 'lowerG', 'externalSlats'] as const).map((t) =>
          whole(cell(row, t)?.winterLost),
        ),
        ...(['bare', 'overhang', 'lowerG', 'externalSlats'] as const).map((t) =>
          whole(cell(row, t)?.heatingKWh),
        ),
      ]),
    ),
    '',
  ];
}

const lines = CLIMATES.flatMap(([words, station]) => climateTables(words, station));
const [before, rest] = readFileSync(page, 'utf8').split('<!-- tables -->');
const after = rest.split('<!-- end of tables -->')[1];
writeFileSync(
  page,
  `${before}<!-- tables -->\n\n${lines.join('\n')}\n<!-- end of tables -->${after}`,
);
console.log(lines.join('\n'));
