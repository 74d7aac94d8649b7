import { readFile } from 'node:fs/promises';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import studio from '../../data/examples/studio.shadewright.json' with { type: 'json' };
import germanYear from '../../data/words/de/year.json' with { type: 'json' };
import englishYear from '../../data/words/en/year.json' with { type: 'json' };
import { parseProject } from '../../lib/project/index.ts';
import { createEngine } from '../../lib/study/index.ts';
import { HOURS } from '../../lib/time/index.ts';
import { stations } from '../../src/library/climates.ts';
import { blinds, glazings } from '../../src/library/index.ts';
import { yearOf } from '../../src/library/year.ts';
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';
import { accessProblems } from './axe.ts';

const library = { glazings, blinds, stations };
const project = parseProject(structuredClone(studio), library);
const result = createEngine().run({ project, library, year: yearOf(project, stations) });
const door = result.openings.find((o) => o.id === 'west-door')!;

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('the year and the day', () => {
  let app: OpenApp;
  let page: Page;
  let sheet: Locator;
  let shown: Locator;
  beforeAll(async () => {
    app = await openApp({ path: '/#year', bypassCSP: true });
    page = app.page;
    await page.getByRole('combobox', { name: 'Of' }).selectOption({ label: 'West door' });
    sheet = page.getByRole('slider', { name: /: the chosen hour$/ });
    shown = page.getByRole('combobox', { name: 'Show' });
    await sheet.waitFor();
  });
  afterAll(() => app.close());

  const hour = async () => Number(await sheet.getAttribute('aria-valuenow'));
  const reading = async () => plain((await sheet.getAttribute('aria-valuetext'))!);
  /** The figure that is read at the chosen hour. */
  const value = async () =>
    Number(
      (await reading())
        .match(/: (−?[\d,.]+) \D*$/)![1]
        .replaceAll(',', '')
        .replace('−', '-'),
    );
  const quantity = async (name: string) => {
    await shown.selectOption({ label: name });
    await page.getByRole('slider', { name: new RegExp(`^${name}`) }).waitFor();
  };

  it('reads at every hour what the engine gives, moved by keys alone', async () => {
    await sheet.focus();
    const names = await shown.locator('option').allTextContents();
    const [without, withBlind] = names.filter((name) => /^Solar gain with/.test(name));
    for (const [name, series] of [
      [without, door.hourly.without],
      [withBlind, door.hourly.with],
    ] as const) {
      await quantity(name);
      await sheet.focus();
      await sheet.press('Home');
      for (const key of ['PageUp', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'ArrowDown', 'End']) {
        await sheet.press(key);
        // Shown to whole watts.
        expect(Math.abs((await value()) - series[await hour()]), key).toBeLessThanOrEqual(0.5);
      }
    }
  });

  it('moves by an hour, a day and a week', async () => {
    await sheet.press('Home');
    for (let day = 0; day < 20; day++) await sheet.press('ArrowRight');
    const at = await hour();
    await sheet.press('ArrowRight');
    expect(await hour()).toBe(at + 24);
    await sheet.press('PageUp');
    expect(await hour()).toBe(at + 24 + 168);
    await sheet.press('PageDown');
    await sheet.press('ArrowLeft');
    expect(await hour()).toBe(at);
  });

  it('sums a span of days as the engine does', async () => {
    await quantity('Solar gain without shading');
    await sheet.press('Home');
    for (let day = 0; day < 100; day++) await sheet.press('ArrowRight');
    const first = await hour();
    await sheet.press('Shift+ArrowRight');
    await sheet.press('Shift+ArrowRight');
    // Three whole days of the local clock; summer time stands since March, so a day is 24 hours.
    const clock = Number((await reading()).match(/, (\d\d):00 to/)![1]);
    const start = first - clock;
    const sum = door.hourly.without.slice(start, start + 72).reduce((a, b) => a + b, 0) / 1000;
    const figure = page.getByRole('figure').filter({ has: sheet });
    const text = plain(await figure.innerText());
    const found = [...text.matchAll(/([\d.,]+) kWh\/m²/g)].map((m) =>
      Number(m[1].replaceAll(',', '')),
    );
    // Sums are shown to a tenth.
    expect(
      found.some((f) => Math.abs(f - sum) <= 0.051),
      `${sum} in ${text}`,
    ).toBe(true);
    await sheet.press('Escape');
  });

  it('saves the hours behind the sheet', async () => {
    const figure = page.getByRole('figure').filter({ has: sheet });
    await figure.getByRole('button', { name: 'Save' }).click();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Data (CSV)' }).first().click();
    const text = await readFile(await (await download).path(), 'utf8');
    const { data } = Papa.parse<string[]>(text.trim());
    const at = data[0].findIndex((head) => /^Solar gain without/.test(head));
    expect(at).toBeGreaterThan(0);
    expect(data).toHaveLength(HOURS + 1);
    const total = data.slice(1).reduce((sum, row) => sum + Number(row[at]), 0);
    const engine = door.hourly.without.reduce((sum, v) => sum + v, 0);
    // A figure an hour, rounded to a whole watt at worst: they stray to both sides.
    expect(Math.abs(total - engine) / engine).toBeLessThan(0.001);
  });

  it('goes to the day of the hottest hour and back by days', async () => {
    await page.getByRole('button', { name: 'Hottest day' }).click();
    const at = await hour();
    const { dryBulb } = yearOf(project, stations);
    const hottest = dryBulb.indexOf(Math.max(...dryBulb));
    expect(Math.abs(at - hottest)).toBeLessThan(24);
    const day = (await reading()).split(',')[0];
    await page.getByRole('heading', { name: new RegExp(`^${day}`) }).waitFor();
    await page.getByRole('button', { name: 'The day before' }).click();
    expect(await hour()).toBe(at - 24);
  });

  it('has no fault axe knows, no sideways scroll and a silent console', async () => {
    expect(await accessProblems(page)).toEqual([]);
    for (const width of [1440, 768, 390]) {
      await page.setViewportSize({ width, height: 900 });
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect([width, over]).toEqual([width, 0]);
    }
    expect(app.errors).toEqual([]);
  });
});

/** Sentences of a language file that have nothing to fill in. */
function wholeSentences(branch: object): string[] {
  return Object.values(branch).flatMap((value: unknown) => {
    if (typeof value === 'object' && value !== null) return wholeSentences(value);
    return typeof value === 'string' && !value.includes('{{') ? [value] : [];
  });
}

describe('the year and the day in German', () => {
  let app: OpenApp;
  let page: Page;
  beforeAll(async () => {
    app = await openApp({ path: '/#year' });
    page = app.page;
    await page.evaluate(() => localStorage.setItem('shadewright.language', 'de'));
    await page.reload();
    await page.getByRole('heading', { name: germanYear.title }).waitFor();
    await page.getByRole('combobox', { name: germanYear.of }).selectOption({ label: 'West door' });
    await page.getByRole('slider', { name: /: gewählte Stunde$/ }).waitFor();
  });
  afterAll(() => app.close());

  it('has no English sentence and no decimal point', async () => {
    const bench = page.locator('[data-bench-shown="year"]');
    const text = plain(await bench.innerText());
    const spoken = await bench
      .locator('[aria-label]')
      .evaluateAll((all) => all.map((part) => part.getAttribute('aria-label')));
    const known = new Set(wholeSentences(germanYear));
    const english = wholeSentences(englishYear).filter((s) => s.includes(' ') && !known.has(s));
    const told = [text, ...spoken].join('\n').toLowerCase();
    expect(english.filter((sentence) => told.includes(sentence.toLowerCase()))).toEqual([]);
    expect(text).toContain('Das Jahr bringt');
    // Points stand between thousands only, and after the number of a day.
    expect(text.match(/\d\.\d{1,2}(?!\d)/g)).toBeNull();
  });

  it('reads days and hours the German way', async () => {
    const sheet = page.getByRole('slider', { name: /: gewählte Stunde$/ });
    const reading = plain((await sheet.getAttribute('aria-valuetext'))!);
    expect(reading).toMatch(/^[A-Z][a-z]+tag|^Mittwoch/);
    expect(reading).toMatch(/, \d+\. [A-Z][a-zä]+, \d\d:00 bis \d\d:00 Uhr: [\d.,]+ W\/m² Glas$/);
    expect(app.errors).toEqual([]);
  });
});
