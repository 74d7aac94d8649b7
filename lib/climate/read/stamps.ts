import type { DateOrder } from './types.ts';

/** First day of each month in a year of 366 days. */
const firstDay = [0, 31, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335, 366];

/** Hours since 1 January 00:00 at which 29 February starts and ends, in a year of 366 days. */
export const LEAP_DAY_START = 59 * 24;
export const LEAP_DAY_END = 60 * 24;

/**
 * Hours since 1 January 00:00 of a year of 366 days; the year itself does not count, since the
 * months of a typical year come from different years. Undefined for a date or time that is not one.
 * @param hour 0 to 24, fractions allowed
 */
export function stampHours(month: number, day: number, hour: number): number | undefined {
  if (!(month >= 1 && month <= 12 && day >= 1 && hour >= 0 && hour <= 24)) return undefined;
  if (day > firstDay[month] - firstDay[month - 1]) return undefined;
  return (firstDay[month - 1] + day - 1) * 24 + hour;
}

/**
 * Reads a date and time such as `2005-01-31 13:00`, `20050131:1300`, `1/31/2005 1:00 PM` or
 * `31.01. 13:00`. A zone at the end (`Z`, `+01:00`) is passed over.
 * @returns as stampHours, or undefined where the text cannot be read that way
 */
export function readStamp(text: string, order: DateOrder): number | undefined {
  const groups = digitGroups(text);
  const date = takeDate(groups, order);
  if (!date) return undefined;
  const hour = clockHours(date.rest, text);
  return hour === undefined ? undefined : stampHours(date.month, date.day, hour);
}

/** Reads a time of the day: `13:00`, `24:00:00`, `1300`, `13`, `1:00 PM`; hours, 0 to 24. */
export function readClock(text: string): number | undefined {
  return clockHours(digitGroups(text), text);
}

/** A reader that keeps its answers: a file has few different dates and times of the day. */
export function remembered<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const result = read(text);
    known.set(text, result);
    return result;
  };
}

/** Runs of digits in a text. */
export function digitGroups(text: string): string[] {
  return text.match(/\d+/g) ?? [];
}

interface DatePart {
  month: number;
  day: number;
  /** The groups that follow the date. */
  rest: string[];
}

/** Takes the date off the front: three groups, or one of 8 digits that the time may be joined to. */
function takeDate(groups: string[], order: DateOrder): DatePart | undefined {
  const first = groups[0] ?? '';
  if (first.length >= 8) {
    const rest = first.length > 8 ? [first.slice(8)] : groups.slice(1);
    return { month: Number(first.slice(4, 6)), day: Number(first.slice(6, 8)), rest };
  }
  if (groups.length < order.length) return undefined;
  return {
    month: Number(groups[order.indexOf('m')]),
    day: Number(groups[order.indexOf('d')]),
    rest: groups.slice(order.length),
  };
}

/** Hours, minutes and seconds in up to three groups, or joined in one of four digits or more. */
function clockHours(groups: string[], text: string): number | undefined {
  const first = groups[0];
  if (first === undefined) return undefined;
  const joined = first.length > 2;
  const padded = first.padStart(4, '0');
  let hour = Number(joined ? padded.slice(0, 2) : first);
  const minute = Number(joined ? padded.slice(2, 4) : (groups[1] ?? 0));
  const second = Number(joined ? padded.slice(4, 6) : (groups[2] ?? 0));
  if (minute > 59 || second > 59) return undefined;
  const half = /\d\s*([ap])\.?m/i.exec(text);
  if (half) {
    if (hour < 1 || hour > 12) return undefined;
    hour = (hour % 12) + (half[1].toLowerCase() === 'p' ? 12 : 0);
  }
  const hours = hour + minute / 60 + second / 3600;
  return hours <= 24 ? hours : undefined;
}
