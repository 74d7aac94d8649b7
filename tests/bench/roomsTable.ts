// Writes static/docs/rooms.md: overheating hours of three houses on five real hourly files with each
// kind of shading. Needs the files of ../shared/weather; run with `npm run rooms`.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { readTypicalYear } from '../../lib/climate/index.ts';
import type { TypicalYear } from '../../lib/climate/index.ts';
import { parseProject } from '../../lib/project/index.ts';
import type { Project } from '../../lib/project/index.ts';
import type { MassClass } from '../../lib/room/index.ts';
import { createEngine } from '../../lib/study/index.ts';
import { stations } from '../../src/library/climates.ts';
import { blinds, glazings } from '../../src/library/index.ts';

const library = { glazings, blinds, stations };
const weather = new URL('../../../shared/weather/', import.meta.url);
const page = new URL('../../static/docs/rooms.md', import.meta.url);

const places = [
  ['Seattle', 'seattle-tacoma-tmy3.csv'],
  ['Minneapolis', 'minneapolis-tmy3.csv'],
  ['Denver', 'denver-intl-tmy3.csv'],
  ['Greensboro', 'greensboro-tmy3.csv'],
  ['Po valley', 'po-valley-45n-8e-pvgis-tmy.csv'],
] as const;

const houses: [string, MassClass][] = [
  ['light', 'light'],
  ['medium', 'medium'],
  ['heavy', 'heavy'],
];

/** Shading kinds from none to the strongest, each with the blind every opening gets. */
const kinds: [string, string | undefined][] = [
  ['none', undefined],
  ['internal roller, white', 'internal-roller-white'],
  ['between panes, vented', 'between-slats-25-vented'],
  ['external slats', 'external-slats-80-silver'],
];

/** The studio with one kind of blind on every opening, lowered by sun from April to October. */
function shaded(base: Project, mass: MassClass, blind: string | undefined): Project {
  const project = structuredClone(base);
  project.rooms[0].mass = { kind: 'class', class: mass };
  project.groups = [];
  project.schedules = [
    {
      id: 'sun',
      name: 'Sun on glass, summer half-year',
      minMinutesBetweenMoves: 15,
      rules: [
        {
          id: 'sun',
          when: {
            dates: { from: '04-01', to: '10-31' },
            sunOnFacade: true,
            irradianceAbove: { at: 150, release: 100 },
          },
          then: { kind: 'tilt', angle: 45 },
        },
      ],
    },
  ];
  for (const opening of project.openings) {
    delete opening.blind;
    delete opening.insectScreen;
    if (blind) opening.blind = { blind, schedule: 'sun' };
  }
  return project;
}

function readYear(file: string): TypicalYear {
  return readTypicalYear(readFileSync(new URL(file, weather), 'utf8'));
}

function write(): void {
  const text = readFileSync(
    new URL('../../data/examples/studio.shadewright.json', import.meta.url),
    'utf8',
  );
  const base = parseProject(text, library);
  const engine = createEngine();
  const lines = places.flatMap(([name, file]) => {
    const year = readYear(file);
    return houses.map(([house, mass]) => {
      const hours = kinds.map(([, blind]) => {
        const project = shaded(base, mass, blind);
        const [room] = engine.run({ project, library, year }).rooms;
        return blind ? room.with.hotHours : room.without.hotHours;
      });
      return `| ${name} | ${house} | ${hours.join(' | ')} |`;
    });
  });
  const head = ['Weather', 'House', ...kinds.map(([name]) => name)];
  const table = [`| ${head.join(' | ')} |`, `|${head.map(() => ' --- |').join('')}`, ...lines];
  const old = readFileSync(page, 'utf8');
  const [before, rest] = old.split('<!-- table -->');
  const after = rest.split('<!-- end of table -->')[1];
  const body = `${before}<!-- table -->\n\n${table.join('\n')}\n\n<!-- end of table -->${after}`;
  writeFileSync(page, body);
  console.log(table.join('\n'));
}

if (existsSync(weather)) write();
else console.log('The hourly files of ../shared/weather are absent: nothing written.');
