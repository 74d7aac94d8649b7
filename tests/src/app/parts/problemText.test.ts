import { describe, expect, it } from 'vitest';
import { InputError, formatProblem } from '../../../../lib/problem/index.ts';
import type { Problem } from '../../../../lib/problem/index.ts';
import { checkProject, defaultProject } from '../../../../lib/project/index.ts';
import { parseQuantity } from '../../../../lib/units/index.ts';
import { problemLine, problemText } from '../../../../src/app/parts/problemText.ts';
import { Words } from '../../../../src/words/index.ts';
import { brokenProjects } from '../../../lib/project/broken.ts';
import { shippedLibrary } from '../../../lib/project/library.ts';

const english = await Words.load('en', []);
const german = await Words.load('de', []);
const library = shippedLibrary();

function problemAt(path: RegExp, change: (project: ReturnType<typeof defaultProject>) => void) {
  const project = defaultProject();
  change(project);
  const { problems, warnings } = checkProject(project, library);
  return [...problems, ...warnings].find((p) => path.test(p.path))!;
}

describe('a problem in the language of the page', () => {
  it('has its figures with a comma and its sentences in German', () => {
    const wide = problemAt(/width$/, (p) => (p.openings[0].width = 10.5));
    expect(problemText(german, wide)).toEqual({
      message: 'ist zu groß',
      value: '10,5',
      allowed: '0,1 bis 10 m',
      fix:
        'Lichte Breite der Wandöffnung. ' +
        'Mit dem Maßband messen oder dem Plan entnehmen; Fuß mal 0,3048 ergibt Meter.',
    });
    const { path: _, texts: __, ...said } = wide;
    expect(problemText(english, wide)).toEqual(said);
  });

  it('names what is missing, and leaves letters of the user alone', () => {
    const gone = problemAt(/name$/, (p) => Reflect.deleteProperty(p.rooms[0], 'name'));
    expect(problemText(german, gone)).toMatchObject({ message: 'fehlt', value: 'nichts' });
    const named = problemAt(/wall$/, (p) => (p.openings[0].wall = 'wall-2.5'));
    expect(problemText(german, named).value).toBe('"wall-2.5"');
  });

  it('is in English where it has no place in the language files', () => {
    const plain: Problem = { path: 'x', message: 'is odd', value: '1.5', fix: 'Mend it.' };
    expect(problemText(german, plain)).toEqual({
      message: 'is odd',
      value: '1,5',
      allowed: undefined,
      fix: 'Mend it.',
    });
  });

  it('stands in one line under a field', () => {
    try {
      parseQuantity('temperature', 'warm', 'metric');
      expect.fail('read');
    } catch (error) {
      const [problem] = (error as InputError).problems;
      expect(problemLine(english, problem)).toBe(
        'This entry is not understood. Write it like 25 C or 77 F.',
      );
      expect(problemLine(german, problem)).toBe(
        'Diese Eingabe ist nicht verständlich. Schreibweise: 25 C oder 77 F.',
      );
    }
  });

  it('tells the faults of broken files in German', () => {
    for (const { text } of brokenProjects().filter((_, i) => i % 3 === 0)) {
      for (const problem of checkProject(text, library).problems) {
        const { message, fix } = problemText(german, problem);
        expect(message, formatProblem(problem)).not.toBe(problem.message);
        expect(fix, formatProblem(problem)).not.toBe(problem.fix);
        expect(`${message} ${fix}`).not.toContain('{{');
      }
    }
  });
});
