import { InputError, figureText, inTurn, problem } from '../../problem/index.ts';
import type { Problem, Text } from '../../problem/index.ts';
import type { TypicalYear } from '../types.ts';
import { say } from '../say.ts';
import { checkYear, failed, passed, told } from './checks.ts';
import { finishYear } from './finish.ts';
import type { SplitGlobal } from './finish.ts';
import { fillGaps } from './gaps.ts';
import { orderRows } from './order.ts';
import { checkRanges } from './ranges.ts';
import type { Check, CheckId, RawYear } from './types.ts';

/** A year with the outcome of its checks; without the year where one of them failed. */
export interface Assembly {
  year?: TypicalYear;
  checks: Check[];
}

/** Makes a typical year of a file's rows: order, ranges, gaps, missing columns, the sun. */
export function assemble(raw: RawYear, split?: SplitGlobal): Assembly {
  const checks: Check[] = [];
  const step = <T>(id: CheckId, sentence: (result: T) => Text, work: () => T): T => {
    try {
      const result = work();
      checks.push(passed(id, sentence(result)));
      return result;
    } catch (error) {
      checks.push(asCheck(id, error));
      throw error;
    }
  };
  try {
    const count = raw.lines.length;
    const file = step(
      'rows',
      () => say('check.rows', { figure: figureText(count) }),
      () => orderRows(raw),
    );
    const raised = step(
      'ranges',
      (notes) => notes[0] ?? say('check.ranges'),
      () => checkRanges(file, raw.names),
    );
    const filled = step(
      'gaps',
      (notes) => (notes.length ? inTurn(...notes) : say('check.gaps')),
      () => fillGaps(file, raw.names),
    );
    const { year, measured } = step(
      'irradiance',
      (done) =>
        done.measured
          ? say('check.irradiance')
          : inTurn(...done.year.messages.filter(({ key }) => key.startsWith('made.'))),
      () => finishYear(raw, file, split),
    );
    const outcome = checkYear(year, measured);
    checks.push(...outcome);
    if (outcome.some((check) => check.level === 'error')) return { checks };
    const doubts = outcome.filter((check) => check.level === 'warning').map((c) => c.sentence);
    year.messages = [...raw.notes, ...raised, ...filled, ...year.messages, ...doubts];
    return { year, checks };
  } catch (error) {
    if (error instanceof InputError) return { checks };
    throw error;
  }
}

/** A failed check of an InputError; any other error is passed on. */
export function asCheck(id: CheckId, error: unknown): Check {
  if (!(error instanceof InputError)) throw error;
  return failed(id, summary(error.problems));
}

function summary(problems: readonly Problem[]): Problem {
  if (problems.length === 1) return problems[0];
  const message = problems.map(told).reduce((before, next) => say('told.chain', { before, next }));
  return problem(problems[0].texts?.where ?? problems[0].path, { message });
}
