import type { Problem } from '../problem/index.ts';
import { validateSchedule, type ScheduleCheck } from '../schedule/index.ts';
import type { SoundParts } from './parts.ts';
import { keysOf, pathText } from './walk.ts';

/** Rules that contradict themselves, and as warnings those that never decide. */
export function scheduleChecks(root: unknown, parts: SoundParts): ScheduleCheck {
  const check: ScheduleCheck = { problems: [], warnings: [] };
  for (const { at, item } of parts.schedules) {
    const inFile = (p: Problem): Problem => ({
      ...p,
      path: pathText(root, ['schedules', at, ...keysOf(p.path)]),
    });
    const { problems, warnings } = validateSchedule(item);
    // Ids used twice are told with those of all other lists.
    const own = problems.filter((p) => !/^rules\[\d+\]\.id$/.test(p.path));
    check.problems.push(...own.map(inFile));
    check.warnings.push(...warnings.map(inFile));
  }
  return check;
}
