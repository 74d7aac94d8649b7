import { HOURS, STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import { MINUTES_PER_QUARTER } from './calendarMask.ts';
import { createMemo } from './memo.ts';

/** When wind raises a blind and lets it down again. */
export interface WindRule {
  /** Raised above this wind speed, m/s; absent: never by wind. The blind maker's limit rules. */
  windLimit?: number;
  /** Minutes the wind must stay calm before the blind may come down; 30 where absent (common practice). */
  calmMinutes?: number;
}

/** Calm is less than this part of the limit (common practice). */
export const CALM_SHARE = 0.8;
/** Minutes of calm before a blind may come down again (common practice). */
export const CALM_MINUTES = 30;

/** No wind at any step. */
const still = new Uint8Array(STEPS);
/** 35 kB each. */
const keepWindy = createMemo<Float64Array, Uint8Array>(16);

/**
 * 1 at the steps at which wind holds a blind up: from the hour it is above the limit until it has
 * been calm long enough; STEPS values, shared: read only. The year is a loop.
 * @param wind m/s, HOURS values; kept results go by it, so it must not be changed afterwards
 */
export function windySteps(wind: Float64Array, rule: WindRule): Uint8Array {
  const { windLimit, calmMinutes = CALM_MINUTES } = rule;
  if (windLimit === undefined) return still;
  return keepWindy(wind, `${windLimit} ${calmMinutes}`, () =>
    findWindySteps(wind, windLimit, calmMinutes),
  );
}

function findWindySteps(wind: Float64Array, limit: number, calmMinutes: number): Uint8Array {
  let last = HOURS - 1;
  while (last >= 0 && !(wind[last] > limit)) last--;
  if (last < 0) return still;

  const calmSteps = Math.ceil(calmMinutes / MINUTES_PER_QUARTER);
  const windy = new Uint8Array(STEPS);
  let up = false;
  let left = 0; // steps of calm still to come
  // Begun at the year's last strong hour, where the state is known.
  for (let n = 0; n < HOURS; n++) {
    const hour = last + n < HOURS ? last + n : last + n - HOURS;
    const strong = wind[hour] > limit;
    const calm = wind[hour] < CALM_SHARE * limit;
    up = up || strong;
    if (!up) continue;
    if (!calm) left = calmSteps;
    const held = calm ? Math.min(left, STEPS_PER_HOUR) : STEPS_PER_HOUR;
    windy.fill(1, hour * STEPS_PER_HOUR, hour * STEPS_PER_HOUR + held);
    if (calm) left -= held;
    up = left > 0 || !calm;
  }
  return windy;
}
