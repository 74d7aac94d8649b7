import { describe, expect, it } from 'vitest';
import { checkProject, fieldHints, serializeProject } from '../../../lib/project/index.ts';
import { EXAMPLES, exampleText, shippedLibrary } from './library.ts';
import { pathsTo, shape, type Json } from './paths.ts';

const library = shippedLibrary();

describe.each(EXAMPLES)('example %s', (name) => {
  const text = exampleText(name);
  const { project, problems, warnings } = checkProject(text, library);

  it('is read without problems and without warnings', () => {
    expect(problems).toEqual([]);
    expect(warnings).toEqual([]);
  });

  it('is written back letter for letter', () => {
    expect(serializeProject(project!)).toBe(text);
  });

  it('has at least eight openings and says that it is invented', () => {
    expect(project!.openings.length).toBeGreaterThanOrEqual(8);
    expect(project!.notes).toMatch(/invented house for the demo/);
  });

  it('has a hint with a range for every figure, which the figure keeps', () => {
    const root = JSON.parse(text) as Json;
    const paths = pathsTo(root, (v, p) => typeof v === 'number' && p[0] !== 'version');
    expect(paths.length).toBeGreaterThan(200);
    const hints = fieldHints();
    for (const path of paths.map(shape).filter((p) => !/insectScreen\.share$/.test(p))) {
      const hint = hints.get(path);
      expect(hint, path).toBeDefined();
      expect(hint!.where.english.length, path).toBeGreaterThan(10);
    }
  });
});

describe('the studio', () => {
  const project = checkProject(exampleText('studio'), library).project!;
  const opening = (id: string) => project.openings.find((o) => o.id === id)!;

  it('has the walls, the floor and the door of the design', () => {
    expect(project.rooms[0].floorArea).toBe(38);
    for (const wall of project.walls.filter((w) => w.tilt === 90)) {
      expect(wall.thickness).toBe(0.42);
      expect(wall.U).toBe(0.12);
    }
    // 4 by 8 ft at 0.3048 m a foot, to the millimetre the file is written in.
    expect(opening('west-door').width).toBeCloseTo(4 * 0.3048, 3);
    expect(opening('west-door').height).toBeCloseTo(8 * 0.3048, 3);
  });

  it('moves the blinds on west and south-west by one channel', () => {
    const moved = project.openings.filter((o) => o.blind?.group === 'west-remote');
    const azimuths = moved.map((o) => project.walls.find((w) => w.id === o.wall)!.azimuth);
    expect([...new Set(azimuths)].sort()).toEqual([225, 270]);
  });
});
