import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { clockGrid } from '../../../lib/search/clock.ts';
import { descend } from '../../../lib/search/descent.ts';
import type { Space } from '../../../lib/search/descent.ts';
import { createJudge } from '../../../lib/search/judge.ts';
import { seasonGrid } from '../../../lib/search/season.ts';
import { shortestHolding } from '../../../lib/search/starts.ts';
import { dayByDay, stretchesOf } from '../../../lib/search/stretches.ts';
import { takeTarget } from '../../../lib/search/target.ts';
import { timerFloor } from '../../../lib/search/timerFloor.ts';
import { SEARCH_WEIGHTS } from '../../../lib/search/index.ts';
import type { SearchFigures } from '../../../lib/search/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import { STEPS, buildCalendar } from '../../../lib/time/index.ts';
import { fromLines, scheduled, westHouse } from './support.ts';

const calendar = buildCalendar('America/New_York', 2026, 5);

describe('seasons and clock times', () => {
  it('orders half-months from midwinter to midwinter', () => {
    const north = seasonGrid('north');
    const south = seasonGrid('south');
    expect([north.from[0], north.to.at(-1), north.from.length]).toEqual(['01-01', '12-31', 24]);
    expect([south.from[0], south.to.at(-1), south.to.length]).toEqual(['07-01', '06-30', 24]);
    expect(north.to.slice(2, 4)).toEqual(['02-15', '02-28']);
    // A season of the south over the new year does not wrap.
    expect(south.place('10-16')).toBeLessThan(south.place('03-31'));
    const allowed = seasonGrid('south', { from: ['01-01', '11-01'], to: ['03-31', '12-31'] });
    expect([allowed.from, allowed.to]).toEqual([
      ['11-01', '01-01'],
      ['12-31', '03-31'],
    ]);
  });

  const lit = (from: number, to: number) => {
    const on = (q: number) => (from < to ? q >= from && q < to : q >= from || q < to);
    return Uint8Array.from({ length: STEPS }, (_, step) => Number(on(calendar.quarter[step])));
  };

  it('runs from the first light to the last on the quarter hour', () => {
    const grid = clockGrid(lit(24, 80), calendar);
    expect([grid.down[0], grid.down.at(-1)]).toEqual([360, 1185]);
    expect([grid.up[0], grid.up.at(-1)]).toEqual([375, 1200]);
    expect(grid.down.every((m) => m % 15 === 0)).toBe(true);
  });

  it('goes on past midnight where the sun does', () => {
    // Light from 04:00 to 01:00: the dark is in the middle of the night, not at midnight.
    const grid = clockGrid(lit(16, 4), calendar);
    expect([grid.down[0], grid.down.at(-1)]).toEqual([240, 45]);
    expect([grid.up[0], grid.up.at(-1)]).toEqual([255, 60]);
    expect(grid.placeDown(1380)).toBeLessThan(grid.placeUp(30));
    expect(grid.placeDown(300)).toBeLessThan(grid.placeUp(60));
  });

  it('takes the whole day where it is never dark, or never light', () => {
    for (const flags of [lit(0, 96), new Uint8Array(STEPS)]) {
      const grid = clockGrid(flags, calendar);
      expect([grid.down.length, grid.up.length]).toEqual([96, 96]);
    }
  });

  it('keeps only the times allowed', () => {
    const grid = clockGrid(lit(24, 80), calendar, { down: [900, 840], up: [1440, 1200] });
    expect([grid.down, grid.up]).toEqual([
      [840, 900],
      [1200, 0],
    ]);
    expect(grid.placeUp(1200)).toBeLessThan(grid.placeUp(0));
  });

  it('finds the shortest stretch that holds a share, as trying all does', () => {
    const values = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 2, maxLength: 24 });
    const share = fc.constantFrom(0.5, 0.75, 0.95);
    fc.assert(
      fc.property(values, share, fc.nat(23), (list, part, first) => {
        const start = first % list.length;
        const turned = [...list.slice(start), ...list.slice(0, start)];
        const total = turned.reduce((a, b) => a + b, 0);
        const { from, to } = shortestHolding(Float64Array.from(list), part, start);
        const sum = (a: number, b: number) => turned.slice(a, b).reduce((x, y) => x + y, 0);
        expect(sum(from, to)).toBeGreaterThanOrEqual(part * total);
        if (total === 0) return;
        for (let a = 0; a < list.length; a++) {
          const shorter = sum(a, a + (to - from) - 1);
          if (to - from > 1) expect(shorter).toBeLessThan(part * total);
        }
      }),
    );
  });
});

describe('the descent', () => {
  const judge = (target: readonly number[]) => (schedule: { name: string }) => {
    const point = schedule.name.split(',').map(Number);
    const price = point.reduce((sum, x, i) => sum + (1 + i) * (x - target[i]) ** 2, 0);
    return { kept: true, broken: 0, beyond: 0, price } as SearchFigures;
  };
  const space = (count: number, axes: number): Space => ({
    axes: Array.from({ length: axes }, () => ({ count, more: 0 })),
    starts: [Array<number>(axes).fill(0), Array<number>(axes).fill(count - 1)],
    build: (point) => ({ id: 'p', name: point.join(), rules: [], minMinutesBetweenMoves: 0 }),
  });
  const drain = (of: Space, target: readonly number[], budget: number) => {
    let runs = 0;
    const search = descend(of, judge(target), budget);
    let step = search.next();
    for (; !step.done; step = search.next()) runs++;
    return { ...step.value, runs };
  };

  it('ends at the least of a bowl from anywhere, within its bound', () => {
    const target = fc.array(fc.nat(15), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(target, (least) => {
        const { best, full, runs } = drain(space(16, 3), least, 300);
        expect(best!.schedule.name).toBe(least.join());
        expect(full).toBe(false);
        expect(runs).toBeLessThanOrEqual(300);
      }),
      { numRuns: 50 },
    );
  });

  it('runs all of a small space, and stops at its bound in a large one', () => {
    expect(drain(space(4, 2), [2, 1], 16)).toMatchObject({ full: true, runs: 16 });
    expect(drain(space(16, 3), [9, 9, 9], 5)).toMatchObject({ full: false, runs: 5 });
  });
});

describe('on a west pane', () => {
  const input = westHouse();
  const engine = createEngine();
  const inHand = takeTarget(input, { facade: 'wall-0' });
  const rule = (when: object) => ({
    id: 's',
    name: 'S',
    rules: [{ id: 'r', when, then: { kind: 'lower' as const } }],
    minMinutesBetweenMoves: 0,
  });

  it('prices no timer above what its study gives', () => {
    // A blind that wind raises on many days, so that the bound has something to allow for.
    const windy = {
      ...input,
      project: {
        ...input.project,
        openings: input.project.openings.map((o) =>
          o.blind ? { ...o, blind: { ...o.blind, windLimit: 4 } } : o,
        ),
      },
    };
    const own = createJudge(engine, windy, takeTarget(windy, inHand.target), SEARCH_WEIGHTS);
    const season = rule({ dates: { from: '04-01', to: '09-30' } });
    expect(own.of(season).moves).toBeGreaterThan(2);
    const grid = seasonGrid('north');
    const down = own.again(season);
    const floor = timerFloor(own.up.result, down, inHand, SEARCH_WEIGHTS, own.sunUp, grid.placeDay);
    let closest = 0;
    for (const [from, to, a, b] of [
      ['04-01', '09-30', 480, 1200],
      ['06-01', '08-31', 870, 1185],
      ['05-16', '06-15', 1200, 480],
      ['02-01', '11-15', 600, 1440],
      ['07-01', '07-15', 1020, 1080],
    ] as const) {
      const least = floor({ first: grid.place(from), last: grid.place(to) }, { from: a, to: b });
      const { price } = own.of(rule({ dates: { from, to }, clock: { from: a, to: b } }));
      expect(least).toBeLessThanOrEqual(price + 1e-9);
      closest = Math.max(closest, least / price);
    }
    // And it is near enough to be of use.
    expect(closest).toBeGreaterThan(0.8);
  });

  it('repeats the positions of a schedule day by day', () => {
    const given = rule({
      dates: { from: '03-01', to: '11-15' },
      irradianceAbove: { at: 200, release: 100 },
    });
    const result = engine.run(scheduled(input, ['pane-0'], given));
    const { state } = result.openings[0].blind!;
    const repeated = dayByDay(stretchesOf(result, state), { kind: 'lower' });
    const again = engine.run(scheduled(input, ['pane-0'], repeated));
    expect(again.openings[0].blind!.state).toEqual(state);
    expect(again.rooms[0].with.chosen).toEqual(result.rooms[0].with.chosen);
  });

  it('goes by the local clock on both sides of summer time', () => {
    const lines = ['1 March to 15 November, West wall: down at 14:30, up at 19:45'];
    const printed = { id: 's', name: 'S', ...fromLines(lines) };
    const result = engine.run(scheduled(input, ['pane-0'], printed));
    const { state } = result.openings[0].blind!;
    const { year, zone, startUtc } = result.calendar;
    const first = DateTime.utc(year, 1, 1).plus({ hours: startUtc });
    const stepAt = (month: number, day: number, hour: number, minute: number) =>
      DateTime.fromObject({ year, month, day, hour, minute }, { zone }).diff(first).as('minutes') /
      15;
    // Clocks change on 8 March and 1 November 2026.
    for (const [month, day] of [
      [3, 1],
      [3, 7],
      [3, 8],
      [7, 1],
      [10, 31],
      [11, 1],
      [11, 15],
    ]) {
      const down = stepAt(month, day, 14, 30);
      const up = stepAt(month, day, 19, 45);
      expect([down - 1, down, up - 1, up].map((step) => state[step])).toEqual([0, 1, 1, 0]);
    }
    for (const [month, day] of [
      [2, 28],
      [11, 16],
    ]) {
      expect(state[stepAt(month, day, 16, 0)]).toBe(0);
    }
  });
});
