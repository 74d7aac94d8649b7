import { STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';
import type { SheetKind } from './quantities.ts';
import { dayAndClock } from './sheetGrid.ts';
import type { SheetGrid } from './sheetGrid.ts';
import type { ShownUnit } from './shownUnit.ts';
import {
  MONTHS,
  capital,
  dayWords,
  endClock,
  figure,
  hourWords,
  measured,
  percent,
} from './words.ts';

/** Whose figures a chart shows, as they stand in a sentence: `the whole house`, `West door`. */
export type Subject = string;

/** What a year sheet shows, in two sentences computed from its values (in shown units). */
export function describeSheet(
  kind: SheetKind,
  subject: Subject,
  unit: ShownUnit,
  values: Float64Array,
  calendar: YearCalendar,
  grid: SheetGrid,
): string {
  const least = extreme(values, (a, b) => a < b);
  const most = extreme(values, (a, b) => a > b);
  const when = (hour: number) =>
    `${dayWords(dayAndClock(grid, hour).day)}, ${hourWords(calendar, hour)}`;
  const value = (hour: number) => measured(values[hour], unit.digits, unit.symbol);
  const whose = kind.of === 'site' ? '' : ` of ${subject}`;
  const intro = `${capital(kind.name)}${whose}, hour by hour over a typical year.`;
  if (kind.measure === 'temperature') {
    const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
    return (
      `${intro} From ${value(least)} (${when(least)}) to ${value(most)} (${when(most)}), ` +
      `on average ${measured(mean, unit.digits, unit.symbol)}.`
    );
  }
  if (!(values[most] > 0)) return `${intro} It is nothing in every hour.`;
  if (kind.measure === 'excess') {
    const hours = values.reduce((count, v) => count + (v > 0 ? 1 : 0), 0);
    return (
      `${intro} The room is over the limit in ${figure(hours)} of 8,760 hours, by ` +
      `${value(most)} at most (${when(most)}).`
    );
  }
  const months = monthSums(values, calendar);
  const year = months.reduce((sum, m) => sum + m, 0);
  const top = months.indexOf(Math.max(...months));
  if (kind.measure === 'share') {
    const hours = values.reduce((count, v) => count + (v > 0 ? 1 : 0), 0);
    return (
      `${intro} Some glass is covered in ${figure(hours)} of 8,760 hours, on average ` +
      `${percent(year / hours / 100)} of it; most in ${MONTHS[top]}.`
    );
  }
  const sum = unit.sum;
  const total = sum ? `The year brings ${measured(year * sum.size, 0, sum.symbol)}, ` : '';
  return (
    `${intro} ${total}most of it in ${MONTHS[top]} (${percent(months[top] / year)}); ` +
    `the strongest hour is ${when(most)} with ${value(most)}.`
  );
}

function extreme(values: Float64Array, better: (a: number, b: number) => boolean): number {
  let best = 0;
  for (let i = 1; i < values.length; i++) if (better(values[i], values[best])) best = i;
  return best;
}

function monthSums(values: Float64Array, calendar: YearCalendar): number[] {
  const sums = new Array<number>(12).fill(0);
  values.forEach((value, hour) => (sums[calendar.month[hour] - 1] += value));
  return sums;
}

/** The series of one day, in shown units; one value an hour of `hours`. */
export interface DayFigures {
  subject: Subject;
  /** Date in words. */
  date: string;
  hours: readonly number[];
  without: Float64Array;
  with: Float64Array;
  outdoor: Float64Array;
  /** Share of the glass covered at each quarter hour of the year, 0 to 1. */
  covered?: Float32Array;
  room?: { without: Float64Array; with: Float64Array };
  /** Whose room temperatures they are. */
  roomName?: string;
  heat: ShownUnit;
  temperature: ShownUnit;
}

/** What a day strip shows, in two or three sentences. */
export function describeDay(day: DayFigures, calendar: YearCalendar): string {
  const { hours, heat, temperature } = day;
  const total = (series: Float64Array) => hours.reduce((sum, h) => sum + series[h], 0);
  const bare = total(day.without);
  const left = total(day.with);
  const sum = heat.sum ?? { size: 1, symbol: heat.symbol, digits: 0 };
  const digits = Math.max(sum.digits, 1);
  const peak = hours.reduce((best, h) => (day.without[h] > day.without[best] ? h : best));
  const sky = hours.map((h) => day.outdoor[h]);
  const gains =
    bare > 0
      ? `On ${day.date} the sun brings ${day.subject} ` +
        `${measured(bare * sum.size, digits, sum.symbol)} without shading and ${figure(left * sum.size, digits)} with it ` +
        `(${percent(1 - left / bare)} stopped); without, the strongest hour is ` +
        `${hourWords(calendar, peak)} with ${measured(day.without[peak], heat.digits, heat.symbol)}.`
      : `On ${day.date} the sun brings ${day.subject} nothing.`;
  return (
    `${gains} ${coverWords(day, calendar)}${roomWords(day)}Outdoors it is ` +
    `${figure(Math.min(...sky), temperature.digits)} to ` +
    `${measured(Math.max(...sky), temperature.digits, temperature.symbol)}.`
  );
}

/** How warm the room gets; empty where none is shown. */
function roomWords({ room, roomName, hours, temperature }: DayFigures): string {
  if (!room) return '';
  const top = (series: Float64Array) => Math.max(...hours.map((h) => series[h]));
  return (
    `${capital(roomName ?? 'the room')} gets up to ` +
    `${measured(top(room.without), temperature.digits, temperature.symbol)} without shading and ` +
    `${measured(top(room.with), temperature.digits, temperature.symbol)} with it. `
  );
}

/** When glass is covered; empty where there is no blind. */
function coverWords({ covered, hours }: DayFigures, calendar: YearCalendar): string {
  if (!covered) return '';
  const spans = coveredSpans(covered, hours);
  if (spans.length === 0) return 'No glass is covered. ';
  const clock = (step: number) => {
    const minutes = calendar.quarter[step] * 15;
    return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
  };
  const words = spans.map(([from, to]) => `${clock(from)} to ${endClock(calendar, to)}`);
  const list = words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : words[0];
  return words.length > 4
    ? `Glass is covered ${words.length} times between ${clock(spans[0][0])} and ${endClock(calendar, spans.at(-1)![1])}. `
    : `Glass is covered from ${list}. `;
}

/** Runs of quarter hours with covered glass, first and last step of each. */
export function coveredSpans(covered: Float32Array, hours: readonly number[]): [number, number][] {
  const spans: [number, number][] = [];
  let open = false;
  for (const hour of hours) {
    for (let step = hour * STEPS_PER_HOUR; step < (hour + 1) * STEPS_PER_HOUR; step++) {
      const down = covered[step] > 0;
      if (down && open) spans.at(-1)![1] = step;
      else if (down) spans.push([step, step]);
      open = down;
    }
  }
  return spans;
}
