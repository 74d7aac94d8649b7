import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import studio from '../../data/examples/studio.shadewright.json' with { type: 'json' };
import { parseProject } from '../../lib/project/index.ts';
import type { Project } from '../../lib/project/index.ts';
import { createEngine, roomDetail } from '../../lib/study/index.ts';
import type { RoomResult } from '../../lib/study/index.ts';
import { stations } from '../../src/library/climates.ts';
import { blinds, glazings } from '../../src/library/index.ts';
import { yearOf } from '../../src/library/year.ts';
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';
import { benchFaults } from './axe.ts';
import { projectOf } from './house.ts';

/** A run takes well under a second; a shared machine may need more. */
const PATIENCE = { timeout: 30_000, interval: 100 };

const library = { glazings, blinds, stations };
const engine = createEngine();
const example = () => parseProject(structuredClone(studio), library);
const year = yearOf(example(), stations);

/** The studio's only room as the engine has it, after a change to the project. */
function roomAfter(change: (project: Project) => void = () => undefined): RoomResult {
  const project = example();
  change(project);
  return engine.run({ project, library, year }).rooms[0];
}

const whole = (value: number) => Math.round(value).toLocaleString('en');
const share = (value: number) => `${(value * 100).toFixed(1)} %`;
const plain = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

async function openBench(options: Parameters<typeof openApp>[0] = {}): Promise<OpenApp> {
  const app = await openApp({ path: '/#room', ...options });
  await app.page.getByRole('heading', { name: /^What heats the room/ }).waitFor();
  return app;
}

const bench = (page: Page) => page.locator('[data-bench-shown="room"]');
const verdict = async (page: Page) => plain(await bench(page).locator('.verdict').innerText());
const hoursLine = ({ without, with: shaded }: RoomResult) =>
  `Studio: ${whole(without.hotHours)} hours over 25 °C without shading, ${whole(shaded.hotHours)} with.`;
const field = (page: Page, label: string) =>
  bench(page)
    .locator('input, select')
    .and(page.getByLabel(label, { exact: true }));

async function type(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).press('Tab');
}

async function openAll(page: Page): Promise<void> {
  const folded = bench(page).locator('details');
  await folded.evaluateAll((all) => all.forEach((part) => part.setAttribute('open', '')));
}

/** The facade table's gains of the bare glass: summer and year of every row. */
async function bareGains(page: Page): Promise<string[]> {
  const rows = await page.locator('section:has(#facade-table-title) tbody tr').all();
  return Promise.all(
    rows.map(async (row) => {
      const cells = await row.locator('td').allInnerTexts();
      return [cells[1], cells[4]].join(' ');
    }),
  );
}

type Leaves = Record<string, unknown>;

function leaves(value: unknown, path = ''): Leaves {
  if (typeof value !== 'object' || value === null) return { [path]: value };
  const inner = Object.entries(value).map(([key, item]) => leaves(item, `${path}.${key}`));
  return Object.assign({}, ...inner) as Leaves;
}

/** What differs in the saved rooms and settings, by path, with its value after. */
function changes(before: Project, after: Project): Leaves {
  const [a, b] = [before, after].map(({ rooms, settings }) => leaves({ rooms, settings }));
  const paths = new Set([...Object.keys(a), ...Object.keys(b)]);
  return Object.fromEntries([...paths].filter((p) => a[p] !== b[p]).map((p) => [p, b[p]]));
}

describe('the room bench', () => {
  let app: OpenApp;
  let page: Page;
  beforeAll(async () => {
    app = await openBench();
    page = app.page;
  });
  afterAll(() => app.close());

  it('shows the figures of the engine', async () => {
    const room = roomAfter();
    expect(await verdict(page)).toContain(hoursLine(room));
    const [bare, shaded] = [room.without.chosen, room.with.chosen];
    expect(await verdict(page)).toContain(
      `(${share(bare.value)} without, ${share(shaded.value)} with)`,
    );

    const table = bench(page).getByRole('region', { name: 'Held against the usual limits' });
    const shown = plain(await table.innerText());
    for (const criterion of [...room.without.criteria, ...room.with.criteria]) {
      const figure =
        criterion.unit === '1' ? share(criterion.value) : `${whole(criterion.value)} K h`;
      const word = criterion.met === undefined ? '' : criterion.met ? ' kept' : ' not kept';
      expect(shown).toContain(figure + word);
      expect(shown).toContain(plain(criterion.source.english));
    }

    const heating = plain(await bench(page).getByRole('region', { name: 'Heating' }).innerText());
    expect(heating).toContain(
      `needs ${whole(room.without.heatingKWh)} kWh of heat a year without shading and ${whole(room.with.heatingKWh)} kWh with`,
    );
    const { useful } = roomDetail(room.runs.with, 25);
    expect(heating).toContain(`${(useful.usefulShare * 100).toFixed(1)} %`);
  });

  it('draws as many hot hours as there are', async () => {
    const room = roomAfter();
    const figure = bench(page).getByRole('figure', { name: /^Hours over/ });
    const captions = await figure.locator('svg .caption').allTextContents();
    expect(captions.map(plain)).toEqual([
      `Without shading: ${whole(room.without.hotHours)} hours`,
      `With shading: ${whole(room.with.hotHours)} hours`,
    ]);
    for (const [i, outcome] of [room.without, room.with].entries()) {
      const months = await figure
        .locator('svg')
        .nth(i + 1)
        .locator('.sum')
        .allTextContents();
      const hours = months.map((text) => Number(text.replace(/[^\d]/g, '')));
      expect(hours.reduce((a, b) => a + b, 0)).toBe(outcome.hotHours);
    }
  });

  it('names the opening to blame and takes it as the chosen one', async () => {
    const room = roomAfter();
    const suns = roomDetail(room.runs.without, 25).causes.causes.filter((c) => c.opening);
    const worst = suns.reduce((a, b) => (b.degreeHours > a.degreeHours ? b : a));
    const { name } = studio.openings.find((o) => o.id === worst.opening)!;
    const figure = bench(page).getByRole('figure', { name: /^What heats/ });
    expect(plain(await figure.innerText())).toContain(
      `comes through ${name} than through any other`,
    );
    const bars = plain((await figure.locator('li:has(button) svg').first().textContent())!);
    expect(bars).toContain(`${whole(worst.degreeHours)} (${Math.round(worst.share * 100)} %)`);

    const button = figure.getByRole('button', { name: `Sun: ${name}` });
    await button.click();
    expect(await button.getAttribute('aria-pressed')).toBe('true');
    const chosen = page.locator('section:has(#facade-table-title) tr.chosen');
    expect(await chosen.innerText()).toContain(name);
  });

  it('reads out days by keyboard', async () => {
    const slider = bench(page).getByRole('slider', { name: /^Hours over/ });
    await slider.focus();
    await slider.press('Home');
    const first = plain((await slider.getAttribute('aria-valuetext'))!);
    expect(first).toMatch(/^\w+ 1 \w+: without \d+ hours? \(up to .*\), with \d+ hours?/);
    await slider.press('ArrowRight');
    expect(await slider.getAttribute('aria-valuetext')).toContain(' 2 ');
    await slider.press('End');
    await slider.press('ArrowDown');
    const days = Number(await slider.getAttribute('aria-valuenow'));
    const lines = bench(page).getByRole('slider', { name: /^Warmest hour/ });
    expect(Number(await lines.getAttribute('aria-valuenow'))).toBe(days);
  });

  it('changes its verdict with the criterion that decides', async () => {
    const { without, with: shaded } = roomAfter((p) => (p.settings.criterion = 'din4108'));
    await bench(page)
      .getByRole('radio', { name: /^Decides: Degree-hours over 26/ })
      .check();
    const words = (met?: boolean) => (met ? 'kept' : 'broken');
    const verb =
      without.chosen.met === shaded.chosen.met
        ? `${words(shaded.chosen.met)} both without and with`
        : `${words(without.chosen.met)} without and ${words(shaded.chosen.met)} with`;
    await expect
      .poll(() => verdict(page), PATIENCE)
      .toContain(
        `The limit of 1,200 K h over 26 °C is ${verb} (${whole(without.chosen.value)} K h without, ${whole(shaded.chosen.value)} K h with).`,
      );
    await page.keyboard.press('Control+z');
    await expect.poll(() => verdict(page), PATIENCE).toContain('The limit of 10 % of the year');
  });

  it('follows the limit temperature', async () => {
    const { without, with: shaded } = roomAfter((p) => (p.settings.overheatingLimit = 27));
    await type(page, 'Limit temperature', '27');
    await expect
      .poll(() => verdict(page), PATIENCE)
      .toContain(
        `Studio: ${whole(without.hotHours)} hours over 27 °C without shading, ${whole(shaded.hotHours)} with.`,
      );
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await expect.poll(() => verdict(page), PATIENCE).toContain(hoursLine(roomAfter()));
  });

  it('follows floor area, heaviness and airing, and leaves the gains of the bare glass', async () => {
    const before = await bareGains(page);
    expect(before.length).toBeGreaterThan(9);
    await openAll(page);
    const steps: [act: () => Promise<unknown>, change: (project: Project) => void][] = [
      [
        () => type(page, 'Floor area', '60'),
        ({ rooms: [room] }) => {
          // The clear height stays: 113 m3 over 38 m2, kept to a litre.
          room.volume = Number(((60 * 113) / 38).toFixed(3));
          room.floorArea = 60;
        },
      ],
      [
        () => field(page, 'Heaviness').selectOption('veryHeavy'),
        ({ rooms: [room] }) => (room.mass = { kind: 'class', class: 'veryHeavy' }),
      ],
      [
        () => bench(page).getByRole('button', { name: 'Remove Tilted on summer nights' }).click(),
        ({ rooms: [room] }) => room.airing.splice(1, 1),
      ],
    ];
    const done: ((project: Project) => void)[] = [];
    let last = await verdict(page);
    for (const [act, change] of steps) {
      await act();
      done.push(change);
      const room = roomAfter((project) => done.forEach((edit) => edit(project)));
      await expect.poll(() => verdict(page), PATIENCE).toContain(hoursLine(room));
      expect(await verdict(page)).not.toBe(last);
      last = await verdict(page);
      expect(await bareGains(page)).toEqual(before);
    }
    const count = steps.length;
    for (let i = 0; i < count; i++) {
      await page.getByRole('button', { name: 'Undo' }).first().click();
    }
    await expect.poll(() => verdict(page), PATIENCE).toContain(hoursLine(roomAfter()));
  });

  it('changes by each field what it should and nothing else', async () => {
    await openAll(page);
    const room = '.rooms.0';
    const typed: [label: string, text: string, expected: Leaves][] = [
      ['Name', 'Workshop', { [`${room}.name`]: 'Workshop' }],
      ['Volume, m³', '120', { [`${room}.volume`]: 120 }],
      ['Mean clear height', '3 m', { [`${room}.volume`]: 114 }],
      ['Thermal bridges, W/K', '2,5', { [`${room}.thermalBridges`]: 2.5 }],
      ['n50, 1/h at 50 Pa', '0.45', { [`${room}.infiltration.n50`]: 0.45 }],
      ['Wind shielding', '0.05', { [`${room}.infiltration.shielding`]: 0.05 }],
      // 30 cfm: 1 ft3 is 0.0283168466 m3 (NIST SP 811).
      ['Flow', '30 cfm', { [`${room}.ventilation.flow.m3PerHour`]: 30 * 60 * 0.3048 ** 3 }],
      ['Heat recovered, %', '75', { [`${room}.ventilation.heatRecovery`]: 0.75 }],
      ['Bypass opens above', '23', { [`${room}.ventilation.bypassAbove`]: 23 }],
      ['Heated to', '69.8 F', { [`${room}.heating.setPoint`]: 21 }],
      ['Most power', '1200 W', { [`${room}.heating.maxPower`]: 1200 }],
      ['People, Monday to Friday, 9:00 to 10:00', '150', { [`${room}.people.weekday.9`]: 150 }],
      ['Name of rule 1', 'Day', { [`${room}.airing.0.name`]: 'Day' }],
      ['Most hours over it, %', '5', { '.settings.overheatingShare': 0.05 }],
    ];
    const chosen: [label: string, value: string, expected: Leaves][] = [
      ['Use', 'living', { [`${room}.use`]: 'living' }],
      ['Adaptive category', 'I', { '.settings.adaptiveCategory': 'I' }],
      ['Summer region', 'C', { '.settings.dinRegion': 'C' }],
      [
        'Somebody is in, Monday to Friday, 1: from',
        '450',
        { [`${room}.occupied.weekday.0.from`]: 450 },
      ],
    ];
    for (const [label, value, expected] of [...typed, ...chosen]) {
      const before = await projectOf(page);
      if (typed.some(([name]) => name === label)) await type(page, label, value);
      else await field(page, label).selectOption(value);
      const changed = changes(before, await projectOf(page));
      expect(Object.keys(changed), label).toEqual(Object.keys(expected));
      for (const [path, wanted] of Object.entries(expected)) {
        // Conversions round in the last digits of a float.
        if (typeof wanted === 'number') expect(changed[path], label).toBeCloseTo(wanted, 6);
        else expect(changed[path], label).toBe(wanted);
      }
      await page.getByRole('button', { name: 'Undo' }).first().click();
    }
  });

  it('says what is wrong with an entry and keeps the project', async () => {
    const before = await projectOf(page);
    await type(page, 'Heat recovered, %', '140');
    const alert = bench(page).getByRole('alert').filter({ hasText: 'Heat recovered' });
    expect(plain(await alert.innerText())).toContain('0 to 100 is allowed');
    await field(page, 'Heat recovered, %').press('Escape');
    expect(changes(before, await projectOf(page))).toEqual({});
  });

  it('adds, copies and deletes rooms, and takes it back', async () => {
    const rooms = bench(page).getByRole('list', { name: 'Rooms' }).getByRole('button');
    await bench(page).getByRole('button', { name: 'Add a room' }).click();
    await expect.poll(() => rooms.count()).toBe(2);
    await expect.poll(() => verdict(page), PATIENCE).toMatch(/^Room( is never over|:)/);
    await rooms.first().click();
    await bench(page).getByRole('button', { name: 'Copy' }).click();
    await expect.poll(() => rooms.count()).toBe(3);
    expect(await bench(page).getByRole('status').first().innerText()).toContain('Studio 2');
    await rooms.first().click();
    await bench(page).getByRole('button', { name: 'Delete', exact: true }).click();
    await expect.poll(() => rooms.count()).toBe(2);
    expect((await projectOf(page)).openings.some((o) => o.room === 'studio')).toBe(false);
    for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Undo' }).first().click();
    expect(changes(example(), await projectOf(page))).toEqual({});
  });

  it('left the console silent', () => {
    expect(app.errors).toEqual([]);
  });
});

describe('the room bench for everyone', () => {
  it.each([
    { width: 1440, height: 900, dark: false },
    { width: 768, height: 1024, dark: true },
    { width: 390, height: 844, dark: false },
  ])('has no fault axe knows at $width px, no sideways scroll and a silent console', async (at) => {
    const app = await openBench({ ...at, bypassCSP: true });
    try {
      await openAll(app.page);
      expect(await benchFaults(app.page)).toEqual([]);
      const wide = await app.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(app.errors).toEqual([]);
    } finally {
      await app.close();
    }
  });
});
