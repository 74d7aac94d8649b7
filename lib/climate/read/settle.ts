import type { Text } from '../../problem/index.ts';
import { say } from '../say.ts';
import type { TableGuess } from './guess.ts';
import type { TimeShift } from './timeShift.ts';
import type { TableLayout } from './types.ts';

/** Minutes the sun may be off for a reading of the clock to be taken as the right one. */
const CLOSE = 10;
const SURE = 0.5;

const toMiddle = { end: -0.5, middle: 0, start: 0.5 } as const;

/**
 * Chooses what a table leaves open about its stamps, their moment of the hour and their zone, so
 * that the sun comes out right; undefined where it is right already or no choice makes it so.
 * @param shift found with the guess's own layout
 */
export function settleClock(
  guess: TableGuess,
  standardOffset: number,
  shift: TimeShift,
): { layout: TableLayout; note: Text } | undefined {
  const { layout, open } = guess;
  if (shift.confidence < SURE || Math.abs(shift.minutes) <= CLOSE) return undefined;
  const offset = (zone: TableLayout['utcOffset']) => (zone === 'site' ? standardOffset : zone);
  const utc = (stamp: TableLayout['stamp'], zone: TableLayout['utcOffset']) =>
    toMiddle[stamp] - offset(zone);
  const stamps: TableLayout['stamp'][] = open.stamp ? ['end', 'start', 'middle'] : [layout.stamp];
  const zones: TableLayout['utcOffset'][] = open.zone ? ['site', 0] : [layout.utcOffset];
  for (const utcOffset of zones) {
    for (const stamp of stamps) {
      const moved = (utc(stamp, utcOffset) - utc(layout.stamp, layout.utcOffset)) * 60;
      const left = shift.minutes + moved;
      if (Math.abs(left - 1440 * Math.round(left / 1440)) > CLOSE) continue;
      const moment = say(`moment.${stamp}`);
      return {
        layout: { ...layout, stamp, utcOffset },
        note: say(utcOffset === 0 ? 'note.settledUtc' : 'note.settledSite', { moment }),
      };
    }
  }
  return undefined;
}
