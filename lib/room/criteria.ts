import type { Text } from '../problem/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { say } from './say.ts';
import { clockOfHour, inSpan } from './tables.ts';

/** Said beside every criterion. */
export const NO_CODE_CHECK: Text = /* @__PURE__ */ say('room.noCodeCheck');

/** A criterion's outcome on one room-year of operative temperatures. */
export interface CriterionResult {
  id: CriterionId;
  title: Text;
  /** The figure judged, in `unit`. */
  value: number;
  unit: '1' | 'Kh' | 'h';
  /** Usual limit of the figure; absent where the source sets none. */
  limit?: number;
  /** Whether the figure keeps the limit; absent without a limit. */
  met?: boolean;
  /** Hours over the temperature and hours judged. */
  hoursOver: number;
  hoursJudged: number;
  source: Text;
  note: Text;
}

export type CriterionId = 'shareAbove' | 'adaptive' | 'bedroomNights' | 'din4108' | 'degreeHours';

/** Share of the hours over a temperature and the shares a client may hold it against. */
export const SHARE_GRADES = { usual: 0.1, good: 0.05, better: 0.03 } as const;

export interface ShareOptions {
  /** C; 25 where absent. */
  threshold?: number;
  /** Share of the hours; 0.1 where absent. */
  limit?: number;
  /** 1 for each hour that counts; absent: all. HOURS values. */
  occupied?: Uint8Array;
}

/** Share of the year, or of its occupied hours, over a temperature. */
export function shareAbove(operative: Float64Array, options: ShareOptions = {}): CriterionResult {
  const { threshold = 25, limit = SHARE_GRADES.usual, occupied } = options;
  const { over, judged } = count(operative, threshold, occupied);
  const value = judged > 0 ? over / judged : 0;
  return {
    id: 'shareAbove',
    title: say(occupied ? 'room.criterion.occupied' : 'room.criterion.year', of(threshold)),
    value,
    unit: '1',
    limit,
    met: value <= limit,
    hoursOver: over,
    hoursJudged: judged,
    source: say('room.source.share'),
    note: NO_CODE_CHECK,
  };
}

/** Night hours of a bedroom, local clock, minutes. */
const NIGHT = { from: 22 * 60, to: 7 * 60 };

const keptNights = new WeakMap<YearCalendar, Uint8Array>();

/** 1 in the night hours of a calendar; kept, as every run of a year asks for them. */
function nightHours(calendar: YearCalendar): Uint8Array {
  let night = keptNights.get(calendar);
  if (!night) {
    night = Uint8Array.from(calendar.month, (_, hour) =>
      inSpan(NIGHT, clockOfHour(calendar, hour)) ? 1 : 0,
    );
    keptNights.set(calendar, night);
  }
  return night;
}

/** Hours from 22:00 to 07:00 over 26 C, as a share of all those hours of the year; 1 % at most. */
export function bedroomNights(operative: Float64Array, calendar: YearCalendar): CriterionResult {
  const night = nightHours(calendar);
  const { over, judged } = count(operative, 26, night);
  const value = over / judged;
  return {
    id: 'bedroomNights',
    title: say('room.criterion.nights', of(26)),
    value,
    unit: '1',
    limit: 0.01,
    met: value <= 0.01,
    hoursOver: over,
    hoursJudged: judged,
    source: say('room.source.nights'),
    note: NO_CODE_CHECK,
  };
}

/** Summer climate regions of DIN 4108-2 with their operative temperature, C: A cool, B moderate, C hot. */
export const DIN_REGIONS = { A: 25, B: 26, C: 27 } as const;
export type DinRegion = keyof typeof DIN_REGIONS;

/**
 * Degree-hours over the region's temperature in the whole year; 1,200 Kh at most in dwellings. The
 * standard's own gains, airing and weather are not taken here.
 */
export function dinDegreeHours(operative: Float64Array, region: DinRegion): CriterionResult {
  const result = degreeHours(operative, DIN_REGIONS[region]);
  return {
    ...result,
    id: 'din4108',
    title: say('room.criterion.din', { ...of(DIN_REGIONS[region]), region }),
    limit: 1200,
    met: result.value <= 1200,
    source: say('room.source.din'),
  };
}

/** Degree-hours over a temperature in the year or its occupied hours, Kh. */
export function degreeHours(
  operative: Float64Array,
  threshold: number,
  occupied?: Uint8Array,
): CriterionResult {
  const { over, judged, excess } = count(operative, threshold, occupied);
  return {
    id: 'degreeHours',
    title: say(
      occupied ? 'room.criterion.degreeHoursOccupied' : 'room.criterion.degreeHours',
      of(threshold),
    ),
    value: excess,
    unit: 'Kh',
    hoursOver: over,
    hoursJudged: judged,
    source: say('room.source.degreeHours'),
    note: NO_CODE_CHECK,
  };
}

function of(temperature: number) {
  return { temperature };
}

/** Hours over a temperature, hours judged and kelvin-hours over it. */
function count(operative: Float64Array, threshold: number, judgedHours?: Uint8Array) {
  let over = 0;
  let judged = 0;
  let excess = 0;
  for (let hour = 0; hour < operative.length; hour++) {
    if (judgedHours !== undefined && judgedHours[hour] === 0) continue;
    judged++;
    if (operative[hour] <= threshold) continue;
    over++;
    excess += operative[hour] - threshold;
  }
  return { over, judged, excess };
}
