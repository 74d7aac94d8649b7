import { describe, expect, it } from 'vitest';
import { InputError, type Problem } from '../../../lib/problem/index.ts';
import { checkProject, parseProject } from '../../../lib/project/index.ts';
import { brokenProjects } from './broken.ts';
import { shippedLibrary } from './library.ts';

const library = shippedLibrary();
const files = brokenProjects();

function refusal(text: string): readonly Problem[] {
  try {
    parseProject(text, library);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return (error as InputError).problems;
  }
  return [];
}

describe('broken project files', () => {
  it('are two hundred different ones, the same each time', () => {
    expect(files).toHaveLength(200);
    expect(new Set(files.map((f) => f.text)).size).toBe(200);
    expect(brokenProjects()).toEqual(files);
  });

  it.each(files)('$name', ({ text, expectPath }) => {
    const problems = refusal(text);
    const there = problems.filter((p) => expectPath.test(p.path));
    expect(
      there.length,
      `no problem at ${expectPath}; got ${problems.map((p) => p.path).join(' | ') || 'none'}`,
    ).toBeGreaterThan(0);
    for (const p of problems) {
      expect(p.value, p.path).toBeTruthy();
      expect(p.allowed, p.path).toBeTruthy();
      expect(p.fix, p.path).toBeTruthy();
      expect(p.message, p.path).toBeTruthy();
      expect(p.path).not.toBe('');
    }
  });

  it('give all their problems at once', () => {
    // Two faulty files laid over each other: a wrong figure and a reference to nothing.
    const both = JSON.parse(files[0].text);
    both.openings[0].width = -1;
    both.openings[1].wall = 'nowhere';
    both.site.timeZone = 'Nowhere/Land';
    const paths = checkProject(both, library).problems.map((p) => p.path);
    expect(paths).toContainEqual(expect.stringMatching(/^openings\[0\] ".*"\.width$/));
    expect(paths).toContainEqual(expect.stringMatching(/^openings\[1\] ".*"\.wall$/));
    expect(paths).toContain('site.timeZone');
  });
});
