import { describe, expect, it } from 'vitest';
import { MOST_KEPT, defaultProject, parseProject } from '../../../lib/project/index.ts';
import { keptSchemes } from '../../../lib/sure/index.ts';
import { dropScheme, keepScheme, mayKeep } from '../../../src/app/decide/schemeList.ts';
import { substance } from '../../../src/app/decide/substance.ts';
import { stations } from '../../../src/library/climates.ts';
import { blinds, glazings } from '../../../src/library/index.ts';

describe('schemes a project keeps', () => {
  it('are the house as it was, under a name and an id of their own, and make a sound project', () => {
    const project = defaultProject();
    const before = structuredClone(project);
    keepScheme(project, before, 'First');
    project.openings[0].width += 0.4;
    keepScheme(project, structuredClone(project), 'Wider');
    expect(project.schemes!.map(({ id }) => id)).toEqual(['kept', 'kept-2']);

    const [first, wider] = keptSchemes(project);
    expect(first).toEqual({ id: 'kept', name: 'First', project: { ...before, name: 'First' } });
    expect(wider.project.openings[0].width).toBe(project.openings[0].width);
    // A scheme keeps no schemes.
    expect(wider.project.schemes).toBeUndefined();
    expect(parseProject(structuredClone(project), { glazings, blinds, stations })).toEqual(project);
  });

  it('go one by one and leave no empty list behind', () => {
    const project = defaultProject();
    keepScheme(project, project, 'a');
    keepScheme(project, project, 'b');
    dropScheme(project, 'kept');
    expect(keptSchemes(project).map((s) => s.name)).toEqual(['b']);
    dropScheme(project, 'kept-2');
    expect(project).toEqual(defaultProject());
  });

  it('are limited in number, and what is decided does not rest on them', () => {
    const project = defaultProject();
    for (let i = 0; i < MOST_KEPT; i++) {
      expect(mayKeep(project)).toBe(true);
      keepScheme(project, project, `${i}`);
    }
    expect(mayKeep(project)).toBe(false);
    expect(substance(project)).toBe(substance(defaultProject()));
  });
});
