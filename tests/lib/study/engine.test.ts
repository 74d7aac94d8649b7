import { describe, expect, it } from 'vitest';
import { totalGain, blindOptics } from '../../../lib/blind/index.ts';
import { glassAngular } from '../../../lib/glazing/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import type { StudyResult } from '../../../lib/study/index.ts';
import { HOURS, STEPS } from '../../../lib/time/index.ts';
import { blinds, glazings } from '../../../src/library/index.ts';
import { clearYear, example, exampleYear, library } from './support.ts';

const engine = createEngine();
const run = (project: Project, year = exampleYear('studio')): StudyResult =>
  engine.run({ project, library, year });

describe.each(['studio', 'bellingham', 'albuquerque'] as const)('the %s example', (name) => {
  const result = engine.run({ project: example(name), library, year: exampleYear(name) });

  it('has finite, non-negative light and gain within what the sun can give', () => {
    for (const opening of result.openings) {
      for (const [quantity, series] of Object.entries(opening.hourly)) {
        expect(series).toHaveLength(HOURS);
        for (const value of series) {
          // The sun outside the atmosphere gives 1,407 W/m2 at the most; sky and ground can add to
          // a plane that faces it, but a tilted pane never saw more than that here.
          if (!(value >= 0 && value < 1407)) throw new Error(`${opening.id} ${quantity} ${value}`);
        }
      }
    }
  });

  it('lets each step of the way take light away', () => {
    for (const { id, hourly } of result.openings) {
      for (let hour = 0; hour < HOURS; hour++) {
        const { incident, sunlit, without } = hourly;
        // The reveal throws some light back onto the glass: at most what it would have let by.
        expect(sunlit[hour], `${id} ${hour}`).toBeLessThanOrEqual(incident[hour] * 1.02 + 0.5);
        expect(without[hour], `${id} ${hour}`).toBeLessThanOrEqual(sunlit[hour] + 1e-9);
      }
    }
  });

  it('adds openings to facades and facades to the house', () => {
    const sum = (pick: (s: StudyResult['total']) => number) =>
      result.openings.reduce((total, o) => total + pick(o.sums), 0);
    for (const quantity of ['incident', 'sunlit', 'without', 'with'] as const) {
      expect(result.total[quantity].year).toBeCloseTo(
        sum((s) => s[quantity].year),
        6,
      );
      for (const opening of result.openings) {
        const hours = opening.hourly[quantity].reduce((total, w) => total + w, 0);
        const kWh = (hours * opening.glassArea) / 1000;
        expect(opening.sums[quantity].year).toBeCloseTo(kWh, 6);
        const months = opening.sums[quantity].months.reduce((total, m) => total + m, 0);
        expect(opening.sums[quantity].year).toBeCloseTo(months, 6);
      }
    }
  });

  it('never gains more with shading than without, but for what warm blinds give off', () => {
    for (const { id, hourly, blind } of result.openings) {
      const opening = example(name).openings.find((o) => o.id === id)!;
      const emission = opening.blind && blind ? emissionShare(opening) : 0;
      for (let hour = 0; hour < HOURS; hour++) {
        const most = hourly.without[hour] + emission * hourly.sunlit[hour] + 1e-9;
        if (hourly.with[hour] > most)
          throw new Error(`${id} ${hour}: ${hourly.with[hour]} ${most}`);
      }
    }
  });
});

/** Greatest share of the light on it that this opening's blind gives the room by being warm. */
function emissionShare(opening: Project['openings'][number]): number {
  const blind = blinds.find((b) => b.id === opening.blind!.blind)!;
  const glass = glassAngular(glazings.find((g) => g.id === opening.glazing)!);
  const settings =
    blind.kind === 'slats'
      ? [0, 15, 30, 45, 60, 75].map((angle) => ({ kind: 'tilt' as const, angle }))
      : [{ kind: 'down' as const }];
  return Math.max(
    ...settings.map((setting) => {
      const total = totalGain(blind, blindOptics(blind, setting), glass);
      return Math.max(...total.c0);
    }),
  );
}

describe('kept stages', () => {
  it('give the same figures as a fresh engine after any change', () => {
    const kept = createEngine();
    const year = exampleYear('studio');
    const changes: ((draft: Project) => void)[] = [
      (p) => void (p.schedules[0].minMinutesBetweenMoves = 60),
      (p) => void (p.walls[1].azimuth = 260),
      (p) => void (p.openings[0].setBack = 0.05),
      (p) => void (p.openings[1].glazing = 'triple-solar-control'),
      (p) => void (p.site.albedo = 0.5),
      (p) => void (p.site.horizon = []),
      (p) => void (p.rooms[0].floorArea = 30),
      (p) => void (p.openings[0].count = 2),
    ];
    const project = example('studio');
    kept.run({ project, library, year });
    for (const change of changes) {
      change(project);
      const warm = kept.run({ project: structuredClone(project), library, year });
      const fresh = createEngine().run({ project: structuredClone(project), library, year });
      expect(warm.total).toEqual(fresh.total);
      expect(warm.rooms.map((r) => r.with)).toEqual(fresh.rooms.map((r) => r.with));
    }
  });

  it('are not computed again for a change of schedule', () => {
    const kept = createEngine();
    const year = exampleYear('studio');
    kept.run({ project: example('studio'), library, year });
    kept.cache.costs.clear();
    const project = example('studio');
    project.schedules[0].minMinutesBetweenMoves = 45;
    kept.run({ project, library, year });
    const stages = [...kept.cache.costs.keys()];
    for (const early of ['sun', 'sky', 'facade', 'view', 'opening', 'glass', 'screen', 'pose']) {
      expect(stages).not.toContain(early);
    }
    expect(stages).toContain('schedule');
  });
});

/** One square west window with a fin to the right, bare or with a blind, and its mirror image. */
function windowHouse(azimuth: number, fin: 'finLeft' | 'finRight', latitude = 45): Project {
  const project = example('studio');
  const [opening] = project.openings;
  const { overhang: _o, blind: _b, insectScreen: _s, ...plain } = opening;
  const place = { ...project.site, latitude, longitude: 0, timeZone: 'Etc/GMT', elevation: 100 };
  return {
    ...project,
    site: { ...place, horizon: [], albedo: 0.2 },
    walls: [{ ...project.walls[0], id: 'wall', azimuth }],
    openings: [
      {
        ...plain,
        wall: 'wall',
        [fin]: { projection: 0.5, offset: 0.1, above: 0.2, below: 0.1 },
      },
    ],
    groups: [],
    rooms: [],
  };
}

describe('symmetries', () => {
  const place = { latitude: 45, longitude: 0, elevation: 100 };

  // The clear year is alike before and after noon but for the equation of time and the drift of the
  // declination within a day; over a year they leave under 0.5 percent.
  it('mirrors east and west', () => {
    const year = clearYear(place);
    for (const azimuth of [90, 60, 135]) {
      const east = run(windowHouse(azimuth, 'finRight'), year).total;
      const west = run(windowHouse(360 - azimuth, 'finLeft'), year).total;
      for (const quantity of ['incident', 'sunlit', 'without'] as const) {
        expect(Math.abs(east[quantity].year / west[quantity].year - 1)).toBeLessThan(0.005);
      }
    }
  });

  it('mirrors a day hour by hour about noon', () => {
    const year = clearYear(place);
    const east = run(windowHouse(90, 'finRight'), year).openings[0].hourly.without;
    const west = run(windowHouse(270, 'finLeft'), year).openings[0].hourly.without;
    // 15 April: the equation of time is zero, so hour h mirrors hour 23 - h within its drift.
    const day = 104 * 24;
    const peak = Math.max(...east.subarray(day, day + 24));
    for (let h = 0; h < 24; h++) {
      expect(Math.abs(east[day + h] - west[day + 23 - h])).toBeLessThan(0.02 * peak);
    }
  });

  // Six months apart the two hemispheres have the same sun but for the orbit's own asymmetry: the
  // northern summer half-year is 186 days long, the southern 179, which is 4 percent of a year's
  // low or high sun.
  it('mirrors north and south with six months between them', () => {
    const south = { ...place, latitude: -45 };
    const northern = run(windowHouse(180, 'finRight', 45), clearYear(place)).total;
    const southern = run(windowHouse(0, 'finLeft', -45), clearYear(south)).total;
    for (const quantity of ['incident', 'sunlit', 'without'] as const) {
      expect(Math.abs(northern[quantity].year / southern[quantity].year - 1)).toBeLessThan(0.05);
      expect(Math.abs(northern[quantity].summer / southern[quantity].summer - 1)).toBeLessThan(
        0.03,
      );
    }
  });
});

describe('odd places', () => {
  it.each([
    ['polar day and night', 78.2, 15.6, 'Arctic/Longyearbyen'],
    ['the date line from the east', -16.8, 180, 'Pacific/Fiji'],
    ['the date line from the west', -16.8, -180, 'Pacific/Fiji'],
    ['a half-hour zone', 12.97, 77.6, 'Asia/Kolkata'],
    ['a half-hour summer time', -31.5, 159.1, 'Australia/Lord_Howe'],
    ['the pole', -90, 0, 'Antarctica/McMurdo'],
  ])('%s', (_name, latitude, longitude, timeZone) => {
    const project = example('studio');
    project.site = { ...project.site, latitude, longitude, timeZone, horizon: [] };
    project.year = 2028;
    const result = run(project, clearYear({ latitude, longitude, elevation: 0 }));
    expect(result.total.without.year).toBeGreaterThan(0);
    expect(result.total.with.year).toBeLessThanOrEqual(result.total.without.year);
    for (const opening of result.openings) {
      expect(opening.hourly.with.every(Number.isFinite)).toBe(true);
      if (opening.blind) expect(opening.blind.state).toHaveLength(STEPS);
    }
  });

  it('a pane leaning outward and a roof-light are fed by ground and sky as they should be', () => {
    const project = windowHouse(180, 'finRight');
    const gain = (tilt: number) => {
      const tilted = structuredClone(project);
      tilted.walls[0].tilt = tilt;
      return run(tilted, clearYear({ latitude: 45, longitude: 0, elevation: 100 })).total.incident;
    };
    expect(gain(110).summer).toBeLessThan(gain(90).summer);
    expect(gain(30).summer).toBeGreaterThan(gain(90).summer);
  });
});
