import { HOURS, STEPS_PER_HOUR } from '../time/index.ts';
import { MINUTES_PER_QUARTER } from './localYear.ts';
import { memo } from './memo.ts';
import { add, noSteps } from './stepSet.ts';
import type { StepSet } from './stepSet.ts';

/** When wind raises a blind and lets it down again. */
export interface WindRule {
  /** Raised above this wind speed, m/s; absent: never by wind. The maker's limit rules. */
  windLimit?: number;
  /** Minutes the wind must stay calm before the blind may come down; 30 where absent. */
  calmMinutes?: number;
}

/** Calm is under this part of the limit (common practice). */
export const CALM_SHARE = 0.8;
/** Minutes of calm before a blind may come down again (common practice). */
export const CALM_MINUTES = 30;

/**
 * Steps at which wind holds a blind up: from the hour it is above the limit until it has stayed
 * calm long enough. The year is a loop.
 * @param wind m/s, HOURS values
 */
export function windySteps(wind: Float64Array, rule: WindRule): StepSet {
  const { windLimit, calmMinutes = CALM_MINUTES } = rule;
  if (windLimit === undefined) return noSteps();
  return memo(wind, `wind ${windLimit} ${calmMinutes}`, () => {
    const calmSteps = Math.ceil(calmMinutes / MINUTES_PER_QUARTER);
    const steps = noSteps();
    // Begun in the year's last strong hour, where the state is known.
    const start = wind.findLastIndex((speed) => speed > windLimit);
    if (start < 0) return steps;
    let up = true;
    let left = calmSteps; // steps of calm still to come
    for (let n = 0; n < HOURS; n++) {
      const hour = (start + n) % HOURS;
      up ||= wind[hour] > windLimit;
      if (!up) continue;
      const calm = wind[hour] < CALM_SHARE * windLimit;
      if (!calm) left = calmSteps;
      const held = calm ? Math.min(left, STEPS_PER_HOUR) : STEPS_PER_HOUR;
      add(steps, hour * STEPS_PER_HOUR, held);
      if (calm) left -= held;
      // It comes down in a calm hour only, even where calm was long enough just before.
      up = held === STEPS_PER_HOUR;
    }
    return steps;
  });
}
