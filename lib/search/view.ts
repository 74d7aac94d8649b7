import { STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { StudyResult } from '../study/index.ts';
import type { TargetInHand } from './target.ts';

/**
 * Share of the target's glass behind which somebody is in at the steps with the sun up; STEPS values.
 *
 * @param sunUp 1 at the steps with the sun up; STEPS values
 * @param onlyDown count glass only while its blind is down
 */
export function occupiedDaylight(
  { openings, rooms }: StudyResult,
  inHand: TargetInHand,
  sunUp: Uint8Array,
  onlyDown = false,
): Float64Array {
  const own = openings.filter((o) => inHand.openings.has(o.id));
  const area = own.reduce((sum, o) => sum + o.glassArea, 0);
  const seen = new Float64Array(STEPS);
  for (const { room, glassArea, blind } of own) {
    const { occupied } = rooms.find((r) => r.id === room)!.runs.with.model;
    const state = onlyDown ? blind?.state : undefined;
    for (let step = 0; step < STEPS; step++) {
      if (state?.[step] === 0 || !occupied[Math.floor(step / STEPS_PER_HOUR)]) continue;
      seen[step] += (sunUp[step] * glassArea) / area;
    }
  }
  return seen;
}
