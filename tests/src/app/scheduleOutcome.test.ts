import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import { IANAZone } from 'luxon';
import { beforeAll, describe, expect, it } from 'vitest';
import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import { daysInMonth } from '../../../lib/time/index.ts';
import type { StudySummary } from '../../../src/worker/api.ts';
import { EngineHost } from '../../../src/worker/host.ts';
import { outcomeOf } from '../../../src/app/schedules/outcome.ts';

const host = new EngineHost();
let summary: StudySummary;

beforeAll(async () => {
  const reply = await host.run(studio);
  if (!reply.ok) throw new Error(JSON.stringify(reply.problems));
  summary = reply.summary;
}, 60_000);

const QUARTERS = 96;

describe('what a schedule does', () => {
  it('is that of a whole facade where all its openings are moved', () => {
    const west = summary.facades.find((f) => f.id === 'west')!;
    const outcome = outcomeOf(summary, west.openings)!;
    expect(outcome.summerWithout).toBeCloseTo(west.sums.without.summer, 9);
    expect(outcome.summerWith).toBeCloseTo(west.sums.with.summer, 9);
    expect(outcome.winterLost).toBeCloseTo(west.sums.without.winter - west.sums.with.winter, 9);
    expect(outcome.stopped).toBeCloseTo(1 - outcome.summerWith / outcome.summerWithout, 12);
    expect(outcome.stopped).toBeGreaterThan(0.3);
  });

  it('counts the moves of one blind, and the hot hours of its room', () => {
    const door = summary.openings.find((o) => o.id === 'west-door')!;
    const outcome = outcomeOf(summary, ['west-door', 'west-window'])!;
    expect(outcome.moves).toBe(door.blind!.moves);
    const room = summary.rooms.find((r) => r.id === door.room)!;
    expect(outcome.rooms).toEqual([
      { id: room.id, name: room.name, without: room.without.hotHours, with: room.with.hotHours },
    ]);
  });

  it('is not known for an opening the run has not', () => {
    expect(outcomeOf(summary, ['west-door', 'none'])).toBeUndefined();
    expect(outcomeOf(summary, [])).toBeUndefined();
  });
});

describe("the sun's hours", () => {
  const zone = IANAZone.create(studio.site.timeZone);
  const observer = new Observer(studio.site.latitude, studio.site.longitude, studio.site.elevation);

  /** Whether the sun is over the horizon in front of a wall, by astronomy-engine. */
  function inFront(instant: number, azimuth: number): boolean {
    const date = new Date(instant);
    const { ra, dec } = Equator(Body.Sun, date, observer, true, true);
    const at = Horizon(date, observer, ra, dec, 'normal');
    const turn = ((at.azimuth - azimuth) * Math.PI) / 180;
    return at.altitude > 0 && Math.cos(turn) > 0;
  }

  it('fall where the sun stands before the wall on some day of the month', () => {
    const azimuth = summary.facades.find((f) => f.id === 'west')!.plane.azimuth;
    const { sun } = host.sunHours(['west-window'], 'any')!;
    for (const month of [1, 6, 10]) {
      for (let q = 0; q < QUARTERS; q++) {
        const share = sun[(month - 1) * QUARTERS + q];
        let days = 0;
        for (let day = 1; day <= daysInMonth[month - 1]; day++) {
          const utc = Date.UTC(studio.year, month - 1, day) + (q + 0.5) * 900_000;
          if (inFront(utc - zone.offset(utc) * 60_000, azimuth)) days++;
        }
        const most = days / daysInMonth[month - 1];
        // Cloud, hills and the trees around take from the days; nothing adds to them. A day more
        // at most for the minute in which the sun comes round the wall.
        expect(share).toBeLessThanOrEqual(most + 1 / 28);
        if (days === 0) expect(share).toBe(0);
      }
    }
  });

  it('hold the gain of the year', () => {
    const members = ['west-door', 'west-window'];
    const { gain } = host.sunHours(members, 'any')!;
    const openings = summary.openings.filter((o) => members.includes(o.id));
    const area = openings.reduce((sum, o) => sum + o.glassArea, 0);
    const sums = gain.reduce(
      (sum, value, cell) => sum + (value / 4000) * daysInMonth[Math.floor(cell / QUARTERS)],
      0,
    );
    const year = openings.reduce((sum, o) => sum + o.sums.without.year, 0) / area;
    // Only the nights of the clock changes count otherwise here, and they are dark.
    expect(sums / year).toBeCloseTo(1, 6);
  });

  it('are those of the leading opening, or of any', () => {
    const only = (lead: string) => host.sunHours(['west-door', 'corner-pane'], lead)!.sun;
    const [door, corner, any] = ['west-door', 'corner-pane', 'any'].map(only);
    expect(door).toEqual(host.sunHours(['west-door'], 'any')!.sun);
    any.forEach((share, cell) => {
      expect(share).toBeGreaterThanOrEqual(Math.max(door[cell], corner[cell]));
      expect(share).toBeLessThanOrEqual(door[cell] + corner[cell] + 1e-12);
    });
    expect(host.sunHours(['none'], 'any')).toBeUndefined();
  });
});
