import { describe, expect, it } from 'vitest';
import {
  compileRoom,
  overheatingCauses,
  runRoom,
  sourceRises,
  usefulGains,
  type Room,
  type RoomModelKind,
} from '../../../lib/room/index.ts';
import { HOURS } from '../../../lib/time/index.ts';
import { calendar } from './agreement.ts';
import { nightRule, opening, studio } from './rooms.ts';
import { syntheticWeather } from './syntheticWeather.ts';

const weather = syntheticWeather(11, 5, 2200);
/** The same sun turned to the morning, weaker. */
const morning = weather.sun.map((_, hour) => {
  const h = hour % 24;
  return 0.4 * weather.sun[hour - h + (23 - h)];
});
const both = weather.sun.map((w, hour) => w + morning[hour]);
const openings = [
  { ...opening, id: 'west', area: 8 },
  { ...opening, id: 'east', area: 4 },
];
const suns = [
  { id: 'west', sun: weather.sun },
  { id: 'east', sun: morning },
];
const drivers = { ...weather, opaqueSun: weather.sun.map((w) => 0.01 * w) };

function lived(kind: 'light' | 'heavy'): Room {
  const room = studio(kind);
  return {
    ...room,
    airing: [nightRule],
    cooling: { setPoint: 29 },
    envelope: {
      kind: 'parts',
      parts: (room.envelope.kind === 'parts' ? room.envelope.parts : []).map((p) =>
        p.name === 'floor' ? { ...p, boundary: 'ground' as const } : p,
      ),
    },
  };
}

const cases: ['light' | 'heavy', RoomModelKind][] = [
  ['light', 'layered'],
  ['heavy', 'layered'],
  ['light', 'fiveResistance'],
];

describe.each(cases)('causes of heat in a %s room, %s', (weight, kind) => {
  const model = compileRoom(lived(weight), openings, calendar, { groundTemperature: 11, kind });
  const year = runRoom(model, drivers, both);

  it('the parts add up to the temperature in every hour of the year', () => {
    const rises = sourceRises(model, drivers, suns, year, 25);
    let worst = 0;
    for (let hour = 0; hour < HOURS; hour++) {
      const whole = rises.reduce((sum, { rise }) => sum + rise[hour], 0);
      worst = Math.max(worst, Math.abs(whole - (year.operative[hour] - 25)));
    }
    // Superposition of a linear room: rounding only.
    expect(worst).toBeLessThan(1e-8);
  });

  it('the parts add up to all degree-hours', () => {
    const report = overheatingCauses(model, drivers, suns, year, 25);
    const over = year.operative.filter((t) => t > 25);
    expect(report.hours).toBe(over.length);
    expect(report.hours).toBeGreaterThan(100);
    expect(report.degreeHours).toBeCloseTo(
      over.reduce((sum, t) => sum + t - 25, 0),
      6,
    );
    const parts = report.causes.reduce((sum, c) => sum + c.degreeHours, 0);
    expect(parts).toBeCloseTo(report.degreeHours, 6);
    const shares = report.causes.reduce((sum, c) => sum + c.share, 0);
    expect(shares).toBeCloseTo(1, 9);
    const by = (k: string, id?: string) =>
      report.causes.find((c) => c.kind === k && c.opening === id)!;
    // West lets in 2.5 times the sun of the east and more of it while the room is hot.
    expect(by('opening', 'west').share).toBeGreaterThan(2 * by('opening', 'east').share);
    expect(by('people').meanRise).toBeGreaterThan(0);
    // 90 W of people and 100 W of appliances have the same course.
    expect(by('people').degreeHours / by('appliances').degreeHours).toBeCloseTo(0.9, 6);
    expect(by('cooling').meanRise).toBeLessThanOrEqual(0);
    expect(by('cooling').degreeHours).toBeCloseTo(0, 6);
  });
});

describe('one source alone', () => {
  it('in a room that is never aired its rise is what taking it away does', () => {
    // An independent way to the same figure: run the year again without the source. It holds where
    // no air, heating or cooling answers to the temperature.
    const room: Room = { ...studio('light'), heating: undefined };
    const model = compileRoom(room, openings, calendar, { groundTemperature: 11 });
    const year = runRoom(model, drivers, both);
    const without = runRoom(model, drivers, morning);
    const rises = sourceRises(model, drivers, suns, year, 25);
    const west = rises.find((r) => r.opening === 'west')!.rise;
    let worst = 0;
    for (let hour = 0; hour < HOURS; hour++) {
      worst = Math.max(
        worst,
        Math.abs(west[hour] - (year.operative[hour] - without.operative[hour])),
      );
    }
    // Each year closes within 0.05 K; both ends add.
    expect(worst).toBeLessThan(0.1);
  });

  it('a cool year has no causes', () => {
    const model = compileRoom(studio('light'), openings, calendar, { groundTemperature: 11 });
    const year = runRoom(model, drivers, both);
    const report = overheatingCauses(model, drivers, suns, year, 80);
    expect(report.hours).toBe(0);
    expect(report.causes.every((c) => c.share === 0 && c.meanRise === 0)).toBe(true);
  });
});

describe('useful sun', () => {
  const cold = { ...weather, outdoor: weather.outdoor.map((t) => t - 6) };

  it('a little sun on a cold heavy room saves nearly all it brings', () => {
    // In a room that is heated on every day the sun comes, and never above its set-point, each
    // watt-hour of sun is one of heat saved but for what the warmer air and surfaces lose at once.
    const model = compileRoom(studio('heavy'), openings, calendar, { groundTemperature: 5 });
    const winter = weather.sun.map((w, hour) => (hour < 1400 || hour > 8000 ? 0.1 * w : 0));
    const useful = usefulGains(model, cold, winter);
    expect(useful.usefulShare).toBeGreaterThan(0.93);
    expect(useful.usefulShare).toBeLessThan(1.01);
    expect(useful.heatingWithout - useful.heating).toBeCloseTo(
      useful.usefulShare * useful.sunOnHeatingDays,
      6,
    );
  });

  it('much sun is of less use, and less in a light room', () => {
    const share = (kind: 'light' | 'heavy') => {
      const model = compileRoom(studio(kind), openings, calendar, { groundTemperature: 5 });
      return usefulGains(model, cold, both).usefulShare;
    };
    const light = share('light');
    const heavy = share('heavy');
    expect(light).toBeLessThan(0.93);
    expect(light).toBeGreaterThan(0.1);
    expect(heavy).toBeGreaterThan(light);
  });

  it('the last opening in saves no more than alone', () => {
    const model = compileRoom(studio('light'), openings, calendar, { groundTemperature: 5 });
    const last = usefulGains(model, cold, both, runRoom(model, cold, both), morning);
    const alone = usefulGains(model, cold, morning);
    const saved = (u: typeof last) => u.heatingWithout - u.heating;
    expect(saved(last)).toBeGreaterThan(0);
    expect(saved(last)).toBeLessThan(saved(alone));
  });

  it('an unheated room has no use for it', () => {
    const room: Room = { ...studio('light'), heating: undefined };
    const model = compileRoom(room, openings, calendar, { groundTemperature: 5 });
    expect(usefulGains(model, cold, both).usefulShare).toBe(0);
  });
});
