import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../lib/problem/index.ts';
import {
  checkProject,
  defaultProject,
  newWall,
  parseProject,
  type Project,
} from '../../../lib/project/index.ts';
import { exampleText, shippedLibrary } from './library.ts';
import { checked, paths } from './changed.ts';
import { PLACES } from './randomProject.ts';

const library = shippedLibrary();

function moveTo(project: Project, [timeZone, latitude, longitude]: [string, number, number]) {
  Object.assign(project.site, { timeZone, latitude, longitude });
  project.climate = { kind: 'file', fileName: 'weather.csv', note: '' };
}

describe('places', () => {
  // Zone and longitude of real towns: none may look like a slip, not even where the clock is far
  // from the sun (Kashgar on Beijing time, 2 h 56 min) or over the date line.
  const towns: [string, number, number][] = [
    ...PLACES,
    ['Asia/Shanghai', 39.47, 75.99],
    ['Europe/Madrid', 43.37, -8.4],
    ['Antarctica/McMurdo', -90, 166.67],
    ['Pacific/Apia', -13.83, -171.77],
    ['Asia/Kolkata', 28.61, 77.21],
    ['America/Argentina/Ushuaia', -54.8, -68.3],
  ];
  it.each(towns)('%s %d %d is taken as it is', (...town) => {
    const { problems, warnings } = checked((p) => moveTo(p, town));
    expect(problems).toEqual([]);
    expect(warnings).toEqual([]);
  });

  it('with the sign of the longitude lost are told', () => {
    for (const [zone, latitude, longitude] of towns.filter(
      ([, , l]) => Math.abs(l) > 60 && Math.abs(l) < 120,
    )) {
      const { warnings } = checked((p) => moveTo(p, [zone, latitude, -longitude]));
      expect(paths(warnings), zone).toEqual(['site.timeZone']);
    }
  });

  it('may have any zone this engine has', () => {
    for (const zone of Intl.supportedValuesOf('timeZone')) {
      expect(paths(checked((p) => void (p.site.timeZone = zone)).problems), zone).toEqual([]);
    }
  });

  it('far from the station are told the distance', () => {
    const { warnings } = checked((p) => {
      moveTo(p, ['America/Los_Angeles', 48.75, -122.5]);
      p.climate = { kind: 'station', station: 'burlington-vt', seed: 1 };
    });
    expect(paths(warnings)).toEqual(['climate.station']);
    // From 44.467 N 73.15 W to 48.75 N 122.5 W by the law of cosines on a sphere of 6,371 km, about
    // 3,800 km; what is told is rounded to 1 km, 0.03 % of that.
    const rad = Math.PI / 180;
    const angle = Math.acos(
      Math.sin(44.467 * rad) * Math.sin(48.75 * rad) +
        Math.cos(44.467 * rad) * Math.cos(48.75 * rad) * Math.cos((122.5 - 73.15) * rad),
    );
    const told = Number(/is (\d+) km/.exec(warnings[0].message)![1]);
    expect(Math.abs(told / (6371 * angle) - 1)).toBeLessThan(0.0003);
  });
});

describe('planes and dates', () => {
  it('takes roofs, leaning panes, a door of 4 by 8 ft and the leap day', () => {
    const { problems, warnings } = checked((p) => {
      p.walls.push(
        { ...newWall(200), id: 'roof', tilt: 30 },
        { ...newWall(140), id: 'lean', tilt: 105 },
      );
      const [first] = p.openings;
      p.openings.push(
        { ...first, id: 'light', wall: 'roof', kind: 'rooflight' },
        { ...first, id: 'leaning', wall: 'lean', kind: 'fixed' },
        { ...first, id: 'door', kind: 'door', width: 4 * 0.3048, height: 8 * 0.3048 },
      );
      first.insectScreen = { blind: 'insect-screen-fine', share: 0.5, from: '02-29', to: '02-29' };
      p.year = 2024;
    });
    expect(problems).toEqual([]);
    expect(warnings).toEqual([]);
  });

  it('fills the reveal of a plain hole from the set-back', () => {
    const { reveal, ...opening } = defaultProject().openings[0];
    expect(reveal.head).toBe(opening.setBack);
    const file = { ...defaultProject(), openings: [{ ...opening, setBack: 0.2 }] };
    expect(parseProject(file, library).openings[0].reveal).toEqual({
      head: 0.2,
      sill: 0.2,
      left: 0.2,
      right: 0.2,
    });
  });
});

describe('whatever is given', () => {
  const refusedOrRead = (json: unknown) => {
    try {
      parseProject(json, library);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      expect(error.problems.length).toBeGreaterThan(0);
    }
  };

  it('is read or refused with an InputError, never with another', () => {
    fc.assert(fc.property(fc.anything(), refusedOrRead), { numRuns: 300 });
    fc.assert(fc.property(fc.json(), refusedOrRead), { numRuns: 200 });
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    refusedOrRead(deep);
    refusedOrRead(
      `{"format":"shadewright-project","version":1,"walls":${deep},"site":{"name":${deep}}}`,
    );
    const loop: Record<string, unknown> = { format: 'shadewright-project', version: 1 };
    loop.site = loop;
    loop.openings = [loop, { blind: loop }];
    refusedOrRead(loop);
  });

  it('holds for an example with a stretch of its text replaced', () => {
    const text = exampleText('studio');
    const place = fc.integer({ min: 0, max: text.length - 1 });
    const patch = fc.oneof(
      fc.string({ maxLength: 4 }),
      fc.constantFrom('[]', '{}', '"', 'null', '1e999', '-'),
    );
    fc.assert(
      fc.property(place, fc.integer({ min: 0, max: 12 }), patch, (at, length, words) => {
        refusedOrRead(text.slice(0, at) + words + text.slice(at + length));
      }),
      { numRuns: 150 },
    );
  });

  it('tells a figure past all numbers as what it is', () => {
    const text = exampleText('studio').replace('"width": 3.6', '"width": 1e999');
    const [problem] = checkProject(text, library).problems;
    expect(problem).toMatchObject({
      path: 'openings[0] "Long south window".width',
      value: 'Infinity',
    });
  });

  it('takes a file with a byte order mark', () => {
    expect(checkProject(`\uFEFF${exampleText('studio')}`, library).problems).toEqual([]);
  });
});
