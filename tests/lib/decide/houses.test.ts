import { describe, expect, it } from 'vitest';
import {
  Judged,
  blockJudge,
  blocksOf,
  externalsOn,
  searchBlinds,
  searchSets,
} from '../../../lib/decide/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { createEngine } from '../../../lib/study/index.ts';
import { library } from '../study/support.ts';
import { paneHouse, paneYear, seeded } from './support.ts';

const engine = createEngine();
/** Runs plans by the study alone, apart from the engine the search works with. */
const apart = createEngine();
const CRITERIA = ['shareAbove', 'adaptive', 'din4108'] as const;

/** A house of four or six panes; some move in a group, some by the temperature of the room. */
function randomHouse(seed: number): Project {
  const next = seeded(1000 + 77 * seed);
  const within = (least: number, most: number) => least + (most - least) * next();
  const panes = Array.from({ length: seed % 3 === 0 ? 6 : 4 }, (_, i) => ({
    azimuth: Math.round(within(0, 359)),
    width: within(0.6, 2.4),
    height: within(0.8, 2.2),
    blind: next() < 0.5 ? 'external-screen-zip' : undefined,
    room: seed % 5 === 4 ? i % 2 : 0,
  }));
  const house = paneHouse(panes, seed % 5 === 4 ? 2 : 1);
  const settings = {
    ...house.settings,
    criterion: CRITERIA[seed % 3],
    overheatingShare: within(0.06, 0.2),
  };
  const grouped = seed % 2 === 1;
  const group = { id: 'all', name: 'All', channel: 1, schedule: 'sunny', lead: 'any' };
  const openings = house.openings.map((o) =>
    o.blind && grouped ? { ...o, blind: { blind: o.blind.blind, group: 'all' } } : o,
  );
  const schedules = house.schedules.map((s) =>
    seed === 7
      ? {
          ...s,
          rules: s.rules.map((r) => ({
            ...r,
            when: { ...r.when, roomAbove: { at: 23, release: 22 } },
          })),
        }
      : s,
  );
  return { ...house, settings, openings, schedules, groups: grouped ? [group] : [] };
}

describe('ten random houses', () => {
  it.each(Array.from({ length: 10 }, (_, i) => i))(
    'house %i: exact search equals all sets',
    (i) => {
      const project = randomHouse(i);
      const input = { project, library, year: paneYear() };
      for (const block of blocksOf(project)) {
        const count = block.openings.length;
        const judge = blockJudge(engine, input, block, block.openings, 'north');
        const found = searchBlinds(new Judged(count, judge), Array<number>(count).fill(1));
        const all = Array.from({ length: 2 ** count }, (_, mask) => {
          const choice = Uint8Array.from({ length: count }, (__, k) => (mask >> k) & 1);
          return { size: choice.reduce((s, x) => s + x, 0), choice, ...judge(choice) };
        });
        const kept = all.filter((c) => c.broken === 0);
        const least = Math.min(...kept.map((c) => c.size));
        expect(found.smallest?.cost ?? Infinity).toBe(least);
        for (let size = 0; size <= count; size++) {
          const same = all.filter((c) => c.size === size);
          const broken = Math.min(...same.map((c) => c.broken));
          const hours = Math.min(...same.filter((c) => c.broken === broken).map((c) => c.hours));
          expect(found.front[size].outcome).toEqual({ broken, hours });
        }

        // The fast judge against the study itself, which sums and runs everything afresh.
        for (const { choice, broken, hours } of [all[1], all[all.length - 2]]) {
          const chosen = new Set(block.openings.filter((_, k) => choice[k] === 1));
          const plan = externalsOn(project, library, chosen, 'north');
          const rooms = apart
            .run({ ...input, project: plan })
            .rooms.filter((r) => block.rooms.includes(r.id));
          expect(rooms.reduce((s, r) => s + r.with.chosen.hoursOver, 0)).toBe(hours);
          expect(rooms.filter((r) => r.with.chosen.met === false).length).toBe(broken);
        }
      }
    },
  );

  it('one more external blind adds no hours in rooms without airing', () => {
    // Nothing but sun differs, so any rise would be a fault of the engine: none is allowed.
    for (const i of [0, 4]) {
      const project = randomHouse(i);
      const input = { project, library, year: paneYear() };
      const found = searchSets(engine, input, { hemisphere: 'north' });
      expect(found.creep).toEqual({ broken: 0, hours: 0 });
    }
  });
});

describe('sets of the whole house', () => {
  it('two rooms are searched one by one and put together', () => {
    const project = randomHouse(4);
    const input = { project, library, year: paneYear() };
    const found = searchSets(engine, input, { hemisphere: 'north' });
    expect(found.parts.map((p) => p.rooms)).toEqual([['room-0'], ['room-1']]);
    expect(found.possible).toBe(2 ** 2 + 2 ** 2);
    // The front never gets worse, and its ends are the house with no and with all external blinds.
    const ends = [new Set<string>(), new Set(project.openings.map((o) => o.id))].map((chosen) =>
      engine
        .run({ ...input, project: externalsOn(project, library, chosen, 'north') })
        .rooms.reduce((s, r) => s + r.with.chosen.hoursOver, 0),
    );
    expect([found.front[0].hours, found.front.at(-1)!.hours]).toEqual(ends);
    expect(found.front).toHaveLength(5);
  });

  it('a dear opening is left out where a cheap one does as well, and prices are checked', () => {
    // Two like panes side by side: either blind alone is as good as the other.
    const pane = { azimuth: 270, width: 1.6, height: 1.8 };
    const house = paneHouse([pane, pane]);
    const input = { project: house, library, year: paneYear() };
    const hours = searchSets(engine, input, { hemisphere: 'north' }).front.map((s) => s.hours);
    const limit = { ...house.settings, overheatingShare: (hours[0] + hours[1]) / 2 / 8760 };
    const limited = { ...input, project: { ...house, settings: limit } };
    const set = (prices?: Record<string, number>, on = limited) =>
      searchSets(engine, on, { hemisphere: 'north', prices }).smallest;
    expect(set({ 'pane-0': 2 })!.openings).toEqual(['pane-1']);
    expect(set({ 'pane-1': 2 })!.openings).toEqual(['pane-0']);
    // Prices in the project count where none are given.
    const dear = structuredClone(limited.project);
    dear.openings[1].blindPrice = 3;
    expect(set(undefined, { ...limited, project: dear })!.openings).toEqual(['pane-0']);
    expect(() => set({ 'pane-0': 0 })).toThrow(/more than 0/);
    expect(() =>
      searchSets(engine, input, { hemisphere: 'north', candidates: ['pane-9'] }),
    ).toThrow(/no opening/);
  });
});
