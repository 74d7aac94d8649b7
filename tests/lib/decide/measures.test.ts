import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  MEASURES,
  STOCK,
  applyMeasure,
  commonSchedule,
  externalsOn,
  fittingOpenings,
  plannedExternal,
  withoutBlinds,
} from '../../../lib/decide/index.ts';
import type { MeasureId } from '../../../lib/decide/index.ts';
import { checkProject } from '../../../lib/project/index.ts';
import type { Project, ProjectOpening } from '../../../lib/project/index.ts';
import { validateSchedule } from '../../../lib/schedule/index.ts';
import { randomProject } from '../project/randomProject.ts';
import { example, library } from '../study/support.ts';

/** Fields of an opening that a measure may leave changed besides blind and screen. */
const FIELDS: Partial<Record<MeasureId, keyof ProjectOpening>> = {
  overhang: 'overhang',
  lowerG: 'glazing',
};

const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

function withoutFields(opening: ProjectOpening, fields: (keyof ProjectOpening)[]) {
  return plain(
    Object.fromEntries(
      Object.entries(opening).filter(([k]) => !fields.includes(k as keyof ProjectOpening)),
    ),
  );
}

/** Checks that a measure on one opening changed what it may and nothing else. */
function onlyChanges(before: Project, after: Project, id: string, measure: MeasureId) {
  before.openings.forEach((opening, i) => {
    const now = after.openings[i];
    if (opening.id !== id) return expect(plain(now)).toEqual(plain(opening));
    const field = FIELDS[measure];
    const fields: (keyof ProjectOpening)[] = ['blind', 'insectScreen', ...(field ? [field] : [])];
    expect(withoutFields(now, fields)).toEqual(withoutFields(opening, fields));
  });
  const added = after.schedules.slice(before.schedules.length);
  expect(plain(after.schedules.slice(0, before.schedules.length))).toEqual(plain(before.schedules));
  expect(added.length).toBeLessThanOrEqual(1);
  after.rooms.forEach((room, i) => {
    const { airing, ...rest } = room;
    const { airing: was, ...same } = before.rooms[i];
    expect(plain(rest)).toEqual(plain(same));
    expect(plain(airing.slice(0, was.length))).toEqual(plain(was));
    if (measure !== 'nightAiring') expect(airing).toHaveLength(was.length);
  });
  const kept = ({ openings: _o, schedules: _s, rooms: _r, groups: _g, ...rest }: Project) => rest;
  expect(plain(kept(after))).toEqual(plain(kept(before)));
  after.groups.forEach((group, i) => {
    expect({ ...group, lead: '' }).toEqual({ ...before.groups[i], lead: '' });
  });
}

describe('a measure on one opening', () => {
  it('does what it says and nothing else, in any project, and leaves a sound one', () => {
    fc.assert(
      fc.property(randomProject, fc.constantFrom(...MEASURES), fc.nat(), (input, measure, n) => {
        const { project } = checkProject(input, library);
        if (!project || project.openings.length === 0) return;
        const { id } = project.openings[n % project.openings.length];
        const before = plain(project);
        const after = applyMeasure(project, library, { opening: id }, measure);
        expect(plain(project)).toEqual(before);
        onlyChanges(project, after, id, measure);
        expect(checkProject(plain(after), library).problems).toEqual([]);
      }),
      { numRuns: 60, seed: 12 },
    );
  });
});

describe('each measure on the studio', () => {
  const project = example('studio');
  const put = (id: string, measure: MeasureId, options = {}) =>
    applyMeasure(project, library, { opening: id }, measure, options).openings.find(
      (o) => o.id === id,
    )!;

  it('hangs the blind it names, alone, on the common schedule', () => {
    for (const measure of ['internal', 'between', 'externalSlats', 'externalFabric'] as const) {
      const opening = put('west-window', measure);
      expect(opening.blind).toEqual({ blind: STOCK[measure], schedule: 'sun-in-warm-half-year' });
      expect(opening.insectScreen).toBeUndefined();
    }
    const bare = put('west-window', 'bare');
    expect([bare.blind, bare.insectScreen]).toEqual([undefined, undefined]);
    expect(put('west-window', 'screen').insectScreen!.blind).toBe(STOCK.screen);
  });

  it('takes a glass of lower g with no fewer panes, and none where there is none', () => {
    const g = (id: string) => library.glazings.find((glass) => glass.id === id)!;
    for (const { id, glazing } of project.openings) {
      const now = g(put(id, 'lowerG').glazing);
      expect(now.g).toBeLessThan(g(glazing).g);
      expect(now.panes).toBeGreaterThanOrEqual(Math.min(g(glazing).panes, 3));
    }
    const dark = { ...project.openings[0], glazing: 'triple-strong-solar-control' };
    const darkHouse = { ...project, openings: [dark] };
    expect(fittingOpenings(darkHouse, library, { opening: dark.id }, 'lowerG')).toEqual([]);
  });

  it('deepens an overhang, never shortens one, and puts none on a roof', () => {
    expect(put('south-long', 'overhang', { overhangDepth: 1.2 }).overhang).toEqual({
      ...project.openings.find((o) => o.id === 'south-long')!.overhang,
      projection: 1.2,
    });
    expect(put('south-long', 'overhang', { overhangDepth: 0.5 }).overhang!.projection).toBe(0.75);
    expect(put('west-door', 'overhang', { overhangDepth: 1 }).overhang!.projection).toBe(1);
    expect(put('roof-light', 'overhang').overhang).toBeUndefined();
  });

  it('airs at night through sashes that tilt, and leaves fixed panes and doors alone', () => {
    const aired = applyMeasure(project, library, { facade: 'west' }, 'nightAiring');
    const [rule] = aired.rooms[0].airing.slice(project.rooms[0].airing.length);
    expect(rule.openings).toEqual(['west-window']);
    for (const id of ['corner-pane', 'west-door']) {
      expect(fittingOpenings(project, library, { opening: id }, 'nightAiring')).toEqual([]);
    }
    expect(fittingOpenings(project, library, { opening: 'corner-pane' }, 'screen')).toEqual([]);
  });

  it('adds the common schedule once, in the warm half-year of the hemisphere', () => {
    const first = applyMeasure(project, library, { facade: 'west' }, 'internal');
    const second = applyMeasure(first, library, { facade: 'east' }, 'externalSlats');
    expect(second.schedules).toHaveLength(project.schedules.length + 1);
    const south = commonSchedule('south').rules[0].when.dates;
    expect(south).toEqual({ from: '10-01', to: '03-31' });
    for (const hemisphere of ['north', 'south'] as const) {
      expect(validateSchedule(commonSchedule(hemisphere))).toEqual({ problems: [], warnings: [] });
    }
  });

  it('refuses a target there is not', () => {
    const wrong = () => applyMeasure(project, library, { facade: 'up' }, 'bare');
    expect(wrong).toThrow(/target.facade/);
  });
});

describe('plans of external blinds', () => {
  const project = example('studio');
  const planned = plannedExternal(project, library);

  it('knows the planned ones, and choosing just these changes nothing', () => {
    expect([...planned]).toEqual(['south-long', 'west-door', 'west-window', 'corner-pane']);
    expect(plain(externalsOn(project, library, planned, 'north'))).toEqual(plain(project));
  });

  it('keeps other blinds where no external one is chosen, and replaces them where it is', () => {
    const blindOf = (p: Project, id: string) => p.openings.find((o) => o.id === id)!.blind?.blind;
    const none = externalsOn(project, library, new Set(), 'north');
    expect(blindOf(none, 'west-door')).toBeUndefined();
    expect(blindOf(none, 'east-bench')).toBe('between-slats-25-vented');
    const chosen = externalsOn(project, library, new Set(['east-bench', 'roof-light']), 'north');
    expect(blindOf(chosen, 'east-bench')).toBe(STOCK.externalSlats);
    expect(blindOf(chosen, 'roof-light')).toBe(STOCK.externalFabric);
  });

  it('a group whose lead goes takes the strongest sensor of the rest', () => {
    const led = {
      ...project,
      groups: project.groups.map((g) => ({ ...g, lead: 'west-door' })),
    };
    const rest = withoutBlinds(led, new Set(['west-door']));
    expect(rest.groups[0].lead).toBe('any');
    expect(checkProject(plain(rest), library).problems).toEqual([]);
    expect(withoutBlinds(led, new Set(['west-window'])).groups[0].lead).toBe('west-door');
  });
});
