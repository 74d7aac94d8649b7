import { describe, expect, it } from 'vitest';
import {
  MOST_KEPT,
  blindPrices,
  checkProject,
  defaultProject,
  fieldHints,
  houseOf,
  parseProject,
  projectOf,
  serializeProject,
  type Project,
} from '../../../lib/project/index.ts';
import { shippedLibrary } from './library.ts';

const library = shippedLibrary();

/** A project that keeps the house as it was with a wider window, and has a price for its blind. */
function keeping(change: (kept: Project) => void = () => undefined): Project {
  const project = structuredClone(defaultProject());
  const other = structuredClone(defaultProject());
  other.name = 'Wider window';
  other.openings[0].width += 0.5;
  change(other);
  project.openings[0].blindPrice = 840.5;
  return {
    ...project,
    page: { title: 'For the client' },
    schemes: [{ id: 'wider', house: houseOf(other) }],
  };
}

describe('kept schemes and prices', () => {
  it('come back from the file as they went in', () => {
    const project = keeping();
    const back = parseProject(serializeProject(project), library);
    expect(back).toEqual(project);
    expect(blindPrices(back)).toEqual({ 'south-window': 840.5 });
    const scheme = projectOf(back.schemes![0].house);
    expect(scheme.name).toBe('Wider window');
    expect(parseProject(structuredClone(scheme), library)).toEqual(scheme);
  });

  it('are absent from a file that has none', () => {
    expect(parseProject(structuredClone(defaultProject()), library).schemes).toBeUndefined();
    expect(blindPrices(defaultProject())).toEqual({});
  });

  it('are checked like the project itself, each fault at its own place', () => {
    const wrong = keeping((kept) => {
      kept.openings[0].width = 50;
      kept.openings[0].glazing = 'no-such-glass';
    });
    const { project, problems } = checkProject(wrong, library);
    expect(project).toBeUndefined();
    const paths = problems.map((p) => p.path.replace(/ "[^"]*"/g, ''));
    expect(paths).toContain('schemes[0].house.openings[0].width');
    expect(paths).toContain('schemes[0].house.openings[0].glazing');
  });

  it('have ids of their own, no price of nothing, and a limit to their number', () => {
    const project = keeping();
    const twice = { ...project, schemes: [project.schemes![0], project.schemes![0]] };
    expect(checkProject(twice, library).problems.map((p) => p.path)).toEqual([
      expect.stringMatching(/^schemes\[1\].*\.id$/),
    ]);
    project.openings[0].blindPrice = 0;
    expect(checkProject(project, library).problems[0].path).toMatch(/blindPrice$/);
    const many = keeping();
    many.schemes = Array.from({ length: MOST_KEPT + 1 }, (_, i) => ({
      id: `kept-${i}`,
      house: many.schemes![0].house,
    }));
    expect(checkProject(many, library).problems.map((p) => p.path)).toContain('schemes');
  });

  it('need no field hints of their own beside those of the project', () => {
    const paths = [...fieldHints().keys()];
    expect(paths).toContain('openings[].blindPrice');
    expect(paths.filter((path) => path.startsWith('schemes[].house'))).toEqual([]);
  });
});
