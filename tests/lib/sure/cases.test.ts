import { describe, expect, it } from 'vitest';
import { validateBlind } from '../../../lib/blind/index.ts';
import { glassAngular } from '../../../lib/glazing/index.ts';
import { checkProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import {
  casesOf,
  changedYear,
  forgetful,
  forgottenDays,
  handMoved,
  normalsOfYear,
  toleratedBlind,
  toleratedGlazing,
  yearOfCase,
} from '../../../lib/sure/index.ts';
import { example, exampleYear, library } from '../study/support.ts';
import { paneHouse, paneYear } from '../decide/support.ts';
import { burlington } from './support.ts';

const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const sum = (values: Iterable<number>) => [...values].reduce((total, v) => total + v, 0);

describe('the cases', () => {
  const cases = casesOf(7);

  it('are at least twenty typical years and one change at a time, each with an id of its own', () => {
    expect(new Set(cases.map((c) => c.id)).size).toBe(cases.length);
    const years = cases.filter((c) => c.kind === 'plan' || c.kind === 'year');
    expect(new Set(years.map((c) => c.seed)).size).toBe(20);
    expect(years[0].seed).toBe(7);
    for (const { kind, warmer, sunnier, glass, blind, forgetful: forgets } of cases) {
      const changed = [warmer !== 0 || sunnier !== 1, glass !== 1, blind !== 1, forgets].filter(
        Boolean,
      );
      expect(changed).toHaveLength(kind === 'plan' || kind === 'year' ? 0 : 1);
    }
    expect(casesOf(undefined)[0].seed).toBeUndefined();
    expect(casesOf(4294967295).every((c) => c.seed! <= 4294967295)).toBe(true);
    expect(() => casesOf(1, { years: 19 })).toThrow(/20 to 200/);
  });

  it('differ in their hours but not in their monthly means', () => {
    const [first, second] = cases.map((c) => yearOfCase(burlington(), c));
    const [a, b] = [normalsOfYear(first), normalsOfYear(second)];
    expect(first.dryBulb).not.toEqual(second.dryBulb);
    for (let m = 0; m < 12; m++) {
      // What the builder promises: global within 0.5 %, temperature within 0.1 K of the normals.
      expect(Math.abs(a.ghiKWhPerM2Day[m] / b.ghiKWhPerM2Day[m] - 1)).toBeLessThan(0.01);
      expect(Math.abs(a.dryBulbMean[m] - b.dryBulbMean[m])).toBeLessThan(0.2);
    }
  });
});

describe('a year of a file', () => {
  const year = paneYear();
  const weather = { kind: 'file' as const, year };

  it('is itself in the planned case, and is built from its own monthly means in the others', () => {
    const [plan, next] = casesOf(undefined);
    expect(yearOfCase(weather, plan)).toBe(year);
    const built = yearOfCase(weather, next);
    expect([built.startUtc, built.latitude]).toEqual([year.startUtc, year.latitude]);
    const [wanted, got] = [normalsOfYear(year), normalsOfYear(built)];
    for (let m = 0; m < 12; m++) {
      expect(Math.abs(got.ghiKWhPerM2Day[m] / wanted.ghiKWhPerM2Day[m] - 1)).toBeLessThan(0.005);
      expect(Math.abs(got.dryBulbMean[m] - wanted.dryBulbMean[m])).toBeLessThan(0.1);
    }
  });

  it('made warmer and sunnier keeps the sun whole: global is direct on the level plus diffuse', () => {
    const more = changedYear(year, 2, 1.05);
    expect(sum(more.ghi) / sum(year.ghi)).toBeCloseTo(1.05, 10);
    for (let hour = 0; hour < 8760; hour += 7) {
      expect(more.dryBulb[hour] - year.dryBulb[hour]).toBeCloseTo(2, 10);
      // The height of the sun that global, direct and diffuse imply must stay as it was.
      const before = year.ghi[hour] - year.dhi[hour];
      const after = more.ghi[hour] - more.dhi[hour];
      expect(after * year.dni[hour]).toBeCloseTo(before * more.dni[hour], 4);
    }
  });
});

describe('tolerances', () => {
  it('move g by the factor at every angle, and leave blinds that can be', () => {
    for (const glazing of library.glazings) {
      const [was, is] = [glazing, toleratedGlazing(glazing, 0.95)].map((g) => glassAngular(g));
      expect(is.g[64] / was.g[64]).toBeCloseTo(0.95, 10);
    }
    for (const blind of library.blinds) {
      for (const factor of [0.8, 1.2]) {
        expect(validateBlind(toleratedBlind(blind, factor))).toEqual([]);
      }
    }
  });

  it('more light through a blind means more sun behind it', () => {
    const engine = createEngine();
    for (const blind of library.blinds.filter((b) => !b.id.startsWith('insect'))) {
      const project = paneHouse([{ azimuth: 270, width: 2, height: 2, blind: blind.id }]);
      const [less, plan, more] = [0.8, 1, 1.2].map((factor) => {
        const blinds = library.blinds.map((b) => toleratedBlind(b, factor));
        const input = { project, library: { ...library, blinds }, year: paneYear() };
        return engine.run(input).total.with.summer;
      });
      expect([less < plan, plan < more], blind.id).toEqual([true, true]);
    }
  });
});

describe('forgetful occupants', () => {
  it('forget one day of every five, the same days for a seed', () => {
    const days = forgottenDays(3);
    expect(days.map((d) => Math.floor(d / 5))).toEqual(Array.from({ length: 73 }, (_, i) => i));
    expect(forgottenDays(3)).toEqual(days);
    expect(forgottenDays(4)).not.toEqual(days);
    // Each place in the five is taken about as often: 73 draws, three deviations of the binomial.
    const places = [0, 1, 2, 3, 4].map((k) => days.filter((d) => d % 5 === k).length);
    for (const count of places) expect(Math.abs(count - 14.6)).toBeLessThan(3 * 3.42);
  });

  it('move by hand what goes by the clock, and internal blinds; drives with sensors stay', () => {
    expect([...handMoved(example('studio'), library)]).toEqual(['roof-light']);
    const clock = handMoved(example('bellingham'), library);
    const project = example('bellingham');
    const bySchedule = (id: string) =>
      project.openings.filter((o) => o.blind?.schedule === id).map((o) => o.id);
    expect(bySchedule('east-early').every((id) => clock.has(id))).toBe(true);
    expect(bySchedule('west-evening').some((id) => clock.has(id))).toBe(false);
  });

  it('leave the blind up all through those days and as it was on the others', () => {
    const blind = 'internal-roller-white';
    const project = paneHouse([{ azimuth: 270, width: 2, height: 2, blind }]);
    const changed = forgetful(project, library, 3);
    expect(checkProject(plain(changed), library).problems).toEqual([]);
    const engine = createEngine();
    const run = (p: Project) => engine.run({ project: p, library, year: paneYear() });
    const [was, is] = [project, changed].map((p) => run(p));
    const forgotten = new Set(forgottenDays(3));
    let spared = 0;
    is.openings[0].blind!.state.forEach((state, step) => {
      const day = is.calendar.day[step];
      if (forgotten.has(day)) {
        expect(state).toBe(0);
        spared += was.openings[0].blind!.state[step] === 0 ? 0 : 1;
      } else expect(state).toBe(was.openings[0].blind!.state[step]);
    });
    expect(spared).toBeGreaterThan(100);
  });

  it('never lower the hours where a blind does nothing but keep sun out', () => {
    const engine = createEngine();
    const blind = 'internal-roller-white';
    const project = paneHouse([{ azimuth: 270, width: 2, height: 2, blind }]);
    const hours = (p: Project) =>
      engine.run({ project: p, library, year: paneYear() }).rooms[0].with.chosen.hoursOver;
    for (const seed of [1, 2, 3]) {
      expect(hours(forgetful(project, library, seed))).toBeGreaterThan(hours(project));
    }
  });
});

describe('warmer years', () => {
  it('never mean fewer hours in the studio', () => {
    const engine = createEngine();
    const project = example('studio');
    const hours = [0, 1, 2].map((warmer) => {
      const year = changedYear(exampleYear('studio'), warmer, 1);
      return engine.run({ project, library, year }).rooms[0].with.chosen.hoursOver;
    });
    expect(hours[0]).toBeLessThan(hours[1]);
    expect(hours[1]).toBeLessThan(hours[2]);
  });
});
