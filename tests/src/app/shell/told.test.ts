import { describe, expect, it } from 'vitest';
import { compassName } from '../../../../src/app/parts/compass.ts';
import { readProjectText } from '../../../../src/app/files/projectFile.ts';
import { problemText } from '../../../../src/app/parts/problemText.ts';
import { faultOf, faultText } from '../../../../src/app/state/fault.ts';
import { Words } from '../../../../src/words/index.ts';

const english = await Words.load('en', ['shell']);
const german = await Words.load('de', ['shell']);

describe('what the page tells of itself', () => {
  it('is a fault in its own words, or that a worker did not start', () => {
    const said = faultOf({ message: 'x is not defined' } as ErrorEvent, 'engine');
    expect(faultText(german, said)).toBe('x is not defined');
    const silent = faultOf({ message: '' } as ErrorEvent, 'engine');
    expect(faultText(english, silent)).toBe('The engine could not be started.');
    expect(faultText(german, silent)).toBe('Der Rechenkern konnte nicht gestartet werden.');
  });

  it('is a file too long to be a project', async () => {
    const read = await readProjectText(' '.repeat(20_000_001));
    const [problem] = read.project ? [] : read.problems;
    expect(problem).toMatchObject({
      path: 'file',
      message: 'is too long for a project',
      allowed: 'up to 20000000 characters',
    });
    expect(problemText(german, problem!)).toMatchObject({
      message: 'ist zu lang für ein Projekt',
      fix: 'Eine Datei öffnen, die als Shadewright-Projekt gesichert wurde.',
    });
  });

  it('names the eight points of the compass, round the north', () => {
    const all = [0, 45, 90, 135, 180, 225, 270, 315];
    expect(all.map((azimuth) => compassName(english, azimuth))).toEqual([
      'north',
      'north-east',
      'east',
      'south-east',
      'south',
      'south-west',
      'west',
      'north-west',
    ]);
    expect([-10, 350, 361].map((azimuth) => compassName(german, azimuth))).toEqual([
      'Norden',
      'Norden',
      'Norden',
    ]);
  });
});
