import { summerMonths } from '../../lib/study/index.ts';
import { DAYS, HOURS, STEPS_PER_HOUR, monthOfDay, dayOfYear } from '../../lib/time/index.ts';
import type { YearCalendar } from '../../lib/time/index.ts';
import { fromSI } from '../../lib/units/index.ts';
import { spread } from '../app/charts/ring/spread.ts';
import type { PageHours, RoomHours } from './facts.ts';
import { path, polyline, rect, round, text } from './marks.ts';
import type { Mark, Palette, Picture } from './marks.ts';
import type { Teller } from './teller.ts';

/** One local day by the hours of the clock. */
export interface DayHours {
  /** Hours of the clock at the middle of each hour. */
  clock: number[];
  outdoor: number[];
  without: number[];
  with: number[];
  /** Sun on the glass, kW. */
  sun: number[];
  /** Share of the glass under a lowered blind; absent where there is none. */
  covered?: number[];
}

export function dayHours(
  room: RoomHours,
  { calendar, outdoor }: Pick<PageHours, 'calendar' | 'outdoor'>,
  day: number,
): DayHours {
  const hours = hoursOfDay(calendar, day);
  const pick = (series: Float64Array) => hours.map((hour) => series[hour]!);
  return {
    clock: hours.map((hour) => calendar.quarter[hour * STEPS_PER_HOUR]! / 4 + 0.5),
    outdoor: pick(outdoor),
    without: pick(room.without),
    with: pick(room.with),
    sun: pick(room.sun).map((watts) => watts / 1000),
    ...(room.covered ? { covered: hours.map((hour) => hourMean(room.covered!, hour)) } : {}),
  };
}

/** Day of the year, 0 to 364: the hottest of the summer in a room without shading, by its mean. */
export function hottestSummerDay(
  { without }: RoomHours,
  calendar: YearCalendar,
  latitude: number,
): number {
  const months = summerMonths(latitude);
  const sums = new Float64Array(DAYS);
  const hours = new Float64Array(DAYS);
  for (let hour = 0; hour < HOURS; hour++) {
    if (!months.includes(calendar.month[hour]!)) continue;
    const day = calendar.day[hour * STEPS_PER_HOUR]!;
    sums[day] += without[hour]!;
    hours[day]++;
  }
  const means = [...sums].map((sum, day) => (hours[day]! > 0 ? sum / hours[day]! : -Infinity));
  return means.indexOf(Math.max(...means));
}

function hoursOfDay({ day: dayOf }: YearCalendar, day: number): number[] {
  const hours: number[] = [];
  for (let hour = 0; hour < HOURS; hour++) {
    if (dayOf[hour * STEPS_PER_HOUR] === day) hours.push(hour);
  }
  return hours;
}

function hourMean(steps: Float32Array, hour: number): number {
  const start = hour * STEPS_PER_HOUR;
  return steps.subarray(start, start + STEPS_PER_HOUR).reduce((a, b) => a + b, 0) / STEPS_PER_HOUR;
}

const WIDTH = 640;
const LEFT = 42;
const RIGHT = 158;
const PLOT = WIDTH - LEFT - RIGHT;
const TEMPERATURE = { top: 8, height: 104 };
const SUN = { top: 124, height: 34 };
const BLIND = { top: 163, height: 12 };

/** One hot day: temperatures outdoors and in the room, sun on the glass, the blinds. */
export function dayPicture(
  hours: DayHours,
  given: { day: number; room: string; limit: number },
  teller: Teller,
  colours: Palette,
): Picture {
  const { t } = teller;
  const date = dayName(given.day, teller);
  const blind = hours.covered !== undefined;
  const height = blind ? BLIND.top + BLIND.height + 18 : SUN.top + SUN.height + 18;
  const warmest = (values: number[]) => teller.quantity('temperature', Math.max(...values), 1);
  return {
    title: t('day.title', { date }),
    about: t(blind ? 'day.about' : 'day.aboutBare', {
      room: given.room,
      without: warmest(hours.without),
      with: warmest(hours.with),
      outdoor: warmest(hours.outdoor),
    }),
    width: WIDTH,
    height,
    marks: [
      ...clockMarks(blind ? BLIND.top + BLIND.height : SUN.top + SUN.height, colours),
      ...temperatureMarks(hours, given.limit, teller, colours),
      ...sunMarks(hours, teller, colours),
      ...(hours.covered ? blindMarks(hours.clock, hours.covered, teller, colours) : []),
    ],
    table: dayTable(hours, teller),
  };
}

export function dayName(day: number, { words }: Teller): string {
  const month = monthOfDay(day);
  const two = (n: number) => String(n).padStart(2, '0');
  return words.day(`${two(month)}-${two(day - dayOfYear(month, 1) + 1)}`);
}

const xOf = (clock: number) => LEFT + (clock / 24) * PLOT;

function clockMarks(bottom: number, colours: Palette): Mark[] {
  return [0, 3, 6, 9, 12, 15, 18, 21, 24].flatMap((clock) => [
    path(`M${round(xOf(clock))},${TEMPERATURE.top}V${bottom}`, {
      stroke: colours.line,
      'stroke-width': 0.5,
    }),
    text(xOf(clock), bottom + 13, `${clock}:00`, {
      size: 9.5,
      fill: colours.soft,
      anchor: 'middle',
    }),
  ]);
}

interface Line {
  key: 'outdoor' | 'without' | 'with';
  values: number[];
  stroke: string;
  width: number;
  dash: string;
}

function temperatureMarks(
  hours: DayHours,
  limit: number,
  teller: Teller,
  colours: Palette,
): Mark[] {
  const { t, system } = teller;
  const show = (values: number[]) => values.map((v) => fromSI('temperature', system, v));
  const lines: Line[] = [
    { key: 'outdoor', values: show(hours.outdoor), stroke: colours.soft, width: 1.4, dash: '2 3' },
    { key: 'without', values: show(hours.without), stroke: colours.without, width: 2.6, dash: '' },
  ];
  if (hours.covered) {
    const values = show(hours.with);
    lines.push({ key: 'with', values, stroke: colours.with, width: 2.2, dash: '8 3' });
  }
  const limitShown = fromSI('temperature', system, limit);
  const all = [...lines.flatMap((l) => l.values), limitShown];
  const step = system === 'imperial' ? 10 : 5;
  const low = Math.floor(Math.min(...all) / step) * step;
  const high = Math.ceil(Math.max(...all) / step) * step;
  const { top, height } = TEMPERATURE;
  const y = (value: number) => top + height * (1 - (value - low) / (high - low));
  const ticks = Array.from(
    { length: Math.round((high - low) / step) + 1 },
    (_, i) => low + i * step,
  );
  const ends = spread(
    [...lines.map((l) => y(l.values.at(-1)!)), y(limitShown)],
    14,
    top + 2,
    top + height,
  );
  const names = [
    ...lines.map((l) => t(`day.${l.key}`)),
    t('day.limit', { limit: teller.quantity('temperature', limit, 0) }),
  ];
  return [
    ...ticks.flatMap((tick) => [
      path(`M${LEFT},${round(y(tick))}H${LEFT + PLOT}`, {
        stroke: colours.line,
        'stroke-width': 0.5,
      }),
      text(LEFT - 5, y(tick) + 3.5, `${tick}°`, { size: 9.5, fill: colours.soft, anchor: 'end' }),
    ]),
    path(`M${LEFT},${round(y(limitShown))}H${LEFT + PLOT}`, {
      stroke: colours.ink,
      'stroke-width': 1,
      'stroke-dasharray': '1 2',
    }),
    ...lines.map((l) =>
      path(polyline(l.values.map((v, i) => [xOf(hours.clock[i]!), y(v)])), {
        stroke: l.stroke,
        'stroke-width': l.width,
        'stroke-linejoin': 'round',
        ...(l.dash ? { 'stroke-dasharray': l.dash } : {}),
      }),
    ),
    ...names.map((name, i) =>
      text(LEFT + PLOT + 8, ends[i]! + 3.5, name, {
        size: 10.5,
        fill: lines[i]?.stroke ?? colours.ink,
        weight: i === 1 || i === 2 ? 700 : 400,
      }),
    ),
    ...lines.map((l, i) =>
      path(
        `M${round(xOf(hours.clock.at(-1)!))},${round(y(l.values.at(-1)!))}L${LEFT + PLOT + 6},${round(ends[i]!)}`,
        {
          stroke: l.stroke,
          'stroke-width': 0.8,
        },
      ),
    ),
  ];
}

/** Sun on the glass as a filled curve; its greatest figure is written beside it. */
function sunMarks({ clock, sun }: DayHours, teller: Teller, colours: Palette): Mark[] {
  const most = Math.max(...sun);
  const { top, height } = SUN;
  const y = (v: number) => top + height * (1 - (most > 0 ? v / most : 0));
  const points = sun.map((v, i): [number, number] => [xOf(clock[i]!), y(v)]);
  const base = top + height;
  const closed = `${polyline([[xOf(clock[0]!), base], ...points, [xOf(clock.at(-1)!), base]])}Z`;
  return [
    path(closed, { fill: colours.sun, stroke: colours.easedInk, 'stroke-width': 1 }),
    path(`M${LEFT},${base}H${LEFT + PLOT}`, { stroke: colours.ink, 'stroke-width': 0.8 }),
    text(LEFT + PLOT + 8, top + height / 2, teller.t('day.sun'), {
      size: 10.5,
      fill: colours.ink,
      weight: 700,
    }),
    text(
      LEFT + PLOT + 8,
      top + height / 2 + 13,
      teller.t('day.most', { power: power(most, teller) }),
      { size: 9.5, fill: colours.soft },
    ),
  ];
}

/** Power of the sun in thousands of the shown unit: `4.2 kW`. */
function power(kilowatts: number, teller: Teller): string {
  const shown = fromSI('power', teller.system, kilowatts * 1000) / 1000;
  return `${teller.number(shown, 1)}\u00a0${powerUnit(teller)}`;
}

function powerUnit({ system }: Teller): string {
  return system === 'imperial' ? 'kBtu/h' : 'kW';
}

/** A band that is as dark as much glass is covered, hatched so that it is told from the sun. */
function blindMarks(clock: number[], covered: number[], teller: Teller, colours: Palette): Mark[] {
  const { top, height } = BLIND;
  const slot = PLOT / 24;
  return [
    rect(LEFT, top, PLOT, height, {
      fill: colours.paper,
      stroke: colours.line,
      'stroke-width': 0.8,
    }),
    ...clock.flatMap((c, i): Mark[] => {
      const share = covered[i]!;
      if (share < 0.005) return [];
      const x = xOf(c - 0.5);
      return [rect(x, top + height * (1 - share), slot, height * share, { fill: colours.shade })];
    }),
    text(LEFT + PLOT + 8, top + height - 3, teller.t('day.down'), {
      size: 10.5,
      fill: colours.shade,
      weight: 700,
    }),
  ];
}

function dayTable(hours: DayHours, teller: Teller) {
  const { t, system } = teller;
  const temperature = (key: 'outdoor' | 'without' | 'with') =>
    `${t(`day.${key}`)} (${teller.unit('temperature')})`;
  const degree = (v: number) => fromSI('temperature', system, v);
  return {
    columns: [
      { head: t('day.clock'), digits: 2 },
      { head: temperature('outdoor'), digits: 1 },
      { head: temperature('without'), digits: 1 },
      { head: temperature('with'), digits: 1 },
      { head: `${t('day.sun')} (kW)`, digits: 2 },
      ...(hours.covered ? [{ head: t('day.coveredShare'), digits: 2 }] : []),
    ],
    rows: hours.clock.map((clock, i) => [
      clock - 0.5,
      degree(hours.outdoor[i]!),
      degree(hours.without[i]!),
      degree(hours.with[i]!),
      hours.sun[i]!,
      ...(hours.covered ? [hours.covered[i]!] : []),
    ]),
  };
}
