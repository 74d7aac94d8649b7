import { beforeAll, describe, expect, it } from 'vitest';
import { InputError } from '../../../lib/problem/index.ts';
import { HOURS, STEPS_PER_HOUR } from '../../../lib/time/index.ts';
import { answerHouse, clientPage, costsOf, neededOpenings } from '../../../src/client/index.ts';
import type { ClientPage } from '../../../src/client/index.ts';
import { Words } from '../../../src/words/index.ts';
import { paneHouse } from '../../lib/decide/support.ts';
import { caseOf, smallHouse } from './support.ts';
import type { Case } from './support.ts';

const CHOICES = { system: 'metric', size: 'a4', grey: false, order: true, appendix: true } as const;

let house: Case;
let english: ClientPage;
let german: ClientPage;

beforeAll(async () => {
  house = caseOf(smallHouse());
  english = clientPage(
    house.facts,
    await Words.load('en', ['client', 'library', 'rules']),
    CHOICES,
  );
  german = clientPage(house.facts, await Words.load('de', ['client', 'library', 'rules']), CHOICES);
}, 60_000);

/** A figure of the page read back as a number. */
function figure(text: string, decimal = '.'): number {
  const plain =
    decimal === '.' ? text.replace(/,/g, '') : text.replace(/\./g, '').replace(',', '.');
  return Number(/-?[\d.]+/.exec(plain)![0]);
}

describe('the client page', () => {
  it('answers first, with the openings of the smallest set and no others', () => {
    const names = house.decision.sets.smallest!.openings.map(
      (id) => house.project.openings.find((o) => o.id === id)!.name,
    );
    expect(names.length).toBeGreaterThan(0);
    const { kind, headline, lines } = english.sheet.answer;
    expect(kind).toBe('some');
    for (const { name } of house.project.openings) {
      expect(headline.includes(name), name).toBe(names.includes(name));
      expect(lines[0]!.includes(name), name).toBe(!names.includes(name));
    }
    expect(german.sheet.answer.headline).toMatch(/^Außenliegender Sonnenschutz: /);
  });

  it('shows hours counted afresh from the hourly temperatures', () => {
    const limit = house.project.settings.overheatingLimit;
    const [room] = house.result.rooms;
    const over = (t: Float64Array) => t.reduce((n, value) => n + (value > limit ? 1 : 0), 0);
    const [shown] = english.sheet.hours.rooms;
    expect(figure(shown!.before)).toBe(over(room!.runs.without.year.operative));
    expect(figure(shown!.after)).toBe(over(room!.runs.with.year.operative));
    const [told] = german.sheet.hours.rooms;
    expect(figure(told!.before, ',')).toBe(figure(shown!.before));
  });

  it('draws each day of the year by the hours counted on it', () => {
    const { calendar } = house.result;
    const { operative } = house.result.rooms[0]!.runs.without.year;
    const limit = house.project.settings.overheatingLimit;
    const days = new Array<number>(365).fill(0);
    for (let hour = 0; hour < HOURS; hour++) {
      if (operative[hour]! > limit) days[calendar.day[hour * STEPS_PER_HOUR]!]!++;
    }
    const { rows } = english.sheet.year.table;
    expect(rows.map((row) => row[2])).toEqual(days);
    expect(rows).toHaveLength(365);
    expect(english.sheet.year.about).toContain(String(days.filter((n) => n > 0).length));
  });

  it('shows the hottest day of the summer with its warmest hour', () => {
    const { calendar, rooms } = house.result;
    const { operative } = rooms[0]!.runs.without.year;
    const days = new Map<number, number[]>();
    for (let hour = 0; hour < HOURS; hour++) {
      const day = calendar.day[hour * STEPS_PER_HOUR]!;
      // Days 151 to 242 are June to August.
      if (day >= 151 && day <= 242) days.set(day, [...(days.get(day) ?? []), operative[hour]!]);
    }
    const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
    const [hottest] = [...days.values()].sort((a, b) => mean(b) - mean(a));
    const warmest = Math.max(...hottest!);
    expect(english.sheet.day.table.rows).toHaveLength(24);
    expect(english.sheet.day.about).toContain(`without shading ${warmest.toFixed(1)}`);
    expect(german.sheet.day.about).toContain(warmest.toFixed(1).replace('.', ','));
  });

  it('gives the price in winter sun, view and moves as the engine has it', () => {
    const { total, rooms } = house.result;
    const costs = costsOf(house.facts)!;
    expect(costs.winterLost).toBeCloseTo(total.without.winter - total.with.winter, 9);
    expect(costs.heatingMore).toBeCloseTo(
      rooms[0]!.with.heatingKWh - rooms[0]!.without.heatingKWh,
      9,
    );
    const own = house.decision.openings.find((o) => o.blind === 'planned')!;
    const [, view, moves] = english.sheet.costs!.figures;
    expect(figure(view!.figure)).toBe(Math.round(own.viewHoursLost));
    expect(figure(moves!.figure)).toBeCloseTo(own.movesPerDay, 1);
  });

  it('holds the verdict of each facade with its hours', () => {
    const { rows } = english.sheet.facades.table;
    expect(rows).toHaveLength(house.decision.verdicts.length);
    house.decision.verdicts.forEach((verdict, i) => {
      expect(figure(rows[i]![1]!)).toBe(verdict.bare.hours);
      expect(figure(rows[i]![2]!)).toBe(verdict.external.hours);
      expect(rows[i]![1]!.includes('kept')).toBe(verdict.bare.kept);
    });
  });

  it('shows the same in imperial units', async () => {
    const words = await Words.load('en', ['client', 'library', 'rules']);
    const page = clientPage(house.facts, words, { ...CHOICES, system: 'imperial' });
    const { winterLost } = costsOf(house.facts)!;
    // 1 kWh is 3.412 kBtu (NIST SP 811).
    expect(figure(page.sheet.costs!.figures[0]!.figure)).toBe(Math.round(winterLost * 3.41214));
    expect(page.sheet.hours.head).toContain('77\u00a0°F');
    expect(page.order!.tables[0]!.rows[0]![1]).toMatch(/^9'\u00a010\u00a01\/8"/);
  });

  it('takes the title, the question and the notes of the project', async () => {
    const page = { title: 'For the owners', question: 'West?', notes: 'One.\nTwo.' };
    const facts = { ...house.facts, project: { ...house.project, page } };
    const { sheet } = clientPage(
      facts,
      await Words.load('en', ['client', 'library', 'rules']),
      CHOICES,
    );
    expect([sheet.title, sheet.question]).toEqual(['For the owners', 'West?']);
    expect(sheet.notes!.lines).toEqual(['One.', 'Two.']);
    expect(english.sheet.title).toBe(house.project.name);
    expect(english.sheet.notes).toBeUndefined();
  });

  it('says every caution that external blinds call for', () => {
    const text = english.sheet.cautions.lines.join(' ');
    for (const word of [
      'escape',
      'wind',
      'at height',
      'thermal stress',
      'Heat harms',
      'licensed',
    ]) {
      expect(text).toContain(word);
    }
  });
});

describe('a house that is hardly begun', () => {
  it('has a page without openings, and says what is missing without rooms', async () => {
    const words = await Words.load('de', ['client', 'library', 'rules']);
    const empty = caseOf({ ...smallHouse(), openings: [] });
    const { sheet, order } = clientPage(empty.facts, words, CHOICES);
    expect(sheet.answer.kind).toBe('none');
    expect(order!.tables[0]!.rows).toEqual([]);
    const homeless = caseOf({ ...smallHouse(), openings: [], rooms: [] });
    expect(() => clientPage(homeless.facts, words, CHOICES)).toThrow(InputError);
  });
});

describe('a plan without blinds', () => {
  it('is told apart from the answer, whose blinds can be taken over into it', async () => {
    const west = { azimuth: 270, width: 1.8, height: 2 };
    const north = { azimuth: 0, width: 1, height: 1 };
    const plan = caseOf(paneHouse([west, north]));
    const words = await Words.load('en', ['client', 'library', 'rules']);
    const { sheet, order } = clientPage(plan.facts, words, CHOICES);
    expect(sheet.hours.rooms[0]!.before).toBe(sheet.hours.rooms[0]!.after);
    expect(sheet.hours.notes[0]).toContain('Pane 0');
    expect(sheet.answer.headline).toBe('External blinds on: Pane 0.');
    expect(sheet.cards.cards[0]!.heading).toMatch(/Suggested/);
    expect(order!.tables[0]!.rows).toHaveLength(neededOpenings(plan.facts).length);

    const adopted = caseOf(answerHouse(plan.facts));
    const hours = adopted.result.rooms.reduce((n, r) => n + r.with.chosen.hoursOver, 0);
    expect(hours).toBe(plan.decision.sets.smallest!.hours);
    expect(adopted.result.rooms.every((r) => r.with.chosen.met)).toBe(true);
  });
});
