import type { OpeningResult } from '../../lib/study/index.ts';
import { HOURS, STEPS } from '../../lib/time/index.ts';
import type { HourlyOf } from './api.ts';

/** Hourly sum of a quantity over the glass of several openings, W; HOURS values. */
export function houseHourly<Q extends HourlyOf>(
  openings: readonly { hourly: Pick<OpeningResult['hourly'], Q>; glassArea: number }[],
  quantity: Q,
): Float64Array {
  const sum = new Float64Array(HOURS);
  for (const { hourly, glassArea } of openings) {
    const series = hourly[quantity];
    for (let hour = 0; hour < HOURS; hour++) sum[hour] += series[hour] * glassArea;
  }
  return sum;
}

/**
 * Share of the glass of several openings that lowered blinds cover, 0 to 1; STEPS values. Glass
 * without a blind counts as never covered. Undefined where none has a blind.
 */
export function coveredShare(
  openings: readonly {
    blind?: Pick<NonNullable<OpeningResult['blind']>, 'actions' | 'state'>;
    glassArea: number;
  }[],
): Float32Array | undefined {
  if (openings.every((o) => !o.blind)) return undefined;
  const whole = openings.reduce((area, o) => area + o.glassArea, 0);
  const covered = new Float32Array(STEPS);
  for (const { blind, glassArea } of openings) {
    if (!blind) continue;
    const shares = Float32Array.from(blind.actions, (action) =>
      action.kind === 'raise' ? 0 : ((action.share ?? 1) * glassArea) / whole,
    );
    const { state } = blind;
    for (let step = 0; step < STEPS; step++) covered[step] += shares[state[step]];
  }
  return covered;
}
