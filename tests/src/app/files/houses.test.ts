import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkProject, serializeProject } from '../../../../lib/project/index.ts';
import { blankHouse } from '../../../../src/app/files/blankHouse.ts';
import { examples, openingExample } from '../../../../src/app/files/examples.ts';
import { readKept, readProjectText } from '../../../../src/app/files/projectFile.ts';
import { stations } from '../../../../src/library/climates.ts';
import { blinds, glazings } from '../../../../src/library/index.ts';
import { Words } from '../../../../src/words/index.ts';

const words = await Words.load('en', ['shell']);
const german = await Words.load('de', ['shell']);
const library = { blinds, glazings, stations };

describe('a blank start', () => {
  it('is a sound house for any answers', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...stations),
        fc.double({ min: 0, max: 359.9, noNaN: true }),
        fc.record({
          window: fc.integer({ min: 0, max: 20 }),
          door: fc.integer({ min: 0, max: 20 }),
          fixed: fc.integer({ min: 1, max: 20 }),
        }),
        fc.double({ min: 0.02, max: 2, noNaN: true }),
        (station, azimuth, counts, thickness) => {
          const house = blankHouse(words, {
            station,
            azimuth,
            counts,
            thickness,
            units: 'imperial',
          });
          expect(checkProject(house, library).problems).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('puts what was asked for where it was asked for', () => {
    const station = stations.find((s) => s.id === 'denver-co')!;
    const counts = { window: 3, door: 1, fixed: 0 };
    const house = blankHouse(words, {
      station,
      azimuth: 90,
      counts,
      thickness: 0.3,
      units: 'metric',
    });
    const first = house.walls[0];
    expect([first.azimuth, first.thickness]).toEqual([90, 0.3]);
    expect(house.walls.map((wall) => wall.azimuth)).toEqual([90, 180, 270, 0]);
    expect(house.openings.map((o) => [o.kind, o.count, o.wall])).toEqual([
      ['window', 3, first.id],
      ['door', 1, first.id],
    ]);
    expect(house.site).toMatchObject({ latitude: station.latitude, timeZone: 'America/Denver' });
  });

  it('names what is in it in the language of the page', () => {
    const station = stations.find((s) => s.id === 'denver-co')!;
    const counts = { window: 2, door: 1, fixed: 1 };
    const answers = { station, azimuth: 45, counts, thickness: 0.3, units: 'metric' } as const;
    const names = (house: ReturnType<typeof blankHouse>) => [
      house.name,
      house.walls[0].name,
      ...house.openings.map((o) => o.name),
      house.rooms[0].name,
    ];
    expect(names(blankHouse(words, answers))).toEqual([
      'House in Denver',
      'North-east wall',
      'North-east windows',
      'North-east glazed door',
      'North-east fixed pane',
      'Living room',
    ]);
    expect(names(blankHouse(german, answers))).toEqual([
      'Haus in Denver',
      'Wand nach Nordosten',
      'Fenster nach Nordosten',
      'Glastür nach Nordosten',
      'Festverglasung nach Nordosten',
      'Wohnzimmer',
    ]);
  });
});

describe('projects kept by the page', () => {
  const text = (project: object) => JSON.stringify(project);
  const kept = (texts: { text: string; sound?: string }) => ({
    id: 'a',
    name: 'House',
    place: '',
    revision: 1,
    savedAt: 0,
    ...texts,
  });

  it('come back as they were', () => {
    const project = openingExample();
    expect(readKept(kept({ text: serializeProject(project) }))).toEqual({ project });
  });

  it('come back with an input that does not fit, beside the last sound state', () => {
    const project = openingExample();
    const misfit = structuredClone(project);
    misfit.openings[0].setBack = 1.9;
    expect(checkProject(misfit, library).problems).not.toEqual([]);
    const left = readKept(kept({ text: text(misfit), sound: text(project) }));
    expect(left).toEqual({ project: misfit, sound: project });
  });

  it('fall back on the last sound state where the rest is no project', () => {
    const project = openingExample();
    expect(readKept(kept({ text: '{', sound: text(project) }))).toEqual({ project });
    expect(readKept(kept({ text: '{"half": ' }))).toEqual({ text: '{"half": ' });
  });
});

describe('project files', () => {
  it.each(examples.map((example) => [example.id, example] as const))(
    'are complete as example %s is, and read back the same',
    async (_, example) => {
      const project = await example.load();
      expect(checkProject(project, library).project).toEqual(project);
      const read = await readProjectText(serializeProject(project));
      expect(read.project).toEqual(project);
    },
  );

  it.each([
    ['nothing', ''],
    ['words', 'dear diary'],
    ['a list', '[1, 2, 3]'],
    ['a station that does not ship', text({ station: 'atlantis' })],
    ['a wall that is not there', text({}, (p) => (p.openings[0].wall = 'roof'))],
    ['half a file', serializeProject(openingExample()).slice(0, 2000)],
  ])('tells what is wrong with %s', async (_, broken) => {
    const read = await readProjectText(broken);
    expect(read.project).toBeUndefined();
    if (!read.project) expect(read.problems.length).toBeGreaterThan(0);
  });

  function text(
    climate: object,
    change: (project: ReturnType<typeof openingExample>) => void = () => undefined,
  ): string {
    const project = structuredClone(openingExample());
    Object.assign(project.climate, climate);
    change(project);
    return JSON.stringify(project);
  }
});
