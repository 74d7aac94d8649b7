import type {
  RuleAction,
  RuleConditions,
  Schedule,
  Sensors,
  Trigger,
} from '../../../lib/schedule/index.ts';
import { STEPS } from '../../../lib/time/index.ts';
import type { LocalTime } from './localClock.ts';

/** What a step's sensors read. */
export interface Reading {
  time: LocalTime;
  sun: boolean;
  irradiance: number;
  outdoor: number;
  wind: number;
  room: number;
}

/** A trigger that remembers whether it holds. */
class Latch {
  on = false;
  constructor(
    readonly trigger: Trigger,
    readonly above: boolean,
    readonly read: (reading: Reading) => number,
  ) {}

  update(reading: Reading): void {
    const value = this.read(reading);
    const { at, release } = this.trigger;
    const reached = this.above ? value >= at : value <= at;
    const released = this.above ? value <= release : value >= release;
    if (reached) this.on = true;
    else if (released) this.on = false;
  }
}

function latchesOf(when: RuleConditions): Latch[] {
  const latches: Latch[] = [];
  const add = (trigger: Trigger | undefined, above: boolean, read: (r: Reading) => number) => {
    if (trigger) latches.push(new Latch(trigger, above, read));
  };
  add(when.irradianceAbove, true, (r) => r.irradiance);
  add(when.irradianceBelow, false, (r) => r.irradiance);
  add(when.outdoorAbove, true, (r) => r.outdoor);
  add(when.outdoorBelow, false, (r) => r.outdoor);
  add(when.roomAbove, true, (r) => r.room);
  add(when.roomBelow, false, (r) => r.room);
  return latches;
}

/** Month and day as one number that sorts; 29 February counts as the 28th. */
function dateNumber(text: string): number {
  const month = Number(text.slice(0, 2));
  const day = Number(text.slice(3));
  return month * 100 + (month === 2 ? Math.min(day, 28) : day);
}

interface Span {
  from: number;
  to: number;
}

/** Whether the clock stands in the part of a span that runs past midnight, after midnight. */
function inMorning({ from, to }: Span, minutes: number): boolean {
  return to < from % 1440 && minutes < to;
}

function inSpan({ from, to }: Span, minutes: number): boolean {
  const start = from % 1440;
  if (start === to % 1440) return true;
  return start < to ? minutes >= start && minutes < to : minutes >= start || minutes < to;
}

function calendarHolds(when: RuleConditions, time: LocalTime): boolean {
  const { clock, dates, grid } = when;
  // The hours after midnight belong to the day before.
  const date = clock && inMorning(clock, time.minutes) ? time.before : time;
  if (when.months && !when.months.includes(date.month)) return false;
  if (when.weekdays && !when.weekdays.includes(date.weekday)) return false;
  if (dates) {
    const today = date.month * 100 + date.day;
    const from = dateNumber(dates.from);
    const to = dateNumber(dates.to);
    const inside = from <= to ? today >= from && today <= to : today >= from || today <= to;
    if (!inside) return false;
  }
  if (clock && !inSpan(clock, time.minutes)) return false;
  return !grid || grid.some((span) => span.month === time.month && inSpan(span, time.minutes));
}

const RAISED = 'raise';

export interface ReferenceOptions {
  windLimit?: number;
  calmMinutes?: number;
}

export interface ReferenceCounts {
  moves: number;
  stepsRaisedByWind: number;
  delays: number;
  stepsDelayed: number;
}

/** A blind that follows the words of the contract, step after step. */
export class ReferenceBlind {
  /** What it does, as text. */
  position = RAISED;
  counts: ReferenceCounts = { moves: 0, stepsRaisedByWind: 0, delays: 0, stepsDelayed: 0 };
  private minutesSinceMove = Infinity;
  private waiting = false;
  private windy = false;
  private calmFor = 0;
  private readonly rules;

  constructor(
    private readonly schedule: Schedule,
    private readonly options: ReferenceOptions,
  ) {
    this.rules = schedule.rules.map(({ when, then }) => ({
      when,
      does: actionText(then),
      latches: latchesOf(when),
    }));
  }

  /** Readings that only memories take in. */
  remember(reading: Reading): void {
    for (const { latches } of this.rules) for (const latch of latches) latch.update(reading);
    this.feelWind(reading.wind);
  }

  step(reading: Reading): string {
    this.remember(reading);
    const deciding = this.rules.find(
      ({ when, latches }) =>
        latches.every((latch) => latch.on) &&
        (when.sunOnFacade === undefined || when.sunOnFacade === reading.sun) &&
        calendarHolds(when, reading.time),
    );
    const wish = deciding ? deciding.does : RAISED;
    if (this.windy && wish !== RAISED) this.counts.stepsRaisedByWind++;
    const wanted = this.windy ? RAISED : wish;
    if (wanted === this.position) {
      this.waiting = false;
    } else if (this.windy || this.minutesSinceMove >= this.schedule.minMinutesBetweenMoves) {
      this.position = wanted;
      this.minutesSinceMove = 0;
      this.waiting = false;
      this.counts.moves++;
    } else {
      if (!this.waiting) this.counts.delays++;
      this.waiting = true;
      this.counts.stepsDelayed++;
    }
    this.minutesSinceMove += 15;
    return this.position;
  }

  private feelWind(speed: number): void {
    const { windLimit = Infinity, calmMinutes = 30 } = this.options;
    if (speed > windLimit) {
      this.windy = true;
      this.calmFor = 0;
    } else if (this.windy && speed < windLimit * 0.8) {
      if (this.calmFor >= calmMinutes) this.windy = false;
      this.calmFor += 15;
    } else this.calmFor = 0;
  }
}

/** The same text for positions that are alike. */
export function actionText(action: RuleAction): string {
  if (action.kind === 'raise') return RAISED;
  const angle = action.kind === 'tilt' ? ` ${action.angle}` : '';
  return `${action.kind}${angle} over ${action.share ?? 1}`;
}

/**
 * A year by the contract: every memory goes once round the year first, the blind through its last
 * two days. Rooms begin to be felt with those, at `room[0]`.
 */
export function referenceYear(
  schedule: Schedule,
  clock: readonly LocalTime[],
  sensors: Sensors,
  options: ReferenceOptions,
  room?: Float64Array,
): { positions: string[]; counts: ReferenceCounts } {
  const now: Reading = { time: clock[0], sun: false, irradiance: 0, outdoor: 0, wind: 0, room: 0 };
  const reading = (i: number, temperature: number): Reading => {
    now.time = clock[i];
    now.sun = sensors.sunOnFacade[i] === 1;
    now.irradiance = sensors.facadeIrradiance[i];
    now.outdoor = sensors.outdoor[Math.floor(i / 4)];
    now.wind = sensors.wind[Math.floor(i / 4)];
    now.room = temperature;
    return now;
  };
  const leadIn = STEPS - 2 * 96;
  const blind = new ReferenceBlind(schedule, options);
  for (let i = leadIn; i < STEPS; i++) blind.remember(reading(i, NaN));
  for (let i = 0; i < leadIn; i++) blind.remember(reading(i, NaN));
  for (let i = leadIn; i < STEPS; i++) blind.step(reading(i, room ? room[0] : NaN));
  blind.counts = { moves: 0, stepsRaisedByWind: 0, delays: 0, stepsDelayed: 0 };
  const positions = clock.map((_, i) => blind.step(reading(i, room ? room[i] : NaN)));
  return { positions, counts: blind.counts };
}
