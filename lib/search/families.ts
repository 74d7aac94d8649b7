import type { RuleAction, RuleConditions, Schedule, Trigger } from '../schedule/index.ts';
import { DAYS } from '../time/index.ts';
import type { StudyResult } from '../study/index.ts';
import { QUARTER, QUARTERS, clockGrid } from './clock.ts';
import type { ClockGrid } from './clock.ts';
import type { Axis, Point, Space } from './descent.ts';
import { seasonDates, seasonGrid } from './season.ts';
import type { SeasonGrid } from './season.ts';
import { shortestHolding } from './starts.ts';
import type { Wanted } from './starts.ts';
import type { TargetInHand } from './target.ts';
import { timerFloor } from './timerFloor.ts';
import type { AllowedValues, FamilyId, SearchWeights } from './types.ts';

/** Least minutes between two moves of a control with sensors (common practice); a timer needs none. */
export const SENSOR_PAUSE = 30;

/** Sun on the facade at which a blind may go down, and by how much less it goes up again, W/m2. */
const SUN_AT = range(75, 600, 25);
const SUN_GAP = [25, 50, 100, 150];
/** The same of the room's operative temperature, C and K. */
const ROOM_AT = range(20, 28, 0.5);
const ROOM_GAP = [0.5, 1, 2];
/** Release of the sun where both room and sun decide, W/m2 less. */
const SUN_GAP_WITH_ROOM = 50;

/** All families in the order in which they are tried: what needs the least equipment first. */
export const FAMILIES: readonly FamilyId[] = ['timer', 'irradiance', 'tracking', 'room', 'roomSun'];

/** What the spaces of schedules are made from. */
export interface FamilyContext {
  inHand: TargetInHand;
  hemisphere: 'north' | 'south';
  up: StudyResult;
  wanted: Wanted;
  /** A study with the blinds down in the warm half-year. */
  down: StudyResult;
  sunUp: Uint8Array;
  weights: SearchWeights;
  allowed: AllowedValues;
}

/** The schedules of a family on their grid; absent where the blinds cannot do it. */
export function spaceOf(family: FamilyId, context: FamilyContext): Space | undefined {
  switch (family) {
    case 'timer':
      return timerSpace(context);
    case 'irradiance':
      return sunSpace(context, family, { kind: 'lower' });
    case 'tracking':
      return context.inHand.slats ? sunSpace(context, family, { kind: 'track' }) : undefined;
    case 'room':
      return roomSpace(context);
    case 'roomSun':
      return roomSunSpace(context);
  }
}

function timerSpace(context: FamilyContext): Space {
  const season = seasonOf(context);
  const { up, down, inHand, weights, sunUp } = context;
  const floor = timerFloor(up, down, inHand, weights, sunUp, season.grid.placeDay);
  const { place } = season.grid;
  const clock = clockGrid(sunUp, context.up.calendar, context.allowed);
  return {
    axes: [...seasonAxes(season), axis(clock.down, -1), axis(clock.up, 1)],
    build([f, t, d, u]) {
      const dates = season.dates(f, t);
      const from = clock.down[d];
      const to = clock.up[u];
      if (!dates || clock.placeDown(from) >= clock.placeUp(to)) return undefined;
      // Midnight as an end is told as 24:00.
      return scheduleOf('timer', context, { ...dates, clock: { from, to: to || 1440 } }, LOWER, 0);
    },
    floor: ([f, t, d, u]) =>
      floor(
        { first: place(season.grid.from[f]), last: place(season.grid.to[t]) },
        { from: clock.down[d], to: clock.up[u] },
      ),
    starts: SHARES.flatMap((days) =>
      SHARES.map((hours) => [...season.start(days), ...clockStart(context, clock, hours)]),
    ),
  };
}

function sunSpace(context: FamilyContext, family: FamilyId, then: RuleAction): Space {
  const season = seasonOf(context);
  const starts = [150, 250].flatMap((at) =>
    SHARES.slice(0, 2).map((days) => [...season.start(days), SUN_AT.indexOf(at), 1]),
  );
  return {
    axes: [...seasonAxes(season), axis(SUN_AT, -1), axis(SUN_GAP, 0)],
    build([f, t, a, g]) {
      const dates = season.dates(f, t);
      const irradianceAbove = trigger(SUN_AT[a], SUN_GAP[g]);
      if (!dates || irradianceAbove.release < 0) return undefined;
      return scheduleOf(family, context, { ...dates, irradianceAbove }, then, SENSOR_PAUSE);
    },
    starts,
  };
}

function roomSpace(context: FamilyContext): Space {
  return {
    axes: [axis(ROOM_AT, -1), axis(ROOM_GAP, 0)],
    build([a, g]) {
      const roomAbove = trigger(ROOM_AT[a], ROOM_GAP[g]);
      return scheduleOf('room', context, { roomAbove }, LOWER, SENSOR_PAUSE);
    },
    starts: [22, 24, 25].map((at) => [ROOM_AT.indexOf(at), 1]),
  };
}

function roomSunSpace(context: FamilyContext): Space {
  const actions: RuleAction[] = context.inHand.slats ? [LOWER, { kind: 'track' }] : [LOWER];
  return {
    axes: [axis(ROOM_AT, -1), axis(ROOM_GAP, 0), axis(SUN_AT, -1), axis(actions, 0)],
    build([a, g, s, k]) {
      const roomAbove = trigger(ROOM_AT[a], ROOM_GAP[g]);
      const irradianceAbove = trigger(SUN_AT[s], SUN_GAP_WITH_ROOM);
      const when = { irradianceAbove, roomAbove };
      return scheduleOf('roomSun', context, when, actions[k], SENSOR_PAUSE);
    },
    starts: actions.flatMap((_, k) =>
      [22, 24].map((at) => [ROOM_AT.indexOf(at), 1, SUN_AT.indexOf(150), k]),
    ),
  };
}

const LOWER: RuleAction = { kind: 'lower' };
/** Shares of hot days and of sun that a first guess covers. */
const SHARES = [0.95, 0.75];

function scheduleOf(
  family: FamilyId,
  { inHand }: FamilyContext,
  when: RuleConditions,
  then: RuleAction,
  pause: number,
): Schedule {
  return {
    id: `${inHand.id}-${family}`,
    name: inHand.name,
    rules: [{ id: family, when, then: { ...then } }],
    minMinutesBetweenMoves: pause,
  };
}

function axis(values: { length: number }, more: Axis['more']): Axis {
  return { count: values.length, more };
}

function trigger(at: number, gap: number): Trigger {
  return { at, release: at - gap };
}

function range(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
}

/** Seasons as two axes, with a first guess that covers a share of the hot hours. */
interface SeasonPart {
  grid: SeasonGrid;
  dates(from: number, to: number): { dates?: { from: string; to: string } } | undefined;
  start(share: number): Point;
}

function seasonOf({ hemisphere, wanted, allowed }: FamilyContext): SeasonPart {
  const grid = seasonGrid(hemisphere, allowed);
  const { from, to, place } = grid;
  const midwinter = (DAYS - place('01-01')) % DAYS;
  return {
    grid,
    dates(f, t) {
      return place(from[f]) <= place(to[t]) ? seasonDates(grid, from[f], to[t]) : undefined;
    },
    start(share) {
      const span = shortestHolding(wanted.hotDays, share, midwinter);
      return [lastUpTo(from.map(place), span.from), firstFrom(to.map(place), span.to - 1)];
    },
  };
}

function seasonAxes({ grid }: SeasonPart): Axis[] {
  return [axis(grid.from, -1), axis(grid.to, 1)];
}

/** Clock times that cover a share of the sun of hot days. */
function clockStart({ wanted }: FamilyContext, clock: ClockGrid, share: number): Point {
  const middle = (QUARTERS - clock.placeDown(0) / QUARTER) % QUARTERS;
  const { from, to } = shortestHolding(wanted.quarters, share, middle);
  return [
    lastUpTo(clock.down.map(clock.placeDown), from * QUARTER),
    firstFrom(clock.up.map(clock.placeUp), to * QUARTER),
  ];
}

/** Number of the last place not after one, or of the first there is. */
function lastUpTo(places: readonly number[], most: number): number {
  return Math.max(
    places.findLastIndex((p) => p <= most),
    0,
  );
}

/** Number of the first place not before one, or of the last there is. */
function firstFrom(places: readonly number[], least: number): number {
  const found = places.findIndex((p) => p >= least);
  return found < 0 ? places.length - 1 : found;
}
