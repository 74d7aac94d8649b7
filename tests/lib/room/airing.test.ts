import { describe, expect, it } from 'vitest';
import {
  airExchange,
  airHeatCapacity,
  airingFlow,
  airingSpeed,
  compileRoom,
  createRoom,
  infiltrationRate,
  openingRatio,
  sashArea,
  type AiringRule,
  type Room,
  type RoomInput,
  type RoomOpening,
} from '../../../lib/room/index.ts';
import { calendar } from './agreement.ts';
import { nightRule, opening, studio } from './rooms.ts';

describe('flow through one opening', () => {
  it('by hand: sqrt(0.001 w2 + 0.0035 h dT + 0.01)', () => {
    // w 2 m/s, h 1.2 m, dT 5 K: 0.004 + 0.021 + 0.01 = 0.035, root 0.187083 m/s.
    expect(airingSpeed(2, 1.2, 5)).toBeCloseTo(0.187083, 6);
    expect(airingSpeed(2, 1.2, -5)).toBeCloseTo(0.187083, 6);
    // Still air and no difference: the turbulence term alone, 0.1 m/s.
    expect(airingSpeed(0, 1, 0)).toBeCloseTo(0.1, 12);
    // Half of 0.8 m2 times 0.187083 m/s.
    expect(airingFlow(0.8, 2, 1.2, 5)).toBeCloseTo(0.0748331, 6);
  });

  it('by hand: share of the area a tilted sash opens', () => {
    // 8 degrees: 2.6e-7 x 512 - 1.19e-4 x 64 + 1.86e-2 x 8 = 0.000133 - 0.007616 + 0.1488.
    expect(openingRatio(8)).toBeCloseTo(0.141317, 6);
    expect(openingRatio(0)).toBe(0);
    // The polynomial's purpose: a sash turned right round is all open (within 1 % of 1).
    expect(Math.abs(openingRatio(180) - 1)).toBeLessThan(0.01);
    // 90 degrees: 0.18954 - 0.9639 + 1.674.
    expect(openingRatio(90)).toBeCloseTo(0.89964, 6);
  });

  it('a sash opens as far as its fittings allow', () => {
    const turn = { kind: 'turn', width: 1, height: 2, tiltAngle: 0 } as const;
    expect(sashArea(turn, 'turn')).toBeCloseTo(2 * 0.89964, 6);
    expect(sashArea(turn, 'tilt')).toBe(0);
    const tilt = { ...turn, kind: 'tilt', tiltAngle: 8 } as const;
    expect(sashArea(tilt, 'turn')).toBeCloseTo(2 * 0.141317, 6);
    expect(sashArea({ ...turn, kind: 'none' }, 'turn')).toBe(0);
  });

  it('leaks and ventilation by hand', () => {
    // 0.6 1/h at 50 Pa x 0.07 = 0.042 1/h.
    expect(infiltrationRate({ kind: 'n50', n50: 0.6, shielding: 0.07 })).toBeCloseTo(0.042, 12);
    const room: Room = {
      ...studio('light'),
      volume: 100,
      infiltration: { kind: 'n50', n50: 0.6, shielding: 0.07 },
      ventilation: { flow: { kind: 'volume', m3PerHour: 60 }, heatRecovery: 0.75 },
    };
    const exchange = airExchange(room, 1200);
    // 1200 J/m3K: 4.2 m3/h leak 1.4 W/K; 60 m3/h carry 20 W/K, a quarter of it with recovery.
    expect(exchange.infiltration).toBeCloseTo(1.4, 9);
    expect(exchange.bypassed).toBeCloseTo(20, 9);
    expect(exchange.recovered).toBeCloseTo(5, 9);
  });

  it('air at the height of Denver is a sixth thinner', () => {
    // US Standard Atmosphere 1976 tables: pressure ratio 0.8213 at 1,650 m (temperature kept).
    expect(airHeatCapacity(0)).toBe(1200);
    expect(airHeatCapacity(1650) / 1200).toBeCloseTo(0.8197, 2);
  });
});

/** A light room that is warm through and shut, and one hour of weather. */
function warmRoom(rules: AiringRule[], openings: RoomOpening[] = [opening], inside = 26) {
  const room: Room = { ...studio('light'), heating: undefined, airing: rules };
  const model = compileRoom(room, openings, calendar, { groundTemperature: 10 });
  const stepping = createRoom(model);
  stepping.reset(inside);
  const input: RoomInput = {
    sun: 0,
    outdoor: 18,
    wind: 2,
    opaqueSun: 0,
    flowFactor: new Float64Array(openings.length).fill(1),
  };
  return { stepping, input, model };
}

const always: AiringRule = { ...nightRule, clock: undefined };
/** 3 July, 13:00 and 23:00 local clock: hour 0 is local midnight of 1 January. */
const noon = 183 * 24 + 13;
const night = 183 * 24 + 23;

describe('airing a room', () => {
  it('the flow fits the temperature that the flow itself leaves', () => {
    for (const wind of [0, 2, 8]) {
      const { stepping, input, model } = warmRoom([always]);
      const step = stepping.step(noon, { ...input, wind });
      const difference = step.air - input.outdoor;
      const flow = airingFlow(2 * 0.1413171, wind, 2, difference);
      // Newton ends within its tolerance of 1e-3 K squared; a part in 10,000 is far above it.
      expect(step.airing / flow).toBeCloseTo(1, 4);
      const steady = model.exchange.infiltration + model.exchange.recovered;
      expect(step.airConductance).toBeCloseTo(steady + 1200 * step.airing, 9);
    }
  });

  it('opens above its limit and margin only', () => {
    const opens = (rule: Partial<AiringRule>, hour = noon, wind = 2, outdoor = 18) => {
      const { stepping, input } = warmRoom([{ ...always, ...rule }]);
      return stepping.step(hour, { ...input, wind, outdoor }).airing > 0;
    };
    expect(opens({})).toBe(true);
    expect(opens({ openAbove: 30 })).toBe(false);
    expect(opens({ margin: 9 })).toBe(false);
    expect(opens({}, noon, 2, 27)).toBe(false);
    expect(opens({ clock: nightRule.clock })).toBe(false);
    expect(opens({ clock: nightRule.clock }, night)).toBe(true);
    expect(opens({ months: [1, 12] })).toBe(false);
    expect(opens({ months: [7] })).toBe(true);
    expect(opens({ windLimit: 5 }, noon, 5)).toBe(false);
    expect(opens({ windLimit: 5 }, noon, 4.9)).toBe(true);
    expect(opens({ openings: [] })).toBe(false);
  });

  it('stays open down to its lower limit, holds it, and shuts till the upper one', () => {
    const rule: AiringRule = { ...always, position: 'turn', openAbove: 24, closeBelow: 21 };
    const { stepping, input } = warmRoom([rule]);
    const first = stepping.step(noon, input);
    expect(first.airing).toBeGreaterThan(0);
    let hours = 0;
    let shut = false;
    for (let hour = noon + 1; hour < noon + 200 && !shut; hour++, hours++) {
      const step = stepping.step(hour, input);
      // Never cooler than where it shuts; part of the hour open is enough to get there.
      expect(step.air).toBeGreaterThanOrEqual(21 - 1e-9);
      shut = step.airing === 0;
    }
    expect(shut).toBe(true);
    expect(stepping.state().open[0]).toBe(0);
    // Sun warms it: between the limits nothing opens, above the upper one it does.
    const warmed = { ...input, sun: 1500 };
    let step = stepping.step(noon, warmed);
    while (step.airing === 0) {
      expect(step.air).toBeLessThan(24);
      step = stepping.step(noon, warmed);
    }
    expect(hours).toBeLessThan(199);
  });

  it('does not flutter: under steady conditions air temperatures approach a limit in one direction', () => {
    const { stepping, input } = warmRoom([{ ...always, position: 'turn', closeBelow: 15 }]);
    let before = Infinity;
    for (let hour = noon; hour < noon + 60; hour++) {
      const { air } = stepping.step(hour, { ...input, wind: 9 });
      expect(air).toBeLessThan(before);
      before = air;
    }
  });

  it('while nobody is in it tilts, shuts or leaves open as told', () => {
    const flow = (whenVacant: AiringRule['whenVacant']) => {
      const room: Room = {
        ...studio('light'),
        heating: undefined,
        occupied: { weekday: [], weekend: [] },
        airing: [{ ...always, position: 'turn', whenVacant, closeBelow: 10 }],
      };
      const stepping = createRoom(
        compileRoom(room, [opening], calendar, { groundTemperature: 10 }),
      );
      stepping.reset(26);
      const flowFactor = new Float64Array([1]);
      return stepping.step(noon, { sun: 0, outdoor: 18, wind: 2, opaqueSun: 0, flowFactor }).airing;
    };
    expect(flow('closed')).toBe(0);
    expect(flow('tilt')).toBeGreaterThan(0);
    expect(flow('open')).toBeGreaterThan(2 * flow('tilt'));
  });

  it('screens and blinds take their part of the flow', () => {
    const { stepping, input } = warmRoom([always]);
    const free = stepping.step(noon, input).airing;
    stepping.reset(26);
    input.flowFactor[0] = 0.5;
    const halved = stepping.step(noon, input).airing;
    // Less flow leaves more difference, so a little more than half.
    expect(halved / free).toBeGreaterThan(0.5);
    expect(halved / free).toBeLessThan(0.6);
  });

  it('the first rule that opens a sash sets it', () => {
    const two = [opening, { ...opening, id: 'east' }];
    const tilt: AiringRule = { ...always, id: 'tilt', openings: ['west'], closeBelow: 10 };
    const turn: AiringRule = { ...always, id: 'turn', position: 'turn', closeBelow: 10 };
    const flow = (rules: AiringRule[]) => {
      const { stepping, input } = warmRoom(rules, two);
      const step = stepping.step(noon, input);
      return step.airing / airingSpeed(2, 2, step.air - 18);
    };
    const tilted = 2 * 0.141317;
    const turned = 2 * 0.89964;
    expect(flow([tilt, turn])).toBeCloseTo((tilted + turned) / 2, 3);
    expect(flow([turn, tilt])).toBeCloseTo(turned, 3);
  });
});

describe('passing the heat recovery by', () => {
  const room: Room = {
    ...studio('light'),
    heating: undefined,
    infiltration: { kind: 'ach', ach: 0 },
    ventilation: { flow: { kind: 'ach', ach: 0.5 }, heatRecovery: 0.8, bypassAbove: 23 },
  };
  const full = (1200 / 3600) * room.volume * 0.5;
  const stepping = createRoom(compileRoom(room, [opening], calendar, { groundTemperature: 10 }));
  const conductance = (inside: number, outdoor: number) => {
    stepping.reset(inside);
    const flowFactor = new Float64Array([1]);
    return stepping.step(noon, { sun: 0, outdoor, wind: 2, opaqueSun: 0, flowFactor });
  };

  it('while it is too warm inside and cooler outside', () => {
    expect(conductance(27, 18).airConductance).toBeCloseTo(full, 9);
    expect(conductance(27, 25).airConductance).toBeCloseTo(full, 9);
    expect(conductance(22, 10).airConductance).toBeCloseTo(0.2 * full, 9);
    // Warmer outside: the recovery keeps the heat out.
    expect(conductance(27, 33).airConductance).toBeCloseTo(0.2 * full, 9);
  });

  it('as far as it takes: not at all below the limit, all of it above, in part to hold it', () => {
    const found = { none: 0, part: 0, all: 0 };
    for (let inside = 22; inside < 27; inside += 0.02) {
      const step = conductance(inside, 5);
      const share = (step.airConductance / full - 0.2) / 0.8;
      if (share < 1e-9) {
        found.none++;
        expect(step.air).toBeLessThanOrEqual(23 + 1e-9);
      } else if (share > 1 - 1e-9) {
        found.all++;
        expect(step.air).toBeGreaterThanOrEqual(23 - 1e-9);
      } else {
        found.part++;
        expect(step.air).toBeCloseTo(23, 9);
      }
    }
    for (const count of Object.values(found)) expect(count).toBeGreaterThan(3);
  });
});
