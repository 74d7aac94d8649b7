import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkProject,
  defaultProject,
  parseProject,
  serializeProject,
  type Project,
} from '../../../lib/project/index.ts';
import { shippedLibrary } from './library.ts';
import { randomProject } from './randomProject.ts';

const library = shippedLibrary();

/** The same data with the fields of every object in another order. */
function shuffled(value: unknown, seed: number): unknown {
  if (Array.isArray(value)) return value.map((item) => shuffled(item, seed));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([k, v]) => [k, shuffled(v, seed)] as const);
  const order = (k: string) =>
    (k.charCodeAt(0) * 31 + k.length * 17 + k.charCodeAt(1) * seed) % 101;
  return Object.fromEntries(entries.sort(([a], [b]) => order(a) - order(b)));
}

describe('writing and reading back', () => {
  it('gives the same project and the same text, whatever the order of the fields', () => {
    fc.assert(
      fc.property(randomProject, fc.integer({ min: 1, max: 99 }), (input, seed) => {
        const { project, problems } = checkProject(input, library);
        expect(problems).toEqual([]);
        const text = serializeProject(project!);
        const again = parseProject(text, library);
        expect(again).toEqual(project);
        expect(serializeProject(again)).toBe(text);
        expect(serializeProject(shuffled(project, seed) as Project)).toBe(text);
        // A plain JSON reader sees the same data.
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(project)));
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('writes fields in the order of the schema, two spaces deep, figures of a list on one line', () => {
    const lines = serializeProject(defaultProject()).split('\n');
    expect(lines.slice(0, 8)).toEqual([
      '{',
      '  "format": "shadewright-project",',
      '  "version": 1,',
      '  "name": "New house",',
      '  "notes": "",',
      '  "units": "metric",',
      '  "site": {',
      '    "name": "Burlington, Vermont",',
    ]);
    expect(lines.at(-1)).toBe('');
    expect(
      lines.filter((l) => /"weekday": \[0, 0|"weekday": \[90(, \d+){23}\],/.test(l)),
    ).toHaveLength(1);
  });

  it('turns minus nought into nought, which JSON writes alike', () => {
    const input = structuredClone(defaultProject());
    input.site.longitude = -0;
    input.site.latitude = -0;
    input.site.timeZone = 'Africa/Accra';
    const project = parseProject(input, library);
    expect(Object.is(project.site.longitude, 0)).toBe(true);
    expect(parseProject(serializeProject(project), library)).toEqual(project);
  });

  it('leaves out fields that are undefined', () => {
    const project = defaultProject();
    project.openings[0].overhang = undefined;
    expect(serializeProject(project)).not.toMatch(/overhang|undefined/);
  });
});
