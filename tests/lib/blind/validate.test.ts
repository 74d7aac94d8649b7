import { describe, expect, it } from 'vitest';
import { blindOptics, validateBlind } from '../../../lib/blind/index.ts';
import type { Blind } from '../../../lib/blind/index.ts';
import { InputError } from '../../../lib/problem/index.ts';
import { fabric, slats } from './samples.ts';

const pathsOf = (blind: Blind) => validateBlind(blind).map((problem) => problem.path);

describe('validateBlind', () => {
  it('has nothing to say of usable blinds', () => {
    expect(validateBlind(slats())).toEqual([]);
    expect(validateBlind(fabric())).toEqual([]);
    expect(validateBlind(slats({ angleMin: 45, angleMax: 45 }))).toEqual([]);
  });

  it.each([
    [slats({ slatWidth: 80 }), ['slatWidth']],
    [slats({ slatSpacing: 0 }), ['slatSpacing']],
    [slats({ slatWidth: 0.2, slatSpacing: 0.02 }), ['slatSpacing']],
    [slats({ reflectanceUpper: 70 }), ['reflectanceUpper']],
    [
      slats({ reflectanceLower: 0.7, slatTransmittance: 0.4 }),
      ['reflectanceUpper', 'reflectanceLower'],
    ],
    [slats({ angleMin: 60, angleMax: 30 }), ['angleMax']],
    [slats({ angleMax: NaN }), ['angleMax']],
    [fabric({ openness: 0.5, reflectance: 0.7 }), ['openness']],
    [fabric({ openness: '5 %' as unknown as number }), ['openness']],
    [fabric({ position: 'roof' as 'external' }), ['position']],
    [fabric({ ventFactor: 2, windLimit: 0 }), ['ventFactor', 'windLimit']],
    [{ ...slats(), kind: 'paper' } as unknown as Blind, ['kind']],
  ])('names the field that is wrong (%#)', (blind, paths) => {
    expect(pathsOf(blind)).toEqual(paths);
    for (const problem of validateBlind(blind)) {
      expect(problem.value).toBeTruthy();
      expect(problem.allowed).toBeTruthy();
      expect(problem.fix).toBeTruthy();
    }
    expect(() => blindOptics(blind, { kind: 'down' })).toThrow(InputError);
  });
});
