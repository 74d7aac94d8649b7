import { showValue, type Problem } from '../problem/index.ts';
import type { ClockSpan } from './types.ts';

/** Collects what is wrong and what looks odd below one field path. */
export class Checker {
  readonly problems: Problem[] = [];
  readonly warnings: Problem[] = [];
  private readonly path: string;

  constructor(path: string) {
    this.path = path;
  }

  fail(field: string, message: string, value: unknown, fix: string, allowed?: string): void {
    this.problems.push(this.entry(field, message, value, fix, allowed));
  }

  warn(field: string, message: string, value: unknown, fix: string, allowed?: string): void {
    this.warnings.push(this.entry(field, message, value, fix, allowed));
  }

  /** Fails unless the value is a number from `least` to `most`. */
  range(field: string, value: number, least: number, most: number, unit: string, fix: string) {
    if (Number.isFinite(value) && value >= least && value <= most) return true;
    const allowed = most === Infinity ? `${least} ${unit} or more` : `${least} to ${most} ${unit}`;
    this.fail(field, 'is out of range', value, fix, allowed.trim());
    return false;
  }

  /** Fails unless the value is a number above 0. */
  positive(field: string, value: number, unit: string, fix: string): boolean {
    if (Number.isFinite(value) && value > 0) return true;
    this.fail(field, 'must be more than 0', value, fix, `over 0 ${unit}`);
    return false;
  }

  /** Fails unless both ends lie in the day. */
  span(field: string, span: ClockSpan): void {
    const fix = 'Count minutes after midnight.';
    this.range(`${field}.from`, span.from, 0, 1440, 'min', fix);
    this.range(`${field}.to`, span.to, 0, 1440, 'min', fix);
  }

  private entry(
    field: string,
    message: string,
    value: unknown,
    fix: string,
    allowed?: string,
  ): Problem {
    return {
      path: `${this.path}.${field}`,
      message,
      value: showValue(value),
      fix,
      ...(allowed === undefined ? {} : { allowed }),
    };
  }
}
