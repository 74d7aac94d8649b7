import { showValue } from '../problem/index.ts';
import type { Problem } from '../problem/index.ts';
import type { Blind } from './types.ts';

/** Checks one field at a time and gathers what is wrong. */
class Checker {
  readonly problems: Problem[] = [];
  readonly #blind: Record<string, unknown>;

  constructor(blind: Blind) {
    this.#blind = blind as unknown as Record<string, unknown>;
  }

  /** The number in a field, or NaN with a problem noted. */
  number(field: string, min: number, max: number, unit: string, fix: string): number {
    const value = this.#blind[field];
    if (typeof value === 'number' && value >= min && value <= max) return value;
    const allowed = `${min} to ${max}${unit && ` ${unit}`}`;
    const known = typeof value === 'number' && Number.isFinite(value);
    const message = known ? 'The value is out of range' : 'A number is needed';
    this.problems.push({ path: field, message, value: showValue(value), allowed, fix });
    return NaN;
  }

  optional(field: string, min: number, max: number, unit: string, fix: string): void {
    if (this.#blind[field] !== undefined) this.number(field, min, max, unit, fix);
  }

  oneOf(field: string, choices: readonly string[], fix: string): void {
    const value = this.#blind[field];
    if (choices.includes(value as string)) return;
    const allowed = choices.join(', ');
    this.problems.push({
      path: field,
      message: 'Not a known choice',
      value: showValue(value),
      allowed,
      fix,
    });
  }

  /** Parts of the same light must not add up to more than all of it. */
  atMostOne(fields: string[], values: number[]): void {
    const sum = values.reduce((total, value) => total + value, 0);
    if (!(sum > 1 + 1e-9)) return;
    this.problems.push({
      path: fields[0],
      message: `${fields.join(' + ')} is more than all of the light`,
      value: String(Number(sum.toFixed(4))),
      allowed: '0 to 1 together',
      fix: 'Check on the data sheet which of them already contains another.',
    });
  }
}

const SHEET = "Read it on the blind's data sheet, as a share (50 % is 0.5).";

const checks = {
  slats(c: Checker): void {
    const width = c.number(
      'slatWidth',
      0.005,
      0.5,
      'm',
      'Measure across one slat (80 mm is 0.08).',
    );
    const spacing = c.number('slatSpacing', 0.003, 0.5, 'm', 'Measure from slat to slat.');
    if (width / spacing < 0.2 || width / spacing > 5) {
      c.problems.push({
        path: 'slatSpacing',
        message: 'Slat width and spacing do not fit each other',
        value: `width / spacing ${(width / spacing).toFixed(2)}`,
        allowed: 'width / spacing 0.2 to 5',
        fix: 'Closing slats are a little wider than their spacing: 80 mm every 72 mm, for instance.',
      });
    }
    const upper = c.number('reflectanceUpper', 0, 1, '', SHEET);
    const lower = c.number('reflectanceLower', 0, 1, '', SHEET);
    const through = c.number('slatTransmittance', 0, 1, '', 'Take 0 for metal or wood.');
    c.atMostOne(['reflectanceUpper', 'slatTransmittance'], [upper, through]);
    c.atMostOne(['reflectanceLower', 'slatTransmittance'], [lower, through]);
    const min = c.number('angleMin', -90, 90, 'degrees', 'Take the least angle the drive reaches.');
    const max = c.number('angleMax', -90, 90, 'degrees', 'Take the largest angle it reaches.');
    if (min > max) {
      c.problems.push({
        path: 'angleMax',
        message: 'The largest slat angle lies below the least',
        value: String(max),
        allowed: `${min} to 90 degrees`,
        fix: 'Exchange angleMin and angleMax, or give both the same value for fixed slats.',
      });
    }
  },
  fabric(c: Checker): void {
    const openness = c.number('openness', 0, 1, '', SHEET);
    const diffuse = c.number(
      'diffuseTransmittance',
      0,
      1,
      '',
      'Solar transmittance less openness.',
    );
    const reflectance = c.number('reflectance', 0, 1, '', SHEET);
    const fields = ['openness', 'diffuseTransmittance', 'reflectance'];
    c.atMostOne(fields, [openness, diffuse, reflectance]);
  },
  shutter(c: Checker): void {
    const through = c.number('transmittance', 0, 1, '', 'Take 0.02 for a closed roller shutter.');
    const reflectance = c.number('reflectance', 0, 1, '', SHEET);
    c.atMostOne(['transmittance', 'reflectance'], [through, reflectance]);
  },
};

/**
 * What is wrong with a blind's figures; nothing when it can be used. Paths are its field names.
 * Ranges reach as far as the model does; ratios of slats are those of closing or fixed blinds.
 */
export function validateBlind(blind: Blind): Problem[] {
  const c = new Checker(blind);
  c.oneOf('position', ['external', 'between', 'internal'], 'Say where the blind hangs.');
  c.optional('ventFactor', 0, 1, '', 'Take 0 for a closed cavity, 1 for one open to the air.');
  c.optional(
    'windLimit',
    1,
    40,
    'm/s',
    "Read it on the blind's data sheet (8 to 13 m/s is usual).",
  );
  c.oneOf('kind', Object.keys(checks), 'Say what the blind is made of.');
  if (Object.hasOwn(checks, blind.kind)) checks[blind.kind](c);
  return c.problems;
}
