import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import studio from '../../data/examples/studio.shadewright.json' with { type: 'json' };
import type { Project } from '../../lib/project/index.ts';
import { benches } from '../../src/app/panels/panels.ts';
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';
import { accessProblems, benchFaults } from './axe.ts';
import { houseFigures, houseRow, projectOf } from './house.ts';
import { english, wordsOnScreen } from './wordsOnScreen.ts';

/** The example with letters for all that its user named, so that only the page speaks. */
function unnamed(): Project {
  let n = 0;
  const named = /^(name|notes|source|sources|title|question)$/;
  const blank = (value: unknown, key = ''): unknown => {
    if (named.test(key)) return typeof value === 'string' ? `Q${++n}` : value;
    if (Array.isArray(value)) return value.map((item) => blank(item));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, blank(v, k)]));
  };
  return blank(studio) as Project;
}

async function openProject(page: Page, text: string, name: string): Promise<void> {
  await page
    .locator('input[type="file"][accept*="json"]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

async function show(page: Page, bench: string): Promise<void> {
  await page.locator(`[data-bench="${bench}"]`).click();
  await page.locator(`[data-bench-shown="${bench}"]`).waitFor();
}

const PATIENCE = { timeout: 90_000 };

/** Has the decision made, and a schedule looked for. */
async function decide(page: Page): Promise<void> {
  await page.getByRole('figure').first().waitFor(PATIENCE);
  for (const button of ['Suchen', 'Vergleichen']) {
    await page.getByRole('button', { name: button, exact: true }).click();
    await page.locator('progress').first().waitFor();
    await page
      .locator('progress')
      .first()
      .waitFor({ state: 'detached', ...PATIENCE });
  }
}

/** Every text of a bench: as it is, behind each of its choices and for each thing in its lists. */
async function walk(page: Page, bench: string): Promise<string[]> {
  const texts = new Set<string>();
  const read = async () => {
    await settle(page);
    for (const text of await wordsOnScreen(page)) texts.add(text);
  };
  await read();
  const shown = page.locator(`[data-bench-shown="${bench}"]`);
  if (bench === 'client') {
    for (const box of await shown.locator('fieldset input[type="checkbox"]').all())
      await box.check();
  }
  // What one choice leaves of the others is not known before it is made: one that is gone or not
  // allowed is left out.
  for (const { list, most } of [
    { list: 'nav button', most: 14 },
    { list: 'button[aria-expanded="false"]', most: 8 },
    { list: 'input[type="radio"]', most: 60 },
  ]) {
    for (let i = 0; i < Math.min(await shown.locator(list).count(), most); i++) {
      const one = shown.locator(list).nth(i);
      if (list.startsWith('input') && (await sameChoices(one, i))) continue;
      await one.click({ timeout: 1000, force: true }).catch(() => undefined);
      await read();
    }
  }
  return [...texts];
}

/** Whether a choice is beyond the third of its group, which says no more than those before it. */
function sameChoices(choice: Locator, index: number): Promise<boolean> {
  return choice
    .evaluate((one, i) => {
      const { name } = one as HTMLInputElement;
      const all = [...document.querySelectorAll<HTMLInputElement>('input[type="radio"]')];
      return (
        i > 0 && all.filter((other) => other.name === name).indexOf(one as HTMLInputElement) > 2
      );
    }, index)
    .catch(() => true);
}

/** Unfolds what is folded, and waits until nothing more comes. */
async function settle(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  let before = '';
  for (let i = 0; i < 40; i++) {
    const now = await page.evaluate(() => document.body.textContent!);
    if (now === before) return;
    before = now;
    await page.waitForTimeout(120);
  }
}

describe('the page in German', () => {
  let app: OpenApp;
  let page: Page;

  beforeAll(async () => {
    app = await openApp({ locale: 'de-DE', bypassCSP: true });
    page = app.page;
    await houseFigures(page);
    await openProject(page, JSON.stringify(unnamed()), 'Q.shadewright.json');
    await page.waitForFunction(() => document.title.startsWith('Q'));
  });

  afterAll(() => app.close());

  it('is what a German browser gets on its first visit', async () => {
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
    await page.getByRole('button', { name: 'Öffnungen', exact: true }).waitFor();
    await page.getByText(/Das Jahr ist in \d+(,\d)? ms berechnet/).waitFor();
  });

  it.each(benches.map(({ id }) => id))(
    'has no English on its bench "%s"',
    async (bench) => {
      await show(page, bench);
      if (bench === 'decide') await decide(page);
      if (bench === 'client') await page.locator('[data-page="ready"]').waitFor(PATIENCE);
      const texts = await walk(page, bench);
      expect(texts.length).toBeGreaterThan(60);
      expect(english(texts)).toEqual([]);
    },
    180_000,
  );

  it('has no English in its dialogs and notices', async () => {
    await openProject(
      page,
      JSON.stringify({ ...studio, site: { ...studio.site, latitude: 123 } }),
      'q.json',
    );
    await page.getByRole('alert').filter({ hasText: '„q.json“ wurde nicht geöffnet' }).waitFor();
    const texts = await wordsOnScreen(page);
    for (const name of ['Neues Haus ...', 'Auf diesem Rechner ...']) {
      await page.getByRole('button', { name: 'Projekt', exact: true }).click();
      await page.getByRole('button', { name }).click();
      await page.getByRole('dialog').waitFor();
      await settle(page);
      texts.push(...(await wordsOnScreen(page)));
      await page.keyboard.press('Escape');
    }
    expect(english([...new Set(texts)])).toEqual([]);
  });

  it('writes the figures of the facade table with a comma', async () => {
    await show(page, 'openings');
    await houseRow(page).waitFor();
    const table = await page.locator('#figures').innerText();
    expect(table).toMatch(/\d,\d/);
    // A point sets thousands apart, with three digits behind it, or ends the figures of a date.
    expect(table.match(/\d\.\d{1,2}(?![\d.])/g)).toBeNull();
  });

  it('is as accessible as in English', async () => {
    await show(page, 'openings');
    expect(await benchFaults(page)).toEqual([]);
    expect(await accessProblems(page)).toEqual([]);
  });

  it('leaves the console silent', () => {
    expect(app.errors).toEqual([]);
  });
});

describe('the choice of the language', () => {
  let app: OpenApp;
  let page: Page;

  beforeAll(async () => {
    app = await openApp();
    page = app.page;
    await houseFigures(page);
  });

  afterAll(() => app.close());

  async function speak(language: 'en' | 'de'): Promise<void> {
    await page.locator('header select:has(option[value="de"])').selectOption(language);
    await page.waitForFunction((now) => document.documentElement.lang === now, language);
  }

  it('leaves typing that is not taken yet, and the project, alone', async () => {
    const before = await projectOf(page);
    const width = page.locator('[data-bench-shown] input[inputmode="text"]').first();
    await width.click();
    await width.pressSequentially(' 3');
    const typed = await width.inputValue();
    await speak('de');
    expect(await width.inputValue()).toBe(typed);
    await page.getByRole('button', { name: /^Rückgängig/ }).waitFor();
    await speak('en');
    expect(await width.inputValue()).toBe(typed);
    await page.keyboard.press('Escape');
    expect(await projectOf(page)).toEqual(before);
    expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
    expect(app.errors).toEqual([]);
  });

  it('is that of what is wrong with an entry, too', async () => {
    await show(page, 'room');
    await settle(page);
    const cell = page.locator('[data-bench-shown] .field[role="group"] > input').first();
    await cell.fill('x');
    await cell.press('Tab');
    const told = (words: string) => page.getByRole('alert').filter({ hasText: words });
    await told('type a number.').waitFor();
    await speak('de');
    await told('eine Zahl eingeben.').waitFor();
    expect(await cell.inputValue()).toBe('x');
    await speak('en');
    await told('type a number.').waitFor();
    await cell.press('Escape');
    await told('type a number.').waitFor({ state: 'detached' });
    expect(app.errors).toEqual([]);
  });

  it('is kept for the next visit', async () => {
    await speak('de');
    await page.reload();
    await houseFigures(page);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
    await page.getByRole('button', { name: /^Rückgängig/ }).waitFor();
    expect(app.errors).toEqual([]);
  });
});

describe('a page whose words do not come', () => {
  it('says so in every language', async () => {
    const { page, close } = await openApp();
    await houseFigures(page);
    // What the page has kept of itself would stand in for what is missing.
    await page.evaluate(async () => {
      for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
    });
    await page.route(/assets\/shell-[^/]*\.js$/, (route) => route.abort('connectionrefused'));
    await page.reload();
    const alert = await page.getByRole('alert').innerText();
    expect(alert).toContain('could not be loaded');
    expect(alert).toContain('konnten nicht geladen werden');
    await close();
  });
});
