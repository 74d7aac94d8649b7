import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import fields from '../../../data/words/en/fields.json' with { type: 'json' };
import { fieldHints } from '../../../lib/project/index.ts';
import { Words } from '../../../src/words/index.ts';

type Tree = { [key: string]: string | Tree };

const german = await Words.load('de', []);
const english = await Words.load('en', []);

const keys = (tree: Tree, path = ''): string[] =>
  Object.entries(tree).flatMap(([key, value]) =>
    typeof value === 'string' ? [path + key] : keys(value, `${path}${key}.`),
  );

describe('hints of the fields of a project', () => {
  const hints = [...fieldHints()];

  it('are told in German, range and where to find the value', () => {
    expect(hints.length).toBeGreaterThan(150);
    for (const [path, { where, allowed }] of hints) {
      expect(german.text(where), path).not.toBe(english.text(where));
      expect(german.text(allowed), path).not.toBe(english.text(allowed));
      expect(german.text(allowed), path).not.toMatch(/\d\.\d| to |\{\{/);
    }
  });

  it('have ranges with a decimal comma and the units in German', () => {
    const { allowed, where } = fieldHints().get('openings[].width')!;
    expect(german.text(allowed)).toBe('0,1 bis 10 m');
    expect(german.text(where)).toBe(
      'Lichte Breite der Wandöffnung. ' +
        'Mit dem Maßband messen oder dem Plan entnehmen; Fuß mal 0,3048 ergibt Meter.',
    );
    const azimuth = fieldHints().get('walls[].azimuth')!;
    expect(german.text(azimuth.allowed)).toBe('0 bis 360 Grad im Uhrzeigersinn ab Norden');
  });

  it('leave no sentence of their file unused', () => {
    const folder = 'lib/project';
    const sources = readdirSync(folder)
      .map((file) => readFileSync(`${folder}/${file}`, 'utf8'))
      .join('\n');
    const units = keys(fields.unit).map((unit) => `unit.${unit}`);
    const unused = keys(fields).filter((key) => {
      const name = units.includes(key) ? key.replace('unit.', '') : key;
      return !sources.includes(`'${name}'`);
    });
    expect(unused).toEqual([]);
  });
});
