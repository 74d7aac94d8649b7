import {
  DAYS,
  HOURS,
  STEPS_PER_HOUR,
  daysInMonth,
  monthOfDay,
  dayOfYear,
} from '../../lib/time/index.ts';
import type { YearCalendar } from '../../lib/time/index.ts';
import type { RoomHours } from './facts.ts';
import { path, rect, round, text } from './marks.ts';
import type { Mark, Palette, Picture } from './marks.ts';
import type { Teller } from './teller.ts';

/** Too-hot hours of each day without and with shading; DAYS values each. */
export interface HotDays {
  without: Uint8Array;
  with: Uint8Array;
}

export function hotDays(room: RoomHours, calendar: YearCalendar, limit: number): HotDays {
  const days = { without: new Uint8Array(DAYS), with: new Uint8Array(DAYS) };
  for (let hour = 0; hour < HOURS; hour++) {
    const day = calendar.day[hour * STEPS_PER_HOUR];
    if (room.without[hour] > limit) days.without[day]++;
    if (room.with[hour] > limit) days.with[day]++;
  }
  return days;
}

const LEFT = 44;
const CELL = { width: 15.4, height: 11 };
const TOP = 32;
const WIDTH = 640;

/** Days of the year as twelve rows: too hot even with shading, only without it, or never. */
export function yearPicture(
  days: HotDays,
  room: string,
  limit: number,
  teller: Teller,
  colours: Palette,
): Picture {
  const { t } = teller;
  const countOf = (flags: Uint8Array) => flags.reduce((sum, hours) => sum + (hours > 0 ? 1 : 0), 0);
  const before = countOf(days.without);
  const after = countOf(days.with);
  const eased = days.without.reduce(
    (n, hours, d) => n + (hours > 0 && days.with[d] === 0 ? 1 : 0),
    0,
  );
  const months = teller.words.months('short');
  const marks: Mark[] = legend(
    [t('year.still', { count: after }), t('year.eased', { count: eased })],
    colours,
  );
  const right = LEFT + 31 * CELL.width + 10;
  marks.push(
    text(right, TOP - 6, t('year.before'), { size: 9.5, fill: colours.soft }),
    text(WIDTH, TOP - 6, t('year.after'), { size: 9.5, fill: colours.soft, anchor: 'end' }),
  );
  for (const day of [1, 5, 10, 15, 20, 25, 30]) {
    const x = LEFT + (day - 0.5) * CELL.width;
    marks.push(text(x, TOP - 6, String(day), { size: 9.5, fill: colours.soft, anchor: 'middle' }));
  }
  daysInMonth.forEach((length, m) => {
    const y = TOP + m * CELL.height;
    const base = y + CELL.height - 3;
    marks.push(text(0, base, months[m]!, { size: 10, fill: colours.ink }));
    let n = 0;
    let left = 0;
    for (let d = 0; d < length; d++) {
      const day = dayOfYear(m + 1, d + 1);
      marks.push(...cell(LEFT + d * CELL.width, y, days.without[day]!, days.with[day]!, colours));
      if (days.without[day]! > 0) n++;
      if (days.with[day]! > 0) left++;
    }
    if (n + left > 0) {
      marks.push(
        text(right, base, t('year.days', { count: n }), { size: 10, fill: colours.ink }),
        text(WIDTH, base, teller.number(left), {
          size: 10,
          fill: colours.ink,
          anchor: 'end',
          weight: 700,
        }),
      );
    }
  });
  return {
    title: t('year.title', { room }),
    about: t('year.about', {
      before: teller.number(before),
      after: teller.number(after),
      limit: teller.quantity('temperature', limit, 0),
    }),
    width: WIDTH,
    height: round(TOP + 12 * CELL.height + 2),
    marks,
    table: dayTable(days, teller),
  };
}

function cell(x: number, y: number, without: number, shaded: number, colours: Palette): Mark[] {
  const [w, h] = [CELL.width - 2, CELL.height - 2];
  if (shaded > 0) return [rect(x, y, w, h, { fill: colours.hot })];
  if (without === 0) return [rect(x, y, w, h, { fill: colours.never })];
  return [
    rect(x + 0.4, y + 0.4, w - 0.8, h - 0.8, {
      fill: colours.eased,
      stroke: colours.easedInk,
      'stroke-width': 0.8,
    }),
    path(`M${round(x + 1)},${round(y + h - 1)}L${round(x + w - 1)},${round(y + 1)}`, {
      stroke: colours.easedInk,
      'stroke-width': 1,
    }),
  ];
}

function legend([still, eased]: [string, string], colours: Palette): Mark[] {
  return [
    ...cell(0, 3, 1, 1, colours),
    text(20, 12, still, { size: 11, fill: colours.ink }),
    ...cell(WIDTH / 2, 3, 1, 0, colours),
    text(WIDTH / 2 + 20, 12, eased, { size: 11, fill: colours.ink }),
  ];
}

function dayTable(days: HotDays, { t, words }: Teller) {
  const names = words.months('long');
  return {
    columns: [
      { head: t('year.month') },
      { head: t('year.day') },
      { head: t('year.hoursWithout') },
      { head: t('year.hoursWith') },
    ],
    rows: Array.from({ length: DAYS }, (_, day) => {
      const month = monthOfDay(day);
      return [
        names[month - 1]!,
        day - dayOfYear(month, 1) + 1,
        days.without[day]!,
        days.with[day]!,
      ];
    }),
  };
}
