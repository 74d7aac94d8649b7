import { describe, expect, it } from 'vitest';
import { buildTypicalYear, normalsProblems } from '../../../../lib/climate/build/index.ts';
import type { MonthlyNormals } from '../../../../lib/climate/index.ts';
import { InputError } from '../../../../lib/problem/index.ts';
import five from '../../../reference/climate-normals-five.json' with { type: 'json' };
import { placeOf } from './support.ts';
import type { Station } from './support.ts';

const station = five.stations[3] as unknown as Station;

/** The station's normals with one value changed. */
function changed(name: keyof MonthlyNormals, month: number, value: unknown): MonthlyNormals {
  const values: unknown[] = [...(station[name] ?? [])];
  values[month] = value;
  return { ...station, [name]: values };
}

function refused(act: () => unknown): InputError {
  try {
    act();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('problems of monthly normals', () => {
  it('finds none in a station', () => {
    expect(normalsProblems(station)).toEqual([]);
    expect(normalsProblems(station, station.latitude)).toEqual([]);
  });

  it('names month, value and what the sun allows', () => {
    const [problem, ...others] = normalsProblems(changed('ghiKWhPerM2Day', 11, 5), 47.467);
    expect(others).toEqual([]);
    expect(problem.path).toBe('ghiKWhPerM2Day[11]');
    expect(problem.message).toContain('December');
    expect(problem.value).toContain('5');
    // Duffie & Beckman (2013), table 1.10.1: about 2.6 kWh/m2 a day (9.4 MJ) at 47.5 N in December
    // for a solar constant of 1367 (from memory); 85 percent of it is 2.2.
    const allowed = Number(/to ([\d.]+) kWh/.exec(problem.allowed!)![1]);
    expect(allowed).toBeGreaterThan(2.0);
    expect(allowed).toBeLessThan(2.6);
  });

  it.each([
    ['dryBulbMean', 6, NaN, 'July'],
    ['dryBulbMean', 0, '5', 'January'],
    ['ghiKWhPerM2Day', 4, -0.1, 'May'],
    ['wind', 2, 31, 'March'],
    ['dailyClearnessStd', 9, 0.6, 'October'],
    ['dailyMeanTempStd', 9, null, 'October'],
    ['dniKWhPerM2Day', 1, Infinity, 'February'],
  ] as const)('refuses %s[%i] = %s', (name, month, value, said) => {
    const problems = normalsProblems(changed(name, month, value));
    expect(problems).toHaveLength(1);
    expect(problems[0].path).toBe(`${name}[${month}]`);
    expect(problems[0].message).toContain(said);
    expect(problems[0].allowed).toBeTruthy();
    expect(problems[0].fix).toBeTruthy();
  });

  it('refuses eleven values, and none', () => {
    const eleven = { ...station, dryBulbMean: station.dryBulbMean.slice(0, 11) };
    expect(normalsProblems(eleven)[0].value).toBe('11 values');
    const none = { ...station, dryBulbDailyMax: undefined } as unknown as MonthlyNormals;
    expect(normalsProblems(none)[0].path).toBe('dryBulbDailyMax');
    expect(normalsProblems({ ...station, wind: undefined })).toEqual([]);
  });

  it('refuses a mean outside its minimum and maximum, and diffuse over global', () => {
    const cold = normalsProblems(changed('dryBulbDailyMax', 7, station.dryBulbMean[7]));
    expect(cold[0].message).toContain('August');
    const bright = normalsProblems(changed('dhiKWhPerM2Day', 5, 9));
    expect(bright[0].path).toBe('dhiKWhPerM2Day[5]');
  });

  it('takes the polar night and the southern summer', () => {
    const dark = { ...station, ghiKWhPerM2Day: [0, 0, 1, 2, 3, 4, 4, 3, 2, 0.5, 0, 0] };
    expect(normalsProblems({ ...dark, dhiKWhPerM2Day: undefined }, 75)).toEqual([]);
    const south = normalsProblems(station, -47);
    expect(south.map((p) => p.path)).toContain('ghiKWhPerM2Day[5]');
  });
});

describe('bad input to a built year', () => {
  const build = (
    normals: MonthlyNormals,
    place: Partial<ReturnType<typeof placeOf>>,
    options?: { seed?: number; warmer?: number; sunnier?: number },
  ) => buildTypicalYear(normals, { ...placeOf(station), ...place }, options);

  it.each([
    ['latitude', { latitude: 91 }, {}],
    ['longitude', { longitude: NaN }, {}],
    ['elevation', { elevation: 9000 }, {}],
    ['standardOffset', { standardOffset: -480 }, {}],
    ['seed', {}, { seed: 1.5 }],
    ['seed', {}, { seed: -1 }],
    ['warmer', {}, { warmer: 30 }],
    ['sunnier', {}, { sunnier: 0 }],
  ] as const)('refuses %s', (path, place, options) => {
    const error = refused(() => build(station, place, options));
    expect(error.problems.map((p) => p.path)).toEqual([path]);
  });

  it('refuses normals of another latitude', () => {
    const error = refused(() => build(station, { latitude: -47 }));
    expect(error.message).toContain('June');
    expect(error.message).toContain('allowed: 0 to');
  });

  it('says where diffuse and global do not fit together', () => {
    const dim = changed('dhiKWhPerM2Day', 6, 0.02);
    expect(
      build(dim, {})
        .messages.map((m) => m.english)
        .join(' '),
    ).toContain('July');
  });
});
