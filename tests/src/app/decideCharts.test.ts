import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import type { Cell } from '../../../lib/decide/index.ts';
import { parseProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import type { SchemeFigures } from '../../../lib/sure/index.ts';
import { frontByKey, frontPoints, frontTable } from '../../../src/app/charts/decide/front.ts';
import { inkOn, matrixRange, matrixRows, placeIn } from '../../../src/app/charts/decide/matrix.ts';
import { rampColours } from '../../../src/app/charts/ramp.ts';
import { priceOf } from '../../../src/app/decide/price.ts';
import { extremes, schemeRows } from '../../../src/app/decide/schemeRows.ts';
import { substance } from '../../../src/app/decide/substance.ts';
import { targetChoices } from '../../../src/app/decide/targets.ts';
import { stations } from '../../../src/library/climates.ts';
import { blinds, glazings } from '../../../src/library/index.ts';

const example = (): Project =>
  parseProject(structuredClone(studio), { glazings, blinds, stations });

describe('the front', () => {
  const set = (openings: string[], hours: number, broken: number, cost = openings.length) => ({
    openings,
    hours,
    broken,
    cost,
  });
  const front = [set([], 900, 1), set(['a'], 700, 1), set(['a', 'b'], 500, 0)];

  it('shows the smallest set in the place of the best of its number', () => {
    const cheap = set(['b', 'c'], 520, 0, 1.5);
    const points = frontPoints(front, cheap);
    expect(points.map((p) => p.hours)).toEqual([900, 700, 520]);
    expect(points.map((p) => p.smallest)).toEqual([false, false, true]);
    expect(frontPoints(front).some((p) => p.smallest)).toBe(false);
  });

  it('is walked by keys and stays in its bounds', () => {
    const at = (from: number, key: string) => frontByKey(from, 3, key);
    expect([at(0, 'ArrowLeft'), at(0, 'ArrowRight'), at(2, 'ArrowUp')]).toEqual([0, 1, 2]);
    expect([at(1, 'Home'), at(1, 'End'), at(1, 'a')]).toEqual([0, 2, undefined]);
  });

  it('gives its data with the openings named', () => {
    const heads = { count: 'n', hours: 'h', broken: 'b', cost: 'c', where: 'w' };
    const table = frontTable(frontPoints(front), heads, (ids) => ids.join('+'));
    expect(table.columns.map((_, i) => table.cell(2, i))).toEqual([2, 500, 0, 2, 'a+b']);
  });
});

describe('the matrix', () => {
  const cell = (hours: number): Cell => ({
    hours,
    kept: hours < 800,
    heatingKWh: 0,
    summerGain: 0,
    winterLost: 0,
    viewHoursLost: 0,
  });
  const matrix = [
    {
      facade: 'west',
      openings: [],
      rooms: [],
      cells: { bare: { bare: cell(900) }, planned: { planned: cell(700), overhang: cell(760) } },
    },
  ];

  it('leaves gaps where a measure fits nothing, and takes its range from the rest', () => {
    const rows = matrixRows({ matrix }, 'planned');
    expect(rows[0].cells.map((c) => c?.hours)).toEqual([
      700,
      ...[undefined, undefined, undefined, undefined, undefined, undefined],
      760,
      undefined,
      undefined,
    ]);
    expect(matrixRange(rows, 'hours')).toEqual({ low: 700, high: 760 });
    expect(matrixRange([], 'hours')).toEqual({ low: 0, high: 0 });
    expect(placeIn({ low: 700, high: 760 }, 730)).toBe(0.5);
    expect(placeIn({ low: 5, high: 5 }, 5)).toBe(0);
  });

  /** Contrast ratio as WCAG 2.2 defines it, with its own rounding of the threshold (0.04045). */
  function contrast(a: string, b: string): number {
    const [light, dark] = [a, b].map(luminance).toSorted((x, y) => y - x);
    return (light + 0.05) / (dark + 0.05);
  }
  function luminance(colour: string): number {
    const channels = colour.startsWith('#')
      ? [1, 3, 5].map((i) => parseInt(colour.slice(i, i + 2), 16))
      : colour.match(/[\d.]+/g)!.map(Number);
    const [r, g, b] = channels.map((value) => {
      const s = value / 255;
      return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  }

  it('writes its figures so that they can be read on every colour of the ramps', () => {
    const css = readFileSync(new URL('../../../src/app/charts/ramps.css', import.meta.url), 'utf8');
    const stops = [...css.matchAll(/--ramp-power-\d: (#\w{6});/g)].map((m) => m[1]);
    expect(stops.length).toBeGreaterThanOrEqual(12);
    for (const ramp of [stops.slice(0, 6), stops.slice(6, 12)]) {
      // WCAG 2.2, 1.4.3: 4.5 to 1 for text of this size.
      for (const colour of rampColours(ramp))
        expect(contrast(colour, inkOn(colour)), colour).toBeGreaterThanOrEqual(4.5);
    }
  });
});

describe('prices as typed', () => {
  it('take a point or a comma and nothing that is no price', () => {
    expect([priceOf('820'), priceOf('820.5'), priceOf('820,50')]).toEqual([820, 820.5, 820.5]);
    for (const text of ['', '0', '-3', '1e3', '1,000.50', 'free', 'Infinity'])
      expect(priceOf(text), text).toBeUndefined();
  });
});

describe('what a decision rests on', () => {
  it('is not the name, the notes, the units or the words of the client page', () => {
    const project = example();
    const renamed = { ...project, name: 'Other', notes: 'x', units: 'imperial' as const };
    expect(substance({ ...renamed, page: { title: 'x' } })).toBe(substance(project));
  });

  it('is everything of openings, rooms, site and settings', () => {
    const changes: ((p: Project) => void)[] = [
      (p) => (p.openings[0].width += 0.01),
      (p) => (p.walls[0].azimuth += 1),
      (p) => p.rooms[0].airing.pop(),
      (p) => (p.settings.overheatingShare = 0.05),
      (p) => (p.site.latitude += 0.1),
      (p) => (p.year += 1),
    ];
    for (const change of changes) {
      const project = example();
      change(project);
      expect(substance(project)).not.toBe(substance(example()));
    }
  });
});

describe('schemes', () => {
  const scheme = (id: string, hours: number, blinds: number, externalBlinds: number) =>
    ({ id, name: id, hours, blinds, externalBlinds, broken: 0 }) as SchemeFigures;

  it('stand on one axis a row, external blinds on that of all blinds', () => {
    const rows = schemeRows([scheme('a', 700, 6, 4), scheme('b', 1400, 3, 0)]);
    const row = (figure: string) => rows.find((r) => r.figure === figure)!;
    expect(row('hours')).toMatchObject({ values: [700, 1400], most: 1400 });
    expect(row('externalBlinds').most).toBe(6);
  });

  it('name the first of equals', () => {
    const list = [scheme('a', 700, 0, 0), scheme('b', 700, 0, 0), scheme('c', 900, 0, 0)];
    expect(extremes(list)).toMatchObject({ best: { id: 'a' }, worst: { id: 'c' } });
    expect(extremes([])).toBeUndefined();
  });
});

describe('targets of a search', () => {
  it('are the groups in use and the facades with openings', () => {
    const project = example();
    const choices = targetChoices(project);
    const walls = new Set(project.openings.map((o) => o.wall));
    const facades = choices.filter((c) => c.kind === 'facade').map((c) => c.key);
    expect(facades).toEqual(
      project.walls.filter((w) => walls.has(w.id)).map((w) => `facade ${w.id}`),
    );
    const used = new Set(project.openings.flatMap((o) => o.blind?.group ?? []));
    expect(choices.filter((c) => c.kind === 'group')).toHaveLength(used.size);
    fc.assert(
      fc.property(fc.constantFrom(...choices), ({ key, target }) => {
        const id = 'group' in target ? target.group : target.facade;
        expect(key.endsWith(` ${id}`)).toBe(true);
      }),
    );
  });
});
