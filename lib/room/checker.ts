import { problem } from '../problem/index.ts';
import type { Problem, Text } from '../problem/index.ts';
import { rangeText, say } from './say.ts';
import type { RangeUnit, SentenceKey } from './say.ts';
import type { ClockSpan } from './types.ts';

/** What stands in a field: as it was given, or in words. */
export type Shown = { given: unknown } | { told: Text };

/** Collects what is wrong and what looks odd below one field path. */
export class Checker {
  readonly problems: Problem[] = [];
  readonly warnings: Problem[] = [];
  private readonly path: string;

  constructor(path: string) {
    this.path = path;
  }

  fail(field: string, message: SentenceKey, value: Shown, fix: SentenceKey, allowed?: Text): void {
    this.problems.push(this.entry(field, message, value, fix, allowed));
  }

  warn(field: string, message: SentenceKey, value: Shown, fix: SentenceKey, allowed?: Text): void {
    this.warnings.push(this.entry(field, message, value, fix, allowed));
  }

  /** Fails unless the value is a number from `least` to `most`. */
  range(
    field: string,
    value: number,
    least: number,
    most: number,
    unit: RangeUnit | undefined,
    fix: SentenceKey,
  ): void {
    if (Number.isFinite(value) && value >= least && value <= most) return;
    this.fail(field, 'outOfRange', { given: value }, fix, rangeText(least, most, unit));
  }

  /** Fails unless the value is a number above 0. */
  positive(field: string, value: number, unit: RangeUnit, fix: SentenceKey): boolean {
    if (Number.isFinite(value) && value > 0) return true;
    const allowed = say('range.over', { min: 0, unit: say(`unit.${unit}`) });
    this.fail(field, 'notPositive', { given: value }, fix, allowed);
    return false;
  }

  /** Fails unless both ends lie in the day. */
  span(field: string, span: ClockSpan): void {
    this.range(`${field}.from`, span.from, 0, 1440, 'min', 'minutes');
    this.range(`${field}.to`, span.to, 0, 1440, 'min', 'minutes');
  }

  private entry(
    field: string,
    message: SentenceKey,
    value: Shown,
    fix: SentenceKey,
    allowed?: Text,
  ): Problem {
    const texts = { message: say(`room.${message}`), allowed, fix: say(`room.${fix}`) };
    const path = `${this.path}.${field}`;
    return 'given' in value
      ? problem(path, texts, value.given)
      : problem(path, { ...texts, value: value.told });
  }
}
