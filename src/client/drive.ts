import { daysInMonth } from '../../lib/time/index.ts';
import type { OpeningSummary } from '../worker/api.ts';

/**
 * A small drive with a photovoltaic strip and a battery, sized as they are usual (common practice;
 * the maker's data rule): what the strip gives in full sun, the part of it that reaches the motor,
 * what one move takes (25 W for 40 s), and what the receiver takes in a day.
 */
export const DRIVE = {
  /** W at 1,000 W/m2. */
  panel: 3,
  efficiency: 0.6,
  /** Wh. */
  perMove: 0.28,
  /** Wh a day. */
  standby: 0.3,
} as const;

/** Gathers at least this many times what it needs (our own margin for a run of dull days). */
const AMPLE = 1.5;

export interface DriveCheck {
  /** January 0 to December 11. */
  month: number;
  /** Wh a day in the darkest month. */
  gathered: number;
  needed: number;
  verdict: 'enough' | 'tight' | 'notEnough';
}

/**
 * Holds the moves of a day against the energy that a strip in the plane of the facade gathers on a
 * mean day of its darkest month; 1 kWh/m2 of sun is an hour at the strip's rating.
 * @param opening sums of the sun on the plane of its glass with nothing near it
 */
export function driveCheck(
  { sums, glassArea }: Pick<OpeningSummary, 'sums' | 'glassArea'>,
  movesPerDay: number,
): DriveCheck {
  const perDay = sums.incident.months.map((kWh, m) => kWh / glassArea / daysInMonth[m]!);
  const month = perDay.indexOf(Math.min(...perDay));
  const gathered = perDay[month]! * DRIVE.panel * DRIVE.efficiency;
  const needed = movesPerDay * DRIVE.perMove + DRIVE.standby;
  const verdict =
    gathered >= AMPLE * needed ? 'enough' : gathered >= needed ? 'tight' : 'notEnough';
  return { month, gathered, needed, verdict };
}
