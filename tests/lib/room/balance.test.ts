import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CLOSURE_LIMIT,
  compileRoom,
  createRoom,
  runRoom,
  unbalanced,
  yearBalance,
  type HeatBalance,
  type Room,
  type RoomModelKind,
} from '../../../lib/room/index.ts';
import { HOURS } from '../../../lib/time/index.ts';
import { calendar } from './agreement.ts';
import { nightRule, opening, studio } from './rooms.ts';
import { syntheticWeather } from './syntheticWeather.ts';

const weather = { ...syntheticWeather(9, 3, 2500) };
const opaqueSun = weather.sun.map((w) => 0.02 * w);
const drivers = { ...weather, opaqueSun };

function busyRoom(kind: 'light' | 'heavy'): Room {
  return {
    ...studio(kind),
    airing: [
      nightRule,
      { ...nightRule, id: 'day', clock: undefined, position: 'turn', openAbove: 25 },
    ],
    cooling: { setPoint: 24.5, maxPower: 400 },
    ventilation: { flow: { kind: 'ach', ach: 0.4 }, heatRecovery: 0.85, bypassAbove: 23 },
  };
}

const cases: [string, Room, RoomModelKind][] = [
  ['light', busyRoom('light'), 'layered'],
  ['heavy', busyRoom('heavy'), 'layered'],
  ['by class', { ...busyRoom('heavy'), mass: { kind: 'class', class: 'medium' } }, 'layered'],
  ['five resistances', busyRoom('light'), 'fiveResistance'],
];

describe.each(cases)('the heat balance of a room: %s', (_, room, kind) => {
  const model = compileRoom(room, [opening], calendar, { groundTemperature: 10, kind });
  const year = runRoom(model, drivers, weather.sun);
  const terms = yearBalance(model, drivers, weather.sun, year);

  it('closes in every hour within 1e-6 W', () => {
    let worst = 0;
    const balance = {} as HeatBalance;
    const names = Object.keys(terms) as (keyof HeatBalance)[];
    for (let hour = 0; hour < HOURS; hour++) {
      for (const name of names) balance[name] = terms[name][hour];
      worst = Math.max(worst, Math.abs(unbalanced(balance)));
    }
    expect(worst).toBeLessThan(1e-6);
  });

  it('is put together from what went in', () => {
    const sum = (values: Float64Array) => values.reduce((a, b) => a + b, 0);
    expect(sum(terms.sun)).toBe(sum(weather.sun));
    expect(sum(terms.internal)).toBeCloseTo(190 * HOURS, 6);
    expect([...terms.heating]).toEqual([...year.heating]);
    // The year closes, so what is stored over it is next to nothing: 0.05 K of all that stores heat
    // (under 20 kWh/K for the heavy room) is 1 kWh at most.
    expect(Math.abs(sum(terms.storage))).toBeLessThan(1000);
    // Everything happens in this room: all parts of the code below the balance are at work.
    for (const values of [year.heating, year.cooling, year.airFlow]) {
      expect(values.filter((v) => v > 0).length).toBeGreaterThan(50);
    }
  });

  it('starts the year as it ends', () => {
    expect(year.closure).toBeLessThanOrEqual(CLOSURE_LIMIT);
    // Run once more from its end: the temperatures of the first day are those of the year.
    const again = createRoom(model);
    again.reset(year.start);
    const input = { sun: 0, outdoor: 0, wind: 0, opaqueSun: 0, flowFactor: new Float64Array([1]) };
    let other = 0;
    let apart = 0;
    for (let hour = 0; hour < HOURS + 24; hour++) {
      const h = hour % HOURS;
      input.sun = weather.sun[h];
      input.outdoor = weather.outdoor[h];
      input.wind = weather.wind[h];
      input.opaqueSun = opaqueSun[h];
      const { operative } = again.step(h, input);
      // Stepping by hand and running a year are one code.
      if (hour < HOURS && operative !== year.operative[hour]) other++;
      if (hour >= HOURS) apart = Math.max(apart, Math.abs(operative - year.operative[h]));
    }
    expect(other).toBe(0);
    expect(apart).toBeLessThanOrEqual(CLOSURE_LIMIT);
  });
});

it('a room that is never heated starts its year as it ends too', () => {
  const room: Room = { ...studio('heavy'), heating: undefined };
  const model = compileRoom(room, [opening], calendar, { groundTemperature: 10 });
  expect(runRoom(model, drivers, weather.sun).closure).toBeLessThanOrEqual(CLOSURE_LIMIT);
});

describe('rooms at random', () => {
  const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const arbitrary = fc.record({
    floorArea: range(4, 300),
    height: range(2, 5),
    mass: fc.oneof(
      fc.constantFrom('veryLight', 'light', 'medium', 'heavy', 'veryHeavy').map((c) => ({
        kind: 'class' as const,
        class: c as 'light',
      })),
      fc.record({
        kind: fc.constant('layers' as const),
        surfaces: fc.array(
          fc.record({
            name: fc.constant('s'),
            area: range(0.5, 400),
            layers: fc.array(
              fc.record({
                thickness: range(0.001, 0.6),
                conductivity: range(0.02, 60),
                density: range(10, 8000),
                specificHeat: range(400, 4200),
              }),
              { minLength: 1, maxLength: 4 },
            ),
          }),
          { minLength: 1, maxLength: 4 },
        ),
      }),
    ),
    UA: range(0, 400),
    groundUA: range(0, 60),
    bridges: range(0.1, 30),
    n50: range(0, 10),
    ach: range(0.1, 5),
    recovery: range(0, 1),
    window: range(0.1, 17),
    U: range(0.4, 6),
    heated: fc.boolean(),
    sun: range(0, 4),
    sash: range(0.1, 3),
    openAbove: range(18, 30),
    kind: fc.constantFrom<RoomModelKind>('layered', 'fiveResistance'),
  });

  it('stay finite, balanced and no cooler than the coldest of what surrounds them', () => {
    fc.assert(
      fc.property(arbitrary, (a) => {
        const room: Room = {
          ...studio('light'),
          floorArea: a.floorArea,
          volume: a.floorArea * a.height,
          mass: a.mass,
          envelope: { kind: 'total', UA: a.UA, groundUA: a.groundUA },
          thermalBridges: a.bridges,
          infiltration: { kind: 'n50', n50: a.n50, shielding: 0.07 },
          ventilation: {
            flow: { kind: 'ach', ach: a.ach },
            heatRecovery: a.recovery,
            bypassAbove: 24,
          },
          heating: a.heated ? { setPoint: 20 } : undefined,
          airing: [{ ...nightRule, position: 'turn', openAbove: a.openAbove, closeBelow: 17 }],
        };
        const window = {
          ...opening,
          area: a.window,
          U: a.U,
          airing: { kind: 'turn' as const, width: a.sash, height: 1.4, tiltAngle: 8 },
        };
        const model = compileRoom(room, [window], calendar, {
          groundTemperature: 9,
          kind: a.kind,
        });
        const stepping = createRoom(model);
        stepping.reset(15);
        const coldest = Math.min(9, 15, ...weather.outdoor);
        const balance = {} as HeatBalance;
        const flowFactor = new Float64Array([1]);
        let worst = 0;
        let lowest = Infinity;
        for (let hour = 4000; hour < 4400; hour++) {
          const step = stepping.step(hour, {
            sun: a.sun * weather.sun[hour],
            outdoor: weather.outdoor[hour],
            wind: weather.wind[hour],
            opaqueSun: 0,
            flowFactor,
          });
          // Rounding grows with the powers at work.
          const size = 1 + step.heating + a.sun * weather.sun[hour];
          worst = Math.max(worst, Math.abs(unbalanced(stepping.balance(balance))) / size);
          lowest = Math.min(lowest, step.operative);
          const total = step.air + step.operative + step.mass + step.airing + step.airConductance;
          if (!Number.isFinite(total)) worst = Infinity;
        }
        expect(worst).toBeLessThan(1e-6);
        if (a.kind === 'layered') expect(lowest).toBeGreaterThan(coldest - 0.5);
      }),
      { numRuns: 60, seed: 11 },
    );
  });
});
