import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { InputError } from '../../../lib/problem/index.ts';
import { compileOpening, diffuseView } from '../../../lib/opening/index.ts';
import type { DirectionSet, HorizonPoint, OpeningGeometry } from '../../../lib/opening/index.ts';
import { mirrored, openings } from './arbitraries.ts';
import { bareOpening, randomFrom, randomOpening } from './rays.ts';
import { viewByRays } from './skyRays.ts';

const sum = (set: DirectionSet) => set.weight.reduce((s, w) => s + w, 0);
const wall = { azimuth: 200, tilt: 90 };

describe('diffuse view of an open plane', () => {
  it.each([0, 20, 45, 60, 89.999, 90, 90.001, 110, 150, 180])(
    'weights add up to (1 + cos B) / 2 of sky and the rest of ground at tilt %d',
    (tilt) => {
      const view = diffuseView(bareOpening(1, 1), { azimuth: 30, tilt });
      const cos = Math.cos((tilt * Math.PI) / 180);
      expect(sum(view.sky)).toBeCloseTo((1 + cos) / 2, 9);
      expect(sum(view.ground)).toBeCloseTo((1 - cos) / 2, 9);
      if (tilt > 0 && tilt < 180) expect(sum(view.horizon)).toBeCloseTo(1, 9);
      expect(view.bounceSky + view.bounceGround).toBe(0);
    },
  );

  it('keeps sky above and ground below the horizon, in few directions', () => {
    for (const tilt of [30, 90, 120]) {
      const view = diffuseView(bareOpening(1, 1), { azimuth: 0, tilt });
      expect(Math.min(...view.sky.profileAngle)).toBeGreaterThan(tilt - 90);
      expect(Math.max(...view.ground.profileAngle)).toBeLessThan(tilt - 90);
      expect(view.sky.weight.length + view.ground.weight.length).toBeLessThanOrEqual(500);
    }
  });

  it('gives the mean cosine of incidence of an even sky, 2/3', () => {
    // Integral of cos^2 over the hemisphere over that of cos: 2/3 for the whole, by symmetry each half.
    const { sky } = diffuseView(bareOpening(1, 1), wall);
    const mean = sky.weight.reduce((s, w, i) => s + w * sky.cosIncidence[i], 0) / sum(sky);
    expect(mean).toBeCloseTo(2 / 3, 3);
  });
});

describe('diffuse view by crossed strings (Hottel 1954)', () => {
  it('an endless slot', () => {
    // A slot 0.3 high and 0.2 deep, 10 m long, with glass in its middle 6 m: its ends, 2 m off, are
    // ten depths away and hold about (0.2 / 2)^2 / 2 = 0.005 x 0.2 of the view.
    const g: OpeningGeometry = {
      width: 10,
      height: 0.3,
      frame: { head: 0, sill: 0, left: 2, right: 2 },
      setBack: 0.2,
      reveal: { head: 0.2, sill: 0.2, left: 0, right: 0 },
      revealReflectance: 0,
    };
    const view = diffuseView(g, wall);
    const strings = (Math.hypot(0.3, 0.2) - 0.2) / 0.3;
    expect(Math.abs(sum(view.sky) - strings / 2)).toBeLessThan(0.003);
    expect(Math.abs(sum(view.ground) - strings / 2)).toBeLessThan(0.003);
  });

  it.each([0.4, 1, 2.5])('an endless overhang of %d m', (p) => {
    // Glass 1.5 m high under it: F to the overhang is (h + p - hypot(h, p)) / 2h. The quadrature's own
    // error is the tolerance; 50 m of run on each side hide all but 1e-4 of the ends.
    const g = {
      ...bareOpening(1, 1.5),
      overhang: { projection: p, aboveHead: 0, left: 50, right: 50 },
    };
    const view = diffuseView(g, wall);
    const hidden = (1.5 + p - Math.hypot(1.5, p)) / 3;
    expect(Math.abs(sum(view.sky) - (0.5 - hidden))).toBeLessThan(0.003);
    expect(sum(view.ground)).toBeCloseTo(0.5, 9);
  });
});

describe('diffuse view against rays', () => {
  // 130 x 130 rays, jittered in direction, at random on the glass: one sigma under 0.5 / 130 = 0.0038,
  // nearer 0.002 for the jitter; the quadrature's own error is about 0.001 (worst seen 0.004).
  const look = (k: number) => {
    const random = randomFrom(100 + k);
    const g = randomOpening(random);
    const tilt = k % 2 ? 90 : 5 + 125 * random();
    const horizon: HorizonPoint[] =
      k % 3 === 0
        ? []
        : Array.from({ length: 1 + Math.floor(8 * random()) }, () => ({
            azimuth: 360 * random(),
            altitude: Math.max(0, 40 * random() - 8),
          }));
    const plane = { azimuth: 360 * random(), tilt };
    const view = diffuseView(g, plane, horizon);
    return { g, plane, horizon, view, rays: viewByRays(g, plane, horizon, 130, random) };
  };
  let places: ReturnType<typeof look>[] = [];
  beforeAll(() => {
    places = Array.from({ length: 30 }, (_, k) => look(k));
  });

  it('sees as much sky and ground, within 0.01', () => {
    for (const { view, rays, ...place } of places) {
      expect(Math.abs(sum(view.sky) - rays.sky), JSON.stringify(place)).toBeLessThan(0.01);
      expect(Math.abs(sum(view.ground) - rays.ground), JSON.stringify(place)).toBeLessThan(0.01);
    }
  });

  it('sees as much of the horizon, within 0.01', () => {
    // 18 directions on a line, where a fin or a hill's end may fall between two: 0.004 at worst.
    for (const { view, rays, ...place } of places) {
      expect(Math.abs(sum(view.horizon) - rays.horizon), JSON.stringify(place)).toBeLessThan(0.01);
    }
  });

  it('gets as much by the reveal faces, within 0.006 and 10 % of the whole', () => {
    // The bounce's strips (see bounce.test.ts) err by sun direction; over the hemisphere that evens out.
    let by = 0;
    let of = 0;
    for (const { view, rays, ...place } of places) {
      const text = JSON.stringify(place);
      expect(Math.abs(view.bounceSky - rays.bounceSky), text).toBeLessThan(0.006);
      expect(Math.abs(view.bounceGround - rays.bounceGround), text).toBeLessThan(0.006);
      by += view.bounceSky + view.bounceGround;
      of += rays.bounceSky + rays.bounceGround;
    }
    expect(Math.abs(by / of - 1)).toBeLessThan(0.1);
  });
});

describe('horizon profile', () => {
  it('an even ring of hills takes the sky below it, worked by hand for a wall and a roof-light', () => {
    // A wall's sky between altitude h and the zenith: (1 / pi) x 2 x integral of cos^2 = 1/2 - (h +
    // sin h cos h) / pi; an upward plane's: cos^2 h.
    const hills = [{ azimuth: 0, altitude: 20 }];
    const h = (20 * Math.PI) / 180;
    const beside = diffuseView(bareOpening(1, 1), wall, hills);
    const above = diffuseView(bareOpening(1, 1), { azimuth: 0, tilt: 0 }, hills);
    const left = 0.5 - (h + Math.sin(h) * Math.cos(h)) / Math.PI;
    expect(Math.abs(sum(beside.sky) - left)).toBeLessThan(0.003);
    expect(Math.abs(sum(above.sky) - Math.cos(h) ** 2)).toBeLessThan(0.003);
    expect(sum(beside.horizon)).toBe(0);
    expect(sum(beside.ground)).toBeCloseTo(0.5, 9);
  });

  it('hills behind the wall hide nothing', () => {
    const hills = [
      { azimuth: 100, altitude: 0 },
      { azimuth: 20, altitude: 30 },
      { azimuth: 300, altitude: 0 },
    ];
    const view = diffuseView(bareOpening(1, 1), wall, hills);
    expect(sum(view.sky)).toBeCloseTo(0.5, 9);
    expect(sum(view.horizon)).toBeCloseTo(1, 9);
  });
});

describe('diffuse view: what must always hold', () => {
  const tilts = fc.double({ min: 0, max: 180, noNaN: true });

  it('never exceeds the open plane, shrinks as shades grow, and is the same in a mirror', () => {
    fc.assert(
      fc.property(openings, tilts, (g, tilt) => {
        const plane = { azimuth: 0, tilt };
        const view = diffuseView(g, plane);
        const cos = Math.cos((tilt * Math.PI) / 180);
        expect(sum(view.sky)).toBeLessThanOrEqual((1 + cos) / 2 + 1e-9);
        expect(sum(view.ground)).toBeLessThanOrEqual((1 - cos) / 2 + 1e-9);
        const total = sum(view.sky) + sum(view.ground) + view.bounceSky + view.bounceGround;
        expect(total).toBeLessThanOrEqual(1 + 1e-9);
        const other = diffuseView(mirrored(g), plane);
        expect(sum(other.sky)).toBeCloseTo(sum(view.sky), 9);
        expect(other.bounceGround).toBeCloseTo(view.bounceGround, 9);
        const overhang = g.overhang ?? { projection: 0, aboveHead: 0.1, left: 0.5, right: 0.5 };
        const longer = { ...overhang, projection: overhang.projection + 0.5 };
        const under = diffuseView({ ...g, overhang: longer }, plane);
        expect(sum(under.sky)).toBeLessThanOrEqual(sum(view.sky) + 1e-9);
        expect(sum(under.ground)).toBeLessThanOrEqual(sum(view.ground) + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it('weighs directions as the sunlit share does', () => {
    const g = randomOpening(randomFrom(5));
    const { sky } = diffuseView(g, wall);
    const open = diffuseView(bareOpening(1, 1), wall).sky;
    const shade = compileOpening(g);
    sky.weight.forEach((weight, i) => {
      const p = (sky.profileAngle[i] * Math.PI) / 180;
      const sz = sky.cosIncidence[i];
      const sy = sz * Math.tan(p);
      const sx = Math.sqrt(Math.max(0, 1 - sy * sy - sz * sz));
      const shares = [shade.sunlit(sx, sy, sz), shade.sunlit(-sx, sy, sz)];
      const share = weight / open.weight[i];
      expect(Math.min(...shares.map((s) => Math.abs(s - share)))).toBeLessThan(1e-6);
    });
  });

  it('refuses a tilt no plane has and an opening no one can build', () => {
    expect(() => diffuseView(bareOpening(1, 1), { azimuth: 0, tilt: 190 })).toThrow(InputError);
    expect(() => diffuseView(bareOpening(1, 1), { azimuth: NaN, tilt: 90 })).toThrow(InputError);
    expect(() => diffuseView(bareOpening(-1, 1), wall)).toThrow(InputError);
  });
});
