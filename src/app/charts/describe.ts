import { STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import type { YearCalendar } from '../../../lib/time/index.ts';
import type { Wording } from '../../words/index.ts';
import { quantityName } from './quantities.ts';
import type { SheetKind } from './quantities.ts';
import { dayAndClock } from './sheetGrid.ts';
import type { SheetGrid } from './sheetGrid.ts';
import type { ShownUnit } from './shownUnit.ts';
import { capital, dayText, endClock, hourText } from './words.ts';

/** Whose figures a chart shows, as they stand in a sentence: `the whole house`, `West door`. */
export type Subject = string;

/** What a year sheet shows, in two sentences computed from its values (in shown units). */
export function describeSheet(
  words: Wording,
  kind: SheetKind,
  subject: Subject,
  unit: ShownUnit,
  values: Float64Array,
  calendar: YearCalendar,
  grid: SheetGrid,
): string {
  const t = words.of('year');
  const name = capital(quantityName(words, kind.key));
  const intro =
    kind.of === 'site' ? t('sheet.introSite', { name }) : t('sheet.intro', { name, subject });
  return `${intro} ${figuresText(words, kind, unit, values, calendar, grid)}`;
}

/** The second sentence: the figures. */
function figuresText(
  words: Wording,
  kind: SheetKind,
  unit: ShownUnit,
  values: Float64Array,
  calendar: YearCalendar,
  grid: SheetGrid,
): string {
  const t = words.of('year');
  const least = extreme(values, (a, b) => a < b);
  const most = extreme(values, (a, b) => a > b);
  const whenText = (hour: number) =>
    t('sheet.when', {
      day: dayText(words, dayAndClock(grid, hour).day),
      hour: hourText(words, calendar, hour),
    });
  const value = (shown: number) => words.measured(shown, unit.digits, unit.symbol);
  const top = { most: value(values[most]), when: whenText(most) };
  const total = values.reduce((sum, v) => sum + v, 0);
  if (kind.measure === 'temperature') {
    return t('sheet.temperature', {
      least: value(values[least]),
      leastWhen: whenText(least),
      most: top.most,
      mostWhen: top.when,
      mean: value(total / values.length),
    });
  }
  if (!(values[most] > 0)) return t('sheet.nothing');
  const count = values.reduce((hours, v) => hours + (v > 0 ? 1 : 0), 0);
  const hours = words.figure(count);
  if (kind.measure === 'excess') return t('sheet.over', { hours, ...top });
  const months = monthSums(values, calendar);
  const fullest = months.indexOf(Math.max(...months));
  const month = words.months('long')[fullest];
  if (kind.measure === 'share') {
    return t('sheet.covered', { hours, share: words.share(total / count / 100), month });
  }
  const { size, symbol } = sumUnit(unit);
  return t('sheet.gain', {
    sum: words.measured(total * size, 0, symbol),
    month,
    share: words.share(months[fullest] / total),
    ...top,
  });
}

/** The unit of sums; that of the values where sums mean nothing. */
function sumUnit(unit: ShownUnit): NonNullable<ShownUnit['sum']> {
  return unit.sum ?? { size: 1, symbol: unit.symbol, digits: 0 };
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
  roomName: string;
  heat: ShownUnit;
  temperature: ShownUnit;
}

/** What a day strip shows, in two to four sentences. */
export function describeDay(words: Wording, day: DayFigures, calendar: YearCalendar): string {
  const sky = day.hours.map((h) => day.outdoor[h]);
  const { digits, symbol } = day.temperature;
  return [
    gainText(words, day, calendar),
    ...(day.covered ? [coverText(words, day.covered, day.hours, calendar)] : []),
    ...(day.room ? [roomText(words, day, day.room)] : []),
    words.of('year')('day.outdoors', {
      least: words.figure(Math.min(...sky), digits),
      most: words.measured(Math.max(...sky), digits, symbol),
    }),
  ].join(' ');
}

/** What the sun brings, and when it brings most. */
function gainText(words: Wording, day: DayFigures, calendar: YearCalendar): string {
  const t = words.of('year');
  const { date, subject, hours, heat } = day;
  const total = (series: Float64Array) => hours.reduce((sum, h) => sum + series[h], 0);
  const bare = total(day.without);
  const left = total(day.with);
  if (!(bare > 0)) return t('day.noGain', { date, subject });
  const { size, symbol, digits } = sumUnit(heat);
  const fine = Math.max(digits, 1);
  const peak = hours.reduce((best, h) => (day.without[h] > day.without[best] ? h : best));
  return t('day.gain', {
    date,
    subject,
    bare: words.measured(bare * size, fine, symbol),
    left: words.figure(left * size, fine),
    stopped: words.share(1 - left / bare),
    hour: hourText(words, calendar, peak),
    peak: words.measured(day.without[peak], heat.digits, heat.symbol),
  });
}

/** How warm the room gets. */
function roomText(
  words: Wording,
  { roomName, hours, temperature }: DayFigures,
  room: NonNullable<DayFigures['room']>,
): string {
  const top = (series: Float64Array) =>
    words.measured(
      Math.max(...hours.map((h) => series[h])),
      temperature.digits,
      temperature.symbol,
    );
  return words.of('year')('day.room', {
    room: capital(roomName),
    without: top(room.without),
    with: top(room.with),
  });
}

/** When glass is covered. */
function coverText(
  words: Wording,
  covered: Float32Array,
  hours: readonly number[],
  calendar: YearCalendar,
): string {
  const t = words.of('year');
  const spans = coveredSpans(covered, hours).map(([from, to]) => {
    const minutes = calendar.quarter[from] * 15;
    const start = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
    return { from: start, to: endClock(calendar, to) };
  });
  if (spans.length === 0) return t('day.uncovered');
  if (spans.length > 4) {
    return t('day.coveredOften', {
      times: spans.length,
      from: spans[0].from,
      to: spans.at(-1)!.to,
    });
  }
  return t('day.covered', { spans: words.list(spans.map((span) => t('day.coveredSpan', span))) });
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
