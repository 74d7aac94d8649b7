import type { StudyResult } from '../../lib/study/index.ts';
import { DAYS, STEPS, STEPS_PER_HOUR, monthOfDay } from '../../lib/time/index.ts';

/** Quarter hours of a day. */
const QUARTERS = 96;

/**
 * Means over the days of each month at each quarter hour of the local clock: 12 x 96 values,
 * January first, each month from midnight on. Quarters that the clock never shows in a month are 0.
 */
export interface SunHours {
  /** Share of the month's days with the sun on the facade, 0 to 1. */
  sun: Float64Array;
  /** Solar gain of the bare glass, W/m2 of glass. */
  gain: Float64Array;
}

/**
 * When the sun is on a blind's facade and what it brings, as the weather of the run has it. As with
 * the blinds' sensors, the sun on any member counts where none of them leads.
 * @param members ids of the openings that are moved together
 * @param lead id of the opening whose sensors count, or `any`
 */
export function sunHours(
  result: Pick<StudyResult, 'openings' | 'sunny' | 'calendar'>,
  members: readonly string[],
  lead: string,
): SunHours | undefined {
  const openings = result.openings.filter((o) => members.includes(o.id));
  if (openings.length === 0) return undefined;
  const led = openings.filter((o) => o.id === lead);
  const walls = new Set((led.length > 0 ? led : openings).map((o) => o.wall));
  const sunny = [...walls].flatMap((wall) => result.sunny.get(wall) ?? []);
  const area = openings.reduce((sum, o) => sum + o.glassArea, 0);
  const parts = openings.map((o) => ({ series: o.hourly.without, share: o.glassArea / area }));

  const { day, quarter } = result.calendar;
  const sun = new Float64Array(12 * QUARTERS);
  const gain = new Float64Array(12 * QUARTERS);
  const count = new Uint16Array(12 * QUARTERS);
  for (let step = 0; step < STEPS; step++) {
    const cell = rows[day[step]] + quarter[step];
    const hour = Math.floor(step / STEPS_PER_HOUR);
    count[cell]++;
    if (sunny.some((flags) => flags[step] === 1)) sun[cell]++;
    for (const { series, share } of parts) gain[cell] += share * series[hour];
  }
  for (let cell = 0; cell < count.length; cell++) {
    if (count[cell] === 0) continue;
    sun[cell] /= count[cell];
    gain[cell] /= count[cell];
  }
  return { sun, gain };
}

/** First cell of the month of each day; DAYS values. */
const rows = Uint16Array.from({ length: DAYS }, (_, day) => (monthOfDay(day) - 1) * QUARTERS);
