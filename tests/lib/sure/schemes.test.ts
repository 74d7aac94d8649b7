import { describe, expect, it } from 'vitest';
import { blindOptics, diffuseOptics } from '../../../lib/blind/index.ts';
import { checkProject } from '../../../lib/project/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import { compareSchemes, stockSchemes } from '../../../lib/sure/index.ts';
import { paneHouse, paneYear } from '../decide/support.ts';
import { example, exampleYear, library } from '../study/support.ts';

const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

describe('schemes side by side', () => {
  const project = example('bellingham');
  const input = { project, library, year: exampleYear('bellingham') };
  const engine = createEngine();
  const schemes = stockSchemes(project, library);
  const figures = compareSchemes(input, schemes, engine);
  const of = (id: string) => figures.find((f) => f.id === id)!;

  it('are sound projects, compared on the same axes', () => {
    for (const scheme of schemes) {
      expect(checkProject(plain(scheme.project), library).problems).toEqual([]);
    }
    for (const { criteria } of figures) {
      expect(criteria.map((c) => c.title)).toEqual(figures[0].criteria.map((c) => c.title));
    }
    expect(plain(figures)).toEqual(figures);
  });

  it('tell what the study of each tells', () => {
    schemes.forEach((scheme, i) => {
      const study = createEngine().run({ ...input, project: scheme.project });
      const hours = study.rooms.reduce((sum, r) => sum + r.with.chosen.hoursOver, 0);
      const heating = study.rooms.reduce((sum, r) => sum + r.with.heatingKWh, 0);
      expect(figures[i].hours).toBe(hours);
      expect(figures[i].heatingKWh).toBeCloseTo(heating, 9);
      expect(figures[i].summerGain).toBeCloseTo(study.total.with.summer, 9);
    });
  });

  it('blinds everywhere keep out sun and view; none keep out neither', () => {
    expect([of('none').blinds, of('none').viewHoursLost, of('none').movesPerDay]).toEqual([
      0, 0, 0,
    ]);
    expect(of('external').externalBlinds).toBe(of('external').blinds);
    expect(of('internal').externalBlinds).toBe(0);
    expect(of('external').summerGain).toBeLessThan(of('internal').summerGain);
    expect(of('internal').summerGain).toBeLessThan(of('none').summerGain);
    expect(of('external').viewHoursLost).toBeGreaterThan(0);
    expect(of('external').daylight.left).toBeLessThan(of('none').daylight.left);
    expect(of('overhang').summerGain).toBeLessThan(of('none').summerGain);
    for (const f of figures) {
      expect(f.viewHoursCovered).toBeLessThanOrEqual(f.viewHoursLost);
      expect(f.viewHoursLost).toBeLessThanOrEqual(f.viewHours);
      expect(f.daylight.left).toBeLessThanOrEqual(f.daylight.bare);
    }
  });
});

describe('a scheme that was kept before the house was changed', () => {
  it('is compared on the site and by the criterion of the house as it is now', () => {
    const year = paneYear();
    const project = paneHouse([{ azimuth: 180, width: 2, height: 1.5 }]);
    const before = structuredClone(project);
    before.site.albedo = 0.8;
    before.site.horizon = [
      { azimuth: 90, altitude: 40 },
      { azimuth: 270, altitude: 40 },
    ];
    before.settings.criterion = 'adaptive';
    before.settings.overheatingLimit = 40;
    const [now, kept] = compareSchemes({ project, library, year }, [
      { id: 'now', name: 'Now', project },
      { id: 'kept', name: 'Kept', project: before },
    ]);
    expect(now.hours).toBeGreaterThan(0);
    expect({ ...kept, id: 'now', name: 'Now' }).toEqual(now);
    const own = createEngine().run({ project: before, library, year });
    expect(own.total.with.summer).not.toBeCloseTo(now.summerGain, 1);
  });
});

describe('daylight left', () => {
  const pane = { azimuth: 180, width: 2, height: 1.5 };
  const always = (share?: number) => {
    const project = paneHouse([{ ...pane, blind: 'external-screen-zip' }]);
    const rules = [{ id: 'down', when: {}, then: { kind: 'lower' as const, share } }];
    const schedules = [{ ...project.schedules[0], rules }];
    // Calm weather: no wind raises it.
    const still = { ...paneYear(), wind: new Float64Array(8760) };
    const input = { project: { ...project, schedules }, library, year: still };
    return compareSchemes(input, [{ id: 'one', name: 'One', project: input.project }])[0];
  };

  it('of a blind that is always down is what it lets through, of a half-down one half of that', () => {
    const blind = library.blinds.find((b) => b.id === 'external-screen-zip')!;
    const { all } = diffuseOptics(blindOptics(blind, { kind: 'down' }));
    const through = all.tauDirect + all.tauDiffuse;
    const [down, half] = [always(), always(0.5)];
    expect(down.daylight.left / down.daylight.bare).toBeCloseTo(through, 10);
    expect(half.daylight.left / half.daylight.bare).toBeCloseTo(0.5 + 0.5 * through, 10);
    expect(down.viewHoursLost).toBe(down.viewHours);
    expect(half.viewHoursCovered).toBeCloseTo(half.viewHours / 2, 10);
    expect(half.viewHoursLost).toBe(half.viewHours);
  });

  it('of bare glass is glass area times visible transmittance over floor area, worked by hand', () => {
    const project = paneHouse([pane]);
    const [figures] = compareSchemes({ project, library, year: paneYear() }, [
      { id: 'bare', name: 'Bare', project },
    ]);
    const [opening] = project.openings;
    const { left, right, head, sill } = opening.frame.widths;
    const glass = (opening.width - left - right) * (opening.height - head - sill);
    const glazing = library.glazings.find((g) => g.id === opening.glazing)!;
    const wanted = (100 * glass * glazing.visibleTransmittance) / project.rooms[0].floorArea;
    expect(figures.daylight.bare).toBeCloseTo(wanted, 9);
    expect(figures.daylight.left).toBeCloseTo(wanted, 9);
  });
});
