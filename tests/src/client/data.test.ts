import Papa from 'papaparse';
import { beforeAll, describe, expect, it } from 'vitest';
import { hourlyCsv } from '../../../lib/findings/index.ts';
import { HOURS } from '../../../lib/time/index.ts';
import {
  DRIVE,
  Teller,
  clientPage,
  csvText,
  driveCheck,
  monthlyCsv,
  orderCsv,
  orderItems,
  safeText,
  svgText,
} from '../../../src/client/index.ts';
import { Words } from '../../../src/words/index.ts';
import { AWKWARD, caseOf, smallHouse } from './support.ts';
import type { Case } from './support.ts';

/** A house whose every name is awkward. */
function awkwardHouse() {
  const house = smallHouse();
  const name = (i: number) => AWKWARD[i % AWKWARD.length]!;
  return {
    ...house,
    name: name(0),
    site: { ...house.site, name: name(6) },
    openings: house.openings.map((o, i) => ({ ...o, name: name(i + 1) })),
    walls: house.walls.map((w, i) => ({ ...w, name: name(i + 4) })),
    rooms: house.rooms.map((r) => ({ ...r, name: name(7) })),
    schedules: house.schedules.map((s) => ({ ...s, name: name(8) })),
    page: { title: name(1), question: name(0), notes: AWKWARD.join('\n') },
  };
}

let house: Case;
let words: Words;
let teller: Teller;

beforeAll(async () => {
  house = caseOf(awkwardHouse());
  words = await Words.load('en', ['client', 'rules']);
  teller = new Teller(words, 'metric');
}, 60_000);

function read(csv: string): string[][] {
  const { data, errors } = Papa.parse<string[]>(csv.replace(/^\ufeff/, ''), {
    skipEmptyLines: true,
    delimiter: ',',
  });
  expect(errors).toEqual([]);
  return data;
}

/** No text cell is left that a spreadsheet would work out (OWASP, CSV Injection). */
function expectHarmless(rows: string[][]): void {
  for (const cell of rows.flat()) {
    if (/^-?\d+(\.\d+)?(e-?\d+)?$/.test(cell)) continue;
    expect(cell).not.toMatch(/^[=+\-@\t\r\n]/);
  }
}

describe('CSV', () => {
  it('puts an apostrophe before whatever would be a formula and leaves figures alone', () => {
    expect(['=1', '+1', '-1+x', '@a', '\tb', '\rc', "'d", 'e=f'].map(safeText)).toEqual([
      "'=1",
      "'+1",
      "'-1+x",
      "'@a",
      "'\tb",
      "'\rc",
      "'d",
      'e=f',
    ]);
    expect(read(csvText(['=head', 'm'], [['=x', -1.5]]))).toEqual([
      ["'=head", 'm'],
      ["'=x", '-1.5'],
    ]);
  });

  it('gives back the monthly sums of the engine', () => {
    const rows = read(monthlyCsv(house.facts, teller));
    expectHarmless(rows);
    expect(rows[0]!.slice(3)).toHaveLength(13);
    expect(rows[0]!.slice(3).every((head) => head.endsWith('(kWh)'))).toBe(true);
    const sums = [...house.result.openings.map((o) => o.sums), house.result.total].flatMap((s) =>
      [s.incident, s.sunlit, s.without, s.with].map((q) => [...q.months, q.year]),
    );
    expect(rows).toHaveLength(sums.length + 1);
    sums.forEach((months, i) => {
      const cells = rows[i + 1]!.slice(3).map(Number);
      // Written to a watt hour.
      cells.forEach((cell, m) =>
        expect(Math.abs(cell - months[m]!)).toBeLessThanOrEqual(0.0005001),
      );
    });
  });

  it('gives back the hours of the engine', () => {
    const rows = read(hourlyCsv(house.result, house.year));
    expect(rows).toHaveLength(HOURS + 1);
    expectHarmless(rows.slice(0, 25));
    const column = rows[0]!.findIndex((head) => head.includes('operative without'));
    const { operative } = house.result.rooms[0]!.runs.without.year;
    for (let hour = 0; hour < HOURS; hour += 97) {
      // Written to a hundredth.
      expect(Math.abs(Number(rows[hour + 1]![column]) - operative[hour]!)).toBeLessThanOrEqual(
        0.00501,
      );
    }
  });

  it('gives back the order list', () => {
    const rows = read(orderCsv(house.facts, teller));
    expectHarmless(rows);
    const items = orderItems(house.facts);
    expect(rows).toHaveLength(items.length + 1);
    items.forEach(({ opening, windLimit }, i) => {
      const row = rows[i + 1]!;
      expect(row[0]).toBe(safeText(opening.name));
      expect(row.slice(2, 5).map(Number)).toEqual([opening.width, opening.height, opening.count]);
      expect(row[8]).toBe(windLimit === undefined ? '' : String(windLimit));
    });
  });
});

describe('awkward names', () => {
  it('reach the page letter by letter, never filled in', () => {
    const page = clientPage(house.facts, words, {
      system: 'metric',
      size: 'a4',
      grey: false,
      order: true,
      appendix: true,
    });
    expect(page.sheet.title).toBe(house.project.page!.title);
    expect(page.sheet.notes!.lines).toEqual([...AWKWARD]);
    const rows = page.appendix!.sections.flatMap((s) => s.tables).flatMap((t) => t.rows);
    const firsts = rows.map((row) => row[0]);
    for (const { name } of house.project.openings) expect(firsts).toContain(name);
    expect(rows.some((row) => row[0] === house.project.schedules[0]!.name)).toBe(true);
  });

  it('make SVG files that hold them as text and no markup', () => {
    const { sheet } = clientPage(house.facts, words, {
      system: 'metric',
      size: 'a4',
      grey: true,
      order: false,
      appendix: false,
    });
    for (const picture of [sheet.year, sheet.ring, sheet.day]) {
      const svg = svgText({ ...picture, title: AWKWARD.join(' ') + '\u0000\ud800' });
      const tags = [...svg.matchAll(/<\/?([a-zA-Z]+)/g)].map((m) => m[1]!);
      const known = ['svg', 'title', 'desc', 'rect', 'path', 'line', 'circle', 'text'];
      expect(tags.filter((tag) => !known.includes(tag))).toEqual([]);
      expect(svg).not.toContain('\u0000');
      expect(svg).toContain('&lt;script&gt;');
      // Every ampersand begins an entity.
      expect(svg.replace(/&(amp|lt|gt|quot);/g, '')).not.toContain('&');
    }
  });
});

describe('the drive on a battery', () => {
  const months = (kWh: number) => {
    const sums = {
      year: 12 * kWh,
      summer: 3 * kWh,
      winter: 3 * kWh,
      months: Array<number>(12).fill(kWh),
    };
    return { sums: { incident: sums, sunlit: sums, without: sums, with: sums }, glassArea: 2 };
  };

  it('gathers what a strip at its rating gives in the sun hours of the darkest month', () => {
    // 62 kWh on 2 m2 in 31 days is 1 kWh/m2 a day: one hour of full sun.
    const check = driveCheck(months(62), 2);
    expect(check.month).toBe(0);
    expect(check.gathered).toBeCloseTo(DRIVE.panel * DRIVE.efficiency, 9);
    expect(check.needed).toBeCloseTo(2 * DRIVE.perMove + DRIVE.standby, 9);
    expect(check.verdict).toBe('enough');
  });

  it('says where it is just enough and where it is not', () => {
    // 1.8 Wh gathered an hour of sun; 2 moves need 0.86 Wh, half as much again is 1.29 Wh.
    expect(driveCheck(months(62 * 0.6), 2).verdict).toBe('tight');
    expect(driveCheck(months(62 * 0.3), 2).verdict).toBe('notEnough');
  });
});
