import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileSchedule, runSchedule } from '../../../lib/schedule/index.ts';
import type { RuleConditions } from '../../../lib/schedule/index.ts';
import { HOURS, STEPS, buildCalendar, monthOfDay } from '../../../lib/time/index.ts';
import {
  CELLS,
  QUARTERS,
  blockBetween,
  cellByKey,
  cellsOf,
  clockOf,
  gridOf,
  isSame,
  paintedAt,
  withBlock,
} from '../../../src/app/charts/schedule/cells.ts';
import {
  boxOf,
  cellAt,
  filledPath,
  gridSize,
  outlinePath,
  stretchesOf,
} from '../../../src/app/charts/schedule/layout.ts';
import { Stroke } from '../../../src/app/charts/schedule/stroke.ts';
import { reachOf } from '../../../src/app/schedules/reach.ts';

const anyCells = fc
  .array(fc.tuple(fc.nat(CELLS - 1), fc.integer({ min: 1, max: 40 })), { maxLength: 30 })
  .map((runs) => {
    const cells = new Uint8Array(CELLS);
    for (const [from, length] of runs) cells.fill(1, from, from + length);
    return cells;
  });
const quarter = fc.nat(QUARTERS).map((q) => q * 15);
const anySpan = fc.record({ month: fc.integer({ min: 1, max: 12 }), from: quarter, to: quarter });

const calendar = buildCalendar('America/New_York', 2026, 5);

/** What the engine does with a rule's calendar: cells in which it holds at any step of the year. */
function engineCells(when: RuleConditions): Uint8Array {
  const rule = { id: 'r', when, then: { kind: 'lower' } as const };
  const schedule = { id: 's', name: '', rules: [rule], minMinutesBetweenMoves: 0 };
  const state = new Uint8Array(STEPS);
  const sensors = {
    sunOnFacade: new Uint8Array(STEPS),
    facadeIrradiance: new Float64Array(STEPS),
    outdoor: new Float64Array(HOURS),
    wind: new Float64Array(HOURS),
  };
  runSchedule(compileSchedule(schedule, calendar), sensors, {}, state);
  const cells = new Uint8Array(CELLS);
  state.forEach((action, step) => {
    const month = monthOfDay(calendar.day[step]) - 1;
    if (action) cells[month * QUARTERS + calendar.quarter[step]] = 1;
  });
  return cells;
}

describe('painted cells', () => {
  it('come back from the spans they are kept as', () => {
    fc.assert(fc.property(anyCells, (cells) => isSame(cellsOf(gridOf(cells)), cells)));
  });

  it('are those the engine lowers a blind at, past midnight and all day too', () => {
    const grids = fc.array(anySpan, { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(grids, (grid) => isSame(cellsOf(grid), engineCells({ grid }))),
      { numRuns: 60 },
    );
  });

  it('are kept in as few spans as there are stretches', () => {
    const cells = withBlock(new Uint8Array(CELLS), { months: [3, 5], quarters: [24, 47] }, true);
    expect(gridOf(cells)).toEqual([4, 5, 6].map((month) => ({ month, from: 360, to: 720 })));
    expect(gridOf(new Uint8Array(CELLS))).toEqual([]);
    expect(gridOf(new Uint8Array(CELLS).fill(1))[11]).toEqual({ month: 12, from: 0, to: 1440 });
  });

  it('take whole rows between two corners, whichever comes first', () => {
    const a = 2 * QUARTERS + 31;
    const b = 4 * QUARTERS + 20;
    const block = { months: [2, 4], quarters: [20, 31] };
    expect(blockBetween(a, b, 2)).toEqual(block);
    expect(blockBetween(b, a, 2)).toEqual(block);
    expect(blockBetween(a, a, 1)).toEqual({ months: [2, 2], quarters: [31, 31] });
  });

  it('tell half a painted row from a whole one', () => {
    const cells = new Uint8Array(CELLS);
    cells[101] = 1;
    expect(paintedAt(cells, 100, 2)).toBe('part');
    expect(paintedAt(cells, 101, 1)).toBe('all');
    expect(paintedAt(cells, 102, 2)).toBe('none');
  });
});

describe('a stroke', () => {
  it('gives back what the hand leaves again', () => {
    const before = withBlock(new Uint8Array(CELLS), { months: [0, 11], quarters: [0, 7] }, true);
    const stroke = new Stroke(before, 0, false, 1);
    const wide = stroke.cells(5 * QUARTERS + 3, before)!;
    const narrow = stroke.cells(0, wide)!;
    expect(narrow[0]).toBe(0);
    expect(narrow.reduce((sum, v) => sum + v, 0)).toBe(12 * 8 - 1);
    expect(stroke.cells(0, narrow)).toBeUndefined();
  });
});

describe('the cell cursor', () => {
  it('stays on the grid and on its rows, wherever keys take it', () => {
    const keys = 'ArrowLeft ArrowRight ArrowUp ArrowDown PageUp PageDown Home End'.split(' ');
    const walk = fc.array(fc.constantFrom(...keys), { maxLength: 80 });
    fc.assert(
      fc.property(walk, fc.constantFrom(1, 2), (pressed, rows) => {
        let cell = 548;
        for (const key of pressed) cell = cellByKey(cell, key, rows)!;
        return cell >= 0 && cell < CELLS && cell % rows === 0;
      }),
    );
    expect(cellByKey(548, 'x', 2)).toBeUndefined();
  });

  it('names clock times to midnight', () => {
    expect([0, 59, 96].map(clockOf)).toEqual(['00:00', '14:45', '24:00']);
  });
});

describe('the chart', () => {
  const size = gridSize(700, 2);

  it('finds the cell in the middle of its own box', () => {
    fc.assert(
      fc.property(fc.nat(CELLS - 1), (cell) => {
        const month = Math.floor(cell / QUARTERS);
        const q = cell % QUARTERS;
        const box = boxOf(size, { months: [month, month], quarters: [q, q] });
        return cellAt(size, box.x + box.width / 2, box.y + box.height / 2) === cell;
      }),
    );
  });

  it('outlines every edge between painted and unpainted, once', () => {
    fc.assert(
      fc.property(anyCells, (cells) => {
        const at = (m: number, q: number) =>
          m < 0 || m > 11 || q < 0 || q >= QUARTERS ? 0 : cells[m * QUARTERS + q];
        let across = 0;
        let up = 0;
        for (let m = 0; m <= 12; m++) {
          for (let q = 0; q <= QUARTERS; q++) {
            if (q < QUARTERS && at(m - 1, q) !== at(m, q)) up++;
            if (m < 12 && at(m, q - 1) !== at(m, q)) across++;
          }
        }
        const { width, height } = lengths(outlinePath(size, cells));
        // Both ends of a line are rounded to a tenth of a pixel: under 3 % of a row of 4.5 px.
        expect(Math.abs(width / (size.width / 12) - across)).toBeLessThanOrEqual(0.03 * across);
        expect(Math.abs(height / (size.height / QUARTERS) - up)).toBeLessThanOrEqual(0.03 * up);
      }),
      { numRuns: 50 },
    );
  });

  it('fills as much as is painted', () => {
    fc.assert(
      fc.property(anyCells, (cells) => {
        const painted = cells.reduce((sum, v) => sum + v, 0);
        const parts = filledPath(size, cells).split('Z').filter(Boolean);
        const area = parts.reduce((sum, part) => {
          const [left, foot, right, top] = part.match(/[\d.]+/g)!.map(Number);
          return sum + (right - left) * (foot - top);
        }, 0);
        const cell = (size.width / 12) * (size.height / QUARTERS);
        // Corners are rounded to a tenth of a pixel: under 3 % of the lowest cell of 4.5 px.
        expect(Math.abs(area / cell - painted)).toBeLessThanOrEqual(0.03 * painted);
      }),
      { numRuns: 50 },
    );
  });

  it('draws equal neighbours of a month as one', () => {
    const values = new Float64Array(CELLS).map((_, i) => Math.floor((i % QUARTERS) / 4));
    const stretches = stretchesOf(values);
    expect(stretches).toHaveLength(12 * 24);
    expect(stretches[25]).toEqual({ month: 1, from: 4, to: 8, value: 1 });
  });
});

/** Summed lengths of the level and the upright lines of a path. */
function lengths(path: string): { width: number; height: number } {
  let width = 0;
  let height = 0;
  for (const [, x, y, direction, to] of path.matchAll(/M([\d.]+),([\d.]+)([HV])([\d.]+)/g)) {
    if (direction === 'H') width += Math.abs(Number(to) - Number(x));
    else height += Math.abs(Number(to) - Number(y));
  }
  return { width, height };
}

describe('where a rule may act', () => {
  it('is what the engine allows by days and clock hours', () => {
    const when = {
      dates: { from: '04-10', to: '09-20' },
      clock: { from: 840, to: 1140 },
      roomAbove: { at: 23, release: 22 },
    };
    const reach = reachOf(when, calendar)!;
    for (let month = 0; month < 12; month++) {
      for (let q = 0; q < QUARTERS; q++) {
        const inside = month >= 3 && month <= 8 && q >= 56 && q < 76;
        expect(reach[month * QUARTERS + q]).toBe(inside ? 1 : 0);
      }
    }
  });

  it('leaves painted hours and sensors aside, and is not drawn where nothing narrows it', () => {
    expect(reachOf({ grid: [], sunOnFacade: true, weekdays: [1] }, calendar)).toBeUndefined();
    const night = reachOf({ clock: { from: 1320, to: 360 }, grid: [] }, calendar)!;
    expect(night[0]).toBe(1);
    expect(night[40]).toBe(0);
    expect(night[90]).toBe(1);
  });
});
