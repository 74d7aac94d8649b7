import { describe, expect, it } from 'vitest';
import {
  compileRoom,
  createRoom,
  opaqueSunHeat,
  type OpaquePart,
  type Room,
  type RoomModelKind,
  type RoomOpening,
} from '../../../lib/room/index.ts';
import { symmetricEigen } from '../../../lib/room/eigen.ts';
import { calendar } from './agreement.ts';
import { opening, studio, uValue, buildUps, windowArea, windowU } from './rooms.ts';

const none = Array<number>(24).fill(0);

/** Runs hours of one steady input and gives the last hour. */
function settle(
  room: Room,
  openings: RoomOpening[],
  kind: RoomModelKind,
  sun: number,
  outdoor: number,
  opaqueSun = 0,
) {
  const stepping = createRoom(
    compileRoom(room, openings, calendar, { groundTemperature: 12, kind }),
  );
  const flowFactor = new Float64Array(openings.length).fill(1);
  for (let i = 0; i < 8000; i++) {
    stepping.step(i % 8760, { sun, outdoor, wind: 3, opaqueSun, flowFactor });
  }
  return stepping.step(0, { sun, outdoor, wind: 3, opaqueSun, flowFactor });
}

function quiet(kind: 'light' | 'heavy' = 'light'): Room {
  const people = { weekday: none, weekend: none };
  return { ...studio(kind), people, appliances: people, heating: undefined };
}

describe('steady states', () => {
  for (const kind of ['layered', 'fiveResistance'] as const) {
    it(`${kind}: a room without gains takes the outdoor temperature`, () => {
      const step = settle(quiet(), [opening], kind, 0, 17);
      // Nothing but rounding: 8,000 hours are over 50 time constants.
      expect(step.air).toBeCloseTo(17, 9);
      expect(step.operative).toBeCloseTo(17, 9);
      expect(step.mass).toBeCloseTo(17, 9);
    });

    it(`${kind}: heat to hold 20 C is the sum of U times area and the air's part`, () => {
      const room: Room = { ...quiet(), heating: { setPoint: 20 } };
      const walls = buildUps.light
        .filter((w) => !w.inside)
        .reduce((sum, w) => sum + w.area * uValue(w), 0);
      const loss = (walls + windowArea * windowU + 3.622667) * 20;
      // U-values refer to one room temperature; the models part air from radiant temperature and
      // hold the operative one, which moves the loss by a few percent at most.
      const { heating } = settle(room, [opening], kind, 0, 0);
      expect(heating / loss).toBeGreaterThan(0.97);
      expect(heating / loss).toBeLessThan(1.05);
    });
  }

  it('all loss by air: air = outdoors + heat over the conductance of the air', () => {
    // No wall leads out and thermal bridges of 1 W/K join the air to outdoors, so by hand
    // H = 1 + 1200/3600 x 98.8 m3 x (0.04 + 0.35 x 0.2) = 4.622667 W/K; 500 W of sun over it.
    const surfaces = buildUps.light.map((w) => ({ name: w.name, area: w.area, layers: w.layers }));
    const room: Room = {
      ...quiet(),
      mass: { kind: 'layers', surfaces },
      envelope: { kind: 'total', UA: 0 },
      thermalBridges: 1,
    };
    expect(settle(room, [], 'layered', 500, 10).air).toBeCloseTo(10 + 500 / 4.622667, 2);
  });

  it('a floor on the ground of 12 C pulls the room towards it', () => {
    // All else adiabatic but the leaks: the room sits between ground and outdoors by conductance:
    // (UA 12 + H 2) / (UA + H), with the air and radiant temperatures a little apart.
    const room: Room = {
      ...quiet(),
      mass: { kind: 'class', class: 'heavy' },
      envelope: {
        kind: 'parts',
        parts: [{ name: 'floor', area: 38, U: 0.2, boundary: 'ground' }],
      },
    };
    const H = 3.622667;
    const expected = (7.6 * 12 + H * 2) / (7.6 + H);
    expect(Math.abs(settle(room, [], 'layered', 0, 2).operative - expected)).toBeLessThan(0.15);
  });

  it('a limited heater leaves the room cooler than its set-point and gives all it has', () => {
    const room: Room = { ...quiet(), heating: { setPoint: 20, maxPower: 200 } };
    const step = settle(room, [opening], 'layered', 0, -10);
    expect(step.heating).toBe(200);
    expect(step.operative).toBeLessThan(19);
  });

  it('cooling holds its set-point and never heats', () => {
    const room: Room = { ...quiet(), cooling: { setPoint: 25 } };
    const step = settle(room, [opening], 'layered', 1500, 20);
    expect(step.operative).toBeCloseTo(25, 9);
    expect(step.cooling).toBeGreaterThan(0);
    expect(step.heating).toBe(0);
  });
});

describe('sun on the opaque parts', () => {
  const part: OpaquePart = { name: 'roof', area: 20, U: 0.12, boundary: 'outdoor' };

  it('by hand: absorptance x irradiance x area x U x 0.04 m2K/W', () => {
    // 0.6 x 500 W/m2 x 20 m2 x 0.12 W/m2K x 0.04 m2K/W.
    expect(opaqueSunHeat({ ...part, solarAbsorptance: 0.6 }, 500)).toBeCloseTo(28.8, 9);
    expect(opaqueSunHeat(part, 500)).toBe(0);
    expect(opaqueSunHeat({ ...part, solarAbsorptance: 0.6, boundary: 'ground' }, 500)).toBe(0);
  });

  it('spares a heated room as much heat once it is steady', () => {
    const room: Room = { ...quiet('heavy'), heating: { setPoint: 20 } };
    const need = (opaqueSun: number) => settle(room, [opening], 'layered', 0, 0, opaqueSun).heating;
    // Less 0.13 U (1.6 %) for the inside resistance it does not pass, and less what warmer surfaces
    // and cooler air lose more at the same operative temperature: 5 % in all is ample.
    expect((need(0) - need(100)) / 100).toBeGreaterThan(0.95);
    expect((need(0) - need(100)) / 100).toBeLessThan(0.9845);
  });
});

describe('a slab that is suddenly exposed to cold air', () => {
  it('cools as the series solution of a plane wall says', () => {
    // Concrete, 0.2 m, tight behind, 100 m2, from 20 C into air of 0 C. The air node is next to
    // massless (floor 0.5 m2) and stands between the slab (2.5 W/m2K, 100 m2) and outdoors (H), so
    // h = 1 / (1/2.5 + 100/H). Mean temperature: sum of C_n exp(-z_n^2 Fo) sin(z_n) / z_n with
    // z tan z = Bi (Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 5th ed. 2002,
    // eqs. 5.39 and 5.46).
    const area = 100;
    const L = 0.2;
    const material = { conductivity: 1.65, density: 2200, specificHeat: 1000 };
    const room: Room = {
      ...quiet(),
      floorArea: 0.5,
      volume: 1.5,
      mass: {
        kind: 'layers',
        surfaces: [{ name: 'slab', area, layers: [{ ...material, thickness: L }] }],
      },
      envelope: { kind: 'total', UA: 0 },
      thermalBridges: 400,
      infiltration: { kind: 'ach', ach: 0.3 },
      ventilation: { flow: { kind: 'ach', ach: 0 }, heatRecovery: 0 },
    };
    const model = compileRoom(room, [], calendar, { groundTemperature: 12, tolerance: 0 });
    const H = 400 + (1200 / 3600) * 1.5 * 0.3;
    const h = 1 / (1 / 2.5 + area / H);
    const Bi = (h * L) / material.conductivity;
    const diffusivity = material.conductivity / (material.density * material.specificHeat);
    const stepping = createRoom(model);
    stepping.reset(20);
    const z = slabRoots(Bi);
    for (let hour = 0; hour < 72; hour++) {
      const { mass } = stepping.step(hour, {
        sun: 0,
        outdoor: 0,
        wind: 0,
        opaqueSun: 0,
        flowFactor: new Float64Array(0),
      });
      let mean = 0;
      for (let minute = 0; minute < 60; minute++) {
        const Fo = (diffusivity * (hour * 3600 + minute * 60 + 30)) / (L * L);
        mean += (20 * meanOfSlab(z, Fo)) / 60;
      }
      // Eight slices stand for the slab, and the mean counts the air's 5 kJ/K against 44 MJ/K: both
      // are under a thousandth of the 20 K.
      expect(Math.abs(mass - mean)).toBeLessThan(0.03);
    }
  });
});

/** The first roots of z tan z = Bi. */
function slabRoots(Bi: number): number[] {
  return Array.from({ length: 20 }, (_, n) => {
    let low = n * Math.PI;
    let high = low + Math.PI / 2 - 1e-12;
    for (let i = 0; i < 60; i++) {
      const z = (low + high) / 2;
      if (z * Math.tan(z) < Bi) low = z;
      else high = z;
    }
    return low;
  });
}

/** Mean excess temperature of a slab as a share of the first. */
function meanOfSlab(roots: number[], Fo: number): number {
  return roots.reduce((sum, z) => {
    const c = (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z));
    return sum + (c * Math.exp(-z * z * Fo) * Math.sin(z)) / z;
  }, 0);
}

describe('eigenvalues', () => {
  it('of a chain are those of the textbook: 2 - 2 cos(k pi / (n + 1))', () => {
    // Strang, Introduction to Linear Algebra, second-difference matrix.
    const n = 24;
    const a = new Float64Array(n * n);
    for (let i = 0; i < n; i++) {
      a[i * n + i] = 2;
      if (i > 0) a[i * n + i - 1] = a[(i - 1) * n + i] = -1;
    }
    const whole = a.slice();
    const { values, vectors } = symmetricEigen(a, n);
    const sorted = [...values].sort((p, q) => p - q);
    sorted.forEach((value, k) =>
      expect(value).toBeCloseTo(2 - 2 * Math.cos(((k + 1) * Math.PI) / (n + 1)), 12),
    );
    for (let k = 0; k < n; k++) {
      for (let i = 0; i < n; i++) {
        let image = 0;
        for (let j = 0; j < n; j++) image += whole[i * n + j] * vectors[j * n + k];
        expect(image).toBeCloseTo(values[k] * vectors[i * n + k], 12);
      }
    }
  });
});
