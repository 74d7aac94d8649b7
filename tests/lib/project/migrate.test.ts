import { describe, expect, it } from 'vitest';
import {
  checkProject,
  defaultProject,
  migrate,
  serializeProject,
  VERSION,
} from '../../../lib/project/index.ts';
import { shippedLibrary } from './library.ts';

const library = shippedLibrary();

/** The default project as the draft layout wrote it. */
function draft() {
  const { name, walls, openings, groups, ...rest } = defaultProject();
  expect(groups).toEqual([]);
  return {
    ...rest,
    version: 0,
    title: name,
    facades: walls,
    openings: openings.map(({ wall, setBack, reveal, frame, ...opening }) => {
      expect(new Set(Object.values(reveal))).toEqual(new Set([setBack]));
      const { widths, ...losses } = frame;
      return {
        ...opening,
        facade: wall,
        revealDepth: setBack,
        frame: { width: widths.head, ...losses },
      };
    }),
  };
}

/** The same project with the one frame width the draft layout knew. */
function expected() {
  const project = defaultProject();
  const { widths } = project.openings[0].frame;
  widths.sill = widths.head;
  return project;
}

describe('version 0, the draft layout', () => {
  it('becomes the project it stood for, with a word about it', () => {
    const { project, problems, warnings } = checkProject(JSON.stringify(draft()), library);
    expect(problems).toEqual([]);
    expect(warnings.map((w) => [w.path, w.value, w.allowed])).toEqual([['version', '0', '1']]);
    expect(project).toEqual(expected());
  });

  it('is of the present version once it is saved', () => {
    const first = checkProject(draft(), library).project!;
    const again = checkProject(serializeProject(first), library);
    expect(again.warnings).toEqual([]);
    expect(again.project).toEqual(first);
  });

  it('keeps what it does not know for the checks to name', () => {
    const file = {
      ...draft(),
      facades: 5,
      sparkle: true,
      openings: [7, { ...draft().openings[0] }],
    };
    const paths = checkProject(file, library).problems.map((p) => p.path);
    expect(paths).toContain('walls');
    expect(paths).toContain('sparkle');
    expect(paths).toContain('openings[0]');
  });

  it('leaves the data it was given as they were', () => {
    const file = draft();
    const before = structuredClone(file);
    migrate(file);
    expect(file).toEqual(before);
  });
});

describe('other versions', () => {
  it('present files pass through untouched', () => {
    const project = defaultProject();
    expect(migrate(project)).toEqual({ data: project, from: VERSION, problems: [] });
  });

  it('files of the future are refused in words', () => {
    const { data, problems } = migrate({ ...defaultProject(), version: VERSION + 1 });
    expect(data).toBeUndefined();
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({
      path: 'version',
      value: '2',
      allowed: 'whole number, 0 to 1',
    });
    expect(problems[0].fix).toMatch(/newer version/);
  });
});
