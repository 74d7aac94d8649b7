import { describe, expect, it } from 'vitest';
import { inTurn, sayFrom, verbatim } from '../../../lib/problem/index.ts';
import { Words } from '../../../src/words/index.ts';

const english = await Words.load('en', ['charts']);
const german = await Words.load('de', ['charts']);

describe('figures in the manner of a language', () => {
  it('have its decimal sign and its sign between thousands', () => {
    expect(english.figure(-1234.56, 1)).toBe('−1,234.6');
    expect(german.figure(-1234.56, 1)).toBe('−1.234,6');
    expect(german.figure(Number.NaN)).toBe('–');
    expect(german.figure(-0.01, 1)).toBe('0,0');
    expect(german.measured(2.5, 1, 'K')).toBe('2,5\u00a0K');
    expect(german.share(0.176, 1)).toBe('17,6\u00a0%');
  });

  it('keep feet, inches and the units with slashes', () => {
    expect(german.quantity('uValue', 0.6, 'metric')).toBe('0,60 W/m²K');
    expect(english.quantity('uValue', 0.6, 'metric')).toBe('0.60 W/m²K');
    expect(german.quantity('length', 2.0447, 'imperial')).toBe(`6' 8 1/2"`);
  });

  it('name days and months', () => {
    expect(english.day('06-21')).toBe('21 June');
    expect(german.day('06-21')).toBe('21. Juni');
    expect(german.weekdays('long')[0]).toBe('Montag');
    expect(english.weekdays()[6]).toBe('Sun');
  });
});

describe('sentences of the engine', () => {
  const say = sayFrom('nowhere', {
    range: '{{min}} to {{max}} {{unit}}',
    fix_one: 'Delete {{count}} line.',
    fix_other: 'Delete {{count}} lines.',
    whole: '{{inner}}, said twice: {{inner}}',
  });

  it('carry their English', () => {
    const range = say('range', { min: 0.1, max: 10, unit: 'm' });
    expect(range.english).toBe('0.1 to 10 m');
    expect(say('fix', { count: 1 }).english).toBe('Delete 1 line.');
    expect(say('fix', { count: 3 }).english).toBe('Delete 3 lines.');
    expect(say('whole', { inner: range }).english).toBe('0.1 to 10 m, said twice: 0.1 to 10 m');
    expect(inTurn(range, verbatim('"x"')).english).toBe('0.1 to 10 m "x"');
  });

  it('are told in English where the language has no such file', () => {
    expect(german.text(say('fix', { count: 2 }))).toBe('Delete 2 lines.');
    expect(german.text(verbatim('Nordfenster'))).toBe('Nordfenster');
  });

  it('leave names with braces and keys alone', () => {
    const named = sayFrom('nowhere', { is: 'is {{name}}' })('is', { name: '{{other}} $t(title)' });
    expect(named.english).toBe('is {{other}} $t(title)');
  });
});
