import { describe, expect, it } from 'vitest';
import {
  checkProject,
  defaultProject,
  defaultSources,
  freeId,
  newOpening,
  newWall,
  serializeProject,
} from '../../../lib/project/index.ts';
import { shippedLibrary } from './library.ts';
import { pathsTo, shape, type Json } from './paths.ts';

const library = shippedLibrary();
const KINDS = ['window', 'door', 'rooflight', 'fixed'] as const;

/** The default project with one opening of each kind in fitting planes. */
function withAllKinds() {
  const project = defaultProject();
  const roof = { ...newWall(0, ['north-wall']), name: 'Roof', tilt: 30, thickness: 0.46 };
  project.walls.push(roof);
  for (const kind of KINDS) {
    const wall = kind === 'rooflight' ? roof.id : 'west-wall';
    const taken = project.openings.map((o) => o.id);
    project.openings.push(newOpening(kind, { wall, room: 'room' }, taken));
  }
  return project;
}

describe('defaults', () => {
  it('make projects without problems and without warnings', () => {
    for (const project of [defaultProject(), withAllKinds()]) {
      const check = checkProject(serializeProject(project), library);
      expect(check.problems).toEqual([]);
      expect(check.warnings).toEqual([]);
      expect(check.project).toEqual(project);
    }
  });

  it('say where each comes from, and nothing that is not a default', () => {
    const root = JSON.parse(serializeProject(withAllKinds())) as Json;
    const leaves = pathsTo(root, (v) => typeof v !== 'object' || v === null).map(shape);
    const used = new Set<string>();
    for (const leaf of leaves) {
      const source = Object.keys(defaultSources)
        .filter(
          (path) => leaf === path || leaf.startsWith(`${path}.`) || leaf.startsWith(`${path}[`),
        )
        .sort((a, b) => b.length - a.length)[0];
      expect(source, leaf).toBeDefined();
      used.add(source);
    }
    const empty = ['glazings', 'blinds', 'schedules', 'groups', 'site.horizon'];
    expect(
      Object.keys(defaultSources)
        .filter((p) => !used.has(p))
        .sort(),
    ).toEqual(empty.sort());
  });

  it('are new objects each time', () => {
    const a = defaultProject();
    a.openings[0].frame.widths.head = 0.4;
    a.rooms[0].people.weekday[0] = 999;
    expect(defaultProject().openings[0].frame.widths.head).not.toBe(0.4);
    expect(defaultProject().rooms[0].people.weekday[0]).not.toBe(999);
  });

  it('name walls by the compass and give ids that are free', () => {
    const names = [0, 44, 46, 90, 181, 225, 270, 359, 360, -90].map((a) => newWall(a).name);
    expect(names.map((n) => n.split(' ')[0])).toEqual(
      'North,North-east,North-east,East,South,South-west,West,North,North,West'.split(','),
    );
    expect(freeId('window', ['window', 'window-2', 'door'])).toBe('window-3');
    expect(newWall(0, ['north-wall']).id).toBe('north-wall-2');
  });

  it('take the wind down as the power law over wooded ground does', () => {
    // ASHRAE Handbook, Fundamentals, airflow around buildings: station layer 270 m, exponent 0.14,
    // at 10 m; suburban or wooded site 370 m, 0.22, here at 3 m. Rounded to 0.05: that much the
    // height of the facade alone makes (2.5 m 0.53, 3.5 m 0.57).
    const law = (270 / 10) ** 0.14 * (3 / 370) ** 0.22;
    expect(defaultProject().site.windExposure).toBeCloseTo(law, 1);
    expect(Math.abs(defaultProject().site.windExposure - law)).toBeLessThan(0.025);
  });
});
