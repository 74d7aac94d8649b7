import { describe, expect, it } from 'vitest';
import { validateGlazing, type ClearPane, type Glazing } from '../../../lib/glazing/index.ts';
import { clearGlazing, coatedGlazing } from './samples.ts';

const paths = (glazing: Glazing) => validateGlazing(glazing, 'glazings[2]').map((p) => p.path);
const withPane = (change: Partial<ClearPane>): Glazing => {
  const glazing = clearGlazing(2);
  if (glazing.angular.kind !== 'clear') throw new Error('sample changed');
  const [outer, inner] = glazing.angular.panes as [ClearPane, ClearPane];
  return { ...glazing, angular: { kind: 'clear', panes: [outer, { ...inner, ...change }] } };
};

describe('validateGlazing', () => {
  it('has nothing against sound glazings', () => {
    for (const panes of [1, 2, 3, 4]) {
      expect(validateGlazing(clearGlazing(panes))).toEqual([]);
      expect(validateGlazing(coatedGlazing(panes))).toEqual([]);
    }
  });

  it.each<[Partial<Glazing>, string[]]>([
    [{ panes: 0 }, ['panes']],
    [{ panes: 5 }, ['panes']],
    [{ panes: 2.5 }, ['panes']],
    [{ g: 0.04, solarTransmittance: 0.02 }, ['g']],
    [{ g: 0.95 }, ['g']],
    [{ g: NaN }, ['g']],
    [{ g: 50 }, ['g']],
    [{ solarTransmittance: 0.51 }, ['solarTransmittance']],
    [{ solarTransmittance: -0.1 }, ['solarTransmittance']],
    [{ visibleTransmittance: 1.1 }, ['visibleTransmittance']],
    [{ Ug: 0.2 }, ['Ug']],
    [{ Ug: 9.5 }, ['Ug']],
    [{ angular: { kind: 'coated', q: 0.5 } }, ['angular.q']],
    [{ angular: { kind: 'coated', q: 11 } }, ['angular.q']],
    [{ g: 2, Ug: 60 }, ['g', 'Ug']],
  ])('names what is wrong with %j', (change, fields) => {
    expect(paths({ ...coatedGlazing(3), ...change })).toEqual(
      fields.map((f) => `glazings[2].${f}`),
    );
  });

  it.each<[Partial<ClearPane>, string]>([
    [{ thickness: 4 }, 'thickness'],
    [{ extinction: -1 }, 'extinction'],
    [{ refractiveIndex: 1 }, 'refractiveIndex'],
  ])('names the pane and its field: %j', (change, field) => {
    expect(paths(withPane(change))).toEqual([`glazings[2].angular.panes[1].${field}`]);
  });

  it('asks for one entry a pane', () => {
    expect(paths({ ...clearGlazing(2), panes: 3 })).toEqual(['glazings[2].angular.panes']);
  });

  it('compares the data sheet with the trace, 0.05 either way', () => {
    const sound = clearGlazing(2);
    expect(paths({ ...sound, g: sound.g + 0.049 })).toEqual([]);
    expect(paths({ ...sound, g: sound.g + 0.051 })).toEqual(['glazings[2].g']);
    expect(paths({ ...sound, solarTransmittance: sound.solarTransmittance - 0.051 })).toEqual([
      'glazings[2].solarTransmittance',
    ]);
    // A grey pane where a clear one is told.
    expect(paths(withPane({ extinction: 100 }))).toContain('glazings[2].g');
  });

  it('sees that two panes cannot have the U-value of one', () => {
    expect(paths({ ...clearGlazing(2), Ug: 5.8 })).toEqual(['glazings[2].Ug']);
  });

  it('says what is allowed and what to do', () => {
    const [problem] = validateGlazing({ ...coatedGlazing(3), g: 50 });
    expect(problem).toMatchObject({ value: '50', allowed: '0.05 to 0.92' });
    expect(problem!.fix).toMatch(/50 % is 0\.5/);
  });
});
