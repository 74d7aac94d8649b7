import { IANAZone } from 'luxon';

const MS_PER_MINUTE = 60_000;

/** Whether `name` is a time zone of the IANA database known here. */
export function isTimeZone(name: string): boolean {
  return IANAZone.isValidZone(name);
}

/** UTC offset of a zone at an instant, minutes. */
export function offsetMinutes(zone: IANAZone, instant: number): number {
  return zone.offset(instant);
}

/**
 * Standard-time offset of a zone in a calendar year, hours east of UTC: the smaller of the offsets
 * in mid-January and mid-July, which holds on both hemispheres.
 */
export function standardOffset(zoneName: string, year: number): number {
  const zone = IANAZone.create(zoneName);
  const january = zone.offset(Date.UTC(year, 0, 15));
  const july = zone.offset(Date.UTC(year, 6, 15));
  return Math.min(january, july) / 60;
}

/** A change of the clock: from `instant` (ms since the epoch) on the offset is `minutes`. */
export interface ClockChange {
  instant: number;
  minutes: number;
}

/**
 * Every change of a zone's offset from `from` to `to` (ms since the epoch), the first entry being
 * the offset at `from`. Looks weekly, then halves the gap down to the minute.
 */
export function clockChanges(zoneName: string, from: number, to: number): ClockChange[] {
  const zone = IANAZone.create(zoneName);
  const changes: ClockChange[] = [{ instant: from, minutes: zone.offset(from) }];
  const week = 7 * 24 * 60 * MS_PER_MINUTE;
  for (let start = from; start < to; start += week) {
    const end = Math.min(start + week, to);
    const before = changes.at(-1)!.minutes;
    const after = zone.offset(end);
    if (after === before) continue;
    let low = start;
    let high = end;
    while (high - low > MS_PER_MINUTE) {
      const middle = low + Math.floor((high - low) / 2 / MS_PER_MINUTE) * MS_PER_MINUTE;
      if (zone.offset(middle) === before) low = middle;
      else high = middle;
    }
    changes.push({ instant: high, minutes: after });
  }
  return changes;
}
