import { decimalText, problem, verbatim } from '../problem/index.ts';
import type { Problem } from '../problem/index.ts';
import { rangeText, say } from './say.ts';
import type { RangeUnit, SentenceKey } from './say.ts';
import type { Blind } from './types.ts';

/** Checks one field at a time and gathers what is wrong. */
class Checker {
  readonly problems: Problem[] = [];
  readonly #blind: Record<string, unknown>;

  constructor(blind: Blind) {
    this.#blind = blind as unknown as Record<string, unknown>;
  }

  /** The number in a field, or NaN with a problem noted. */
  number(field: string, min: number, max: number, fix: SentenceKey, unit?: RangeUnit): number {
    const value = this.#blind[field];
    if (typeof value === 'number' && value >= min && value <= max) return value;
    const known = typeof value === 'number' && Number.isFinite(value);
    const message = say(known ? 'blind.outOfRange' : 'blind.notNumber');
    const texts = { message, allowed: rangeText(min, max, unit), fix: say(`blind.${fix}`) };
    this.problems.push(problem(field, texts, value));
    return NaN;
  }

  optional(field: string, min: number, max: number, fix: SentenceKey, unit?: RangeUnit): void {
    if (this.#blind[field] !== undefined) this.number(field, min, max, fix, unit);
  }

  oneOf(field: string, choices: readonly string[], fix: SentenceKey): void {
    const value = this.#blind[field];
    if (choices.includes(value as string)) return;
    const allowed = verbatim(choices.join(', '));
    const texts = { message: say('blind.unknown'), allowed, fix: say(`blind.${fix}`) };
    this.problems.push(problem(field, texts, value));
  }

  /** Parts of the same light must not add up to more than all of it. */
  atMostOne(fields: string[], values: number[]): void {
    const sum = values.reduce((total, value) => total + value, 0);
    if (!(sum > 1 + 1e-9)) return;
    const texts = {
      message: say('blind.tooMuch', { fields: fields.join(' + ') }),
      allowed: say('blind.together'),
      fix: say('blind.tooMuchFix'),
    };
    this.problems.push(problem(fields[0], texts, Number(sum.toFixed(4))));
  }
}

const checks = {
  slats(c: Checker): void {
    const width = c.number('slatWidth', 0.005, 0.5, 'width', 'm');
    const spacing = c.number('slatSpacing', 0.003, 0.5, 'spacing', 'm');
    if (width / spacing < 0.2 || width / spacing > 5) {
      c.problems.push(
        problem('slatSpacing', {
          message: say('blind.ratio'),
          value: say('blind.ratioValue', { ratio: decimalText(width / spacing, 2) }),
          allowed: say('blind.ratioAllowed'),
          fix: say('blind.ratioFix'),
        }),
      );
    }
    const upper = c.number('reflectanceUpper', 0, 1, 'sheet');
    const lower = c.number('reflectanceLower', 0, 1, 'sheet');
    const through = c.number('slatTransmittance', 0, 1, 'through');
    c.atMostOne(['reflectanceUpper', 'slatTransmittance'], [upper, through]);
    c.atMostOne(['reflectanceLower', 'slatTransmittance'], [lower, through]);
    const min = c.number('angleMin', -90, 90, 'angleMin', 'degrees');
    const max = c.number('angleMax', -90, 90, 'angleMax', 'degrees');
    if (min > max) {
      const texts = {
        message: say('blind.angles'),
        allowed: rangeText(min, 90, 'degrees'),
        fix: say('blind.anglesFix'),
      };
      c.problems.push(problem('angleMax', texts, max));
    }
  },
  fabric(c: Checker): void {
    const openness = c.number('openness', 0, 1, 'sheet');
    const diffuse = c.number('diffuseTransmittance', 0, 1, 'diffuse');
    const reflectance = c.number('reflectance', 0, 1, 'sheet');
    const fields = ['openness', 'diffuseTransmittance', 'reflectance'];
    c.atMostOne(fields, [openness, diffuse, reflectance]);
  },
  shutter(c: Checker): void {
    const through = c.number('transmittance', 0, 1, 'shutter');
    const reflectance = c.number('reflectance', 0, 1, 'sheet');
    c.atMostOne(['transmittance', 'reflectance'], [through, reflectance]);
  },
};

/**
 * What is wrong with a blind's figures; nothing when it can be used. Paths are its field names.
 * Ranges reach as far as the model does; ratios of slats are those of closing or fixed blinds.
 */
export function validateBlind(blind: Blind): Problem[] {
  const c = new Checker(blind);
  c.oneOf('position', ['external', 'between', 'internal'], 'position');
  c.optional('ventFactor', 0, 1, 'vent');
  c.optional('windLimit', 1, 40, 'wind', 'm/s');
  c.oneOf('kind', Object.keys(checks), 'kind');
  if (Object.hasOwn(checks, blind.kind)) checks[blind.kind](c);
  return c.problems;
}
