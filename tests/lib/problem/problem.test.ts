import { describe, expect, it } from 'vitest';
import { InputError, formatProblem, showValue } from '../../../lib/problem/index.ts';
import type { Problem } from '../../../lib/problem/index.ts';

const width: Problem = {
  path: 'openings[2].width',
  message: 'is out of range',
  value: '120',
  allowed: '0.1 to 10 m',
  fix: 'Measure it in metres.',
};

// Expected lines are written out by hand: they are what a person reads.
describe('a problem in one line', () => {
  const cases: [string, Problem, string][] = [
    [
      'with everything',
      width,
      'openings[2].width: is out of range (is 120; allowed: 0.1 to 10 m). Measure it in metres.',
    ],
    [
      'without what is allowed',
      { ...width, allowed: undefined },
      'openings[2].width: is out of range (is 120). Measure it in metres.',
    ],
    [
      'without what stands there',
      { ...width, value: undefined },
      'openings[2].width: is out of range (allowed: 0.1 to 10 m). Measure it in metres.',
    ],
    [
      'with neither, nor what to do',
      { path: 'line 14, column "DNI"', message: 'is empty' },
      'line 14, column "DNI": is empty.',
    ],
    [
      'with an empty value',
      { path: 'name', message: 'is missing', value: '' },
      'name: is missing (is ).',
    ],
  ];
  it.each(cases)('%s', (_, problem, line) => {
    expect(formatProblem(problem)).toBe(line);
  });
});

describe('an error of input', () => {
  it('carries one problem as a list', () => {
    const error = new InputError(width);
    expect(error.problems).toEqual([width]);
    expect(error.message).toBe(formatProblem(width));
  });

  it('tells each of several problems in a line of its own', () => {
    const height = { ...width, path: 'openings[2].height' };
    const error = new InputError([width, height]);
    expect(error.problems).toEqual([width, height]);
    expect(error.message.split('\n')).toEqual([formatProblem(width), formatProblem(height)]);
  });

  it('can be told from other errors', () => {
    const error: unknown = new InputError(width);
    expect(error).toBeInstanceOf(InputError);
    expect(error).toBeInstanceOf(Error);
    expect((error as Error).name).toBe('InputError');
    expect(new Error('other')).not.toBeInstanceOf(InputError);
  });
});

describe('a value as shown', () => {
  const circle: { self?: unknown } = {};
  circle.self = circle;
  const cases: [unknown, string][] = [
    [undefined, 'missing'],
    [null, 'null'],
    [12.5, '12.5'],
    ['12,5', '"12,5"'],
    ['say "so"', '"say \\"so\\""'],
    [[1, 2], '[1,2]'],
    [{ from: 0 }, '{"from":0}'],
    [circle, '[object Object]'],
    [10n, '10'],
    [Symbol('x'), 'Symbol(x)'],
  ];
  it('is JSON where there is any, and plain text where not', () => {
    for (const [value, text] of cases) expect(showValue(value)).toBe(text);
  });

  it('is cut at 60 characters, the dots that say so among them', () => {
    const fits = 'x'.repeat(58);
    expect(showValue(fits)).toBe(`"${fits}"`);
    const long = showValue(`${fits}y`);
    expect(long).toBe(`"${'x'.repeat(56)}...`);
    expect(long).toHaveLength(60);
  });
});
