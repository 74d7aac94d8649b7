import { afterEach, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { openApp } from './app.ts';
import type { AppOptions, OpenApp } from './app.ts';
import { accessProblems } from './axe.ts';
import { figuresAfter, fromMenu, houseFigures, openBench, projectName, rename } from './house.ts';

let app: OpenApp;
let page: Page;

async function start(options?: AppOptions): Promise<void> {
  app = await openApp(options);
  page = app.page;
}

afterEach(() => app.close());

describe('a first visit', () => {
  it('opens on the example house with its figures, and the console is silent', async () => {
    await start();
    const figures = await houseFigures(page);
    // House, glass, then summer and year without and with: whole numbers above nothing.
    const numbers = figures.match(/[\d,]+(\.\d+)?/g)!.map((n) => Number(n.replace(',', '')));
    expect(numbers.length).toBeGreaterThan(5);
    expect(numbers[0]).toBeGreaterThan(5);
    expect(await page.title()).toBe('Studio on a wooded slope - Shadewright');
    await page.getByText(/The year is computed in [\d.]+ ms/).waitFor();
    expect(app.errors).toEqual([]);
  });

  it('asks nothing of any other host', async () => {
    await start();
    const hosts = new Set<string>();
    app.context.on('request', (request) => hosts.add(new URL(request.url()).host));
    await page.reload();
    await houseFigures(page);
    await openBench(page, 'Site', 'site');
    await page.waitForTimeout(500);
    expect([...hosts]).toEqual([new URL(app.server.url).host]);
  });

  it('opens again without a network', async () => {
    await start();
    await houseFigures(page);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await app.context.setOffline(true);
    await app.server.close();
    await page.reload();
    expect(await houseFigures(page)).toContain('House');
    // Parts that were never shown before are there too.
    await openBench(page, 'Site', 'site');
    await page.getByRole('radiogroup', { name: 'Place with weather' }).waitFor();
    await fromMenu(page, 'House with deep roofs');
    await page.waitForFunction(() => document.title.startsWith('House with deep roofs'));
    expect(app.errors).toEqual([]);
  });
});

describe('the header', () => {
  it('renames the project, and undo says what it takes back', async () => {
    await start();
    await houseFigures(page);
    await rename(page, 'Barn <b>at</b> the lake');
    expect(await page.title()).toBe('Barn <b>at</b> the lake - Shadewright');
    const undo = page.getByRole('button', { name: /^Undo/ });
    expect(await undo.innerText()).toContain('Rename the project');
    await undo.click();
    expect(await projectName(page).inputValue()).toBe('Studio on a wooded slope');
    await page.getByRole('button', { name: /^Redo/ }).click();
    expect(await projectName(page).inputValue()).toBe('Barn <b>at</b> the lake');
    expect(app.errors).toEqual([]);
  });

  it('keeps the old name where the new one is blank', async () => {
    await start();
    await houseFigures(page);
    await rename(page, '   ');
    expect(await projectName(page).inputValue()).toBe('Studio on a wooded slope');
    expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
  });

  it('changes units everywhere', async () => {
    await start({ path: '/#site' });
    await houseFigures(page);
    await page.getByRole('radio', { name: /Monthly values/ }).check();
    const cell = page.getByRole('textbox', { name: 'Mean temperature, Jul' });
    const celsius = Number(await cell.inputValue());
    await page.getByRole('combobox', { name: 'Units' }).selectOption('imperial');
    await page.waitForFunction(
      (old) =>
        document.querySelector<HTMLInputElement>('[aria-label="Mean temperature, Jul"]')?.value !==
        String(old),
      celsius,
    );
    // Both are shown to a tenth.
    expect(Math.abs(Number(await cell.inputValue()) - (celsius * 1.8 + 32))).toBeLessThan(0.15);
    expect(app.errors).toEqual([]);
  });

  it('changes the appearance and remembers it', async () => {
    await start();
    await houseFigures(page);
    const paper = () =>
      page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const light = await paper();
    await page.getByRole('combobox', { name: 'Appearance' }).selectOption('dark');
    const dark = await paper();
    expect(dark).not.toBe(light);
    await page.reload();
    await houseFigures(page);
    expect(await paper()).toBe(dark);
  });

  it('opens each example with figures of its own', async () => {
    await start();
    const seen = [await houseFigures(page)];
    for (const name of ['House by the bay', 'House with deep roofs', 'Studio on a wooded slope']) {
      await fromMenu(page, name);
      seen.push(await figuresAfter(page, seen.at(-1)!));
      expect(await projectName(page).inputValue()).toBe(name);
    }
    expect(new Set(seen.slice(0, 3)).size).toBe(3);
    expect(seen[3]).toBe(seen[0]);
    expect(app.errors).toEqual([]);
  });
});

describe('keys', () => {
  it('undo and redo by Ctrl+Z and Ctrl+Shift+Z, and leave typing to the field', async () => {
    await start();
    await houseFigures(page);
    await rename(page, 'First');
    await rename(page, 'Second');
    await page.keyboard.press('Control+z');
    expect(await projectName(page).inputValue()).toBe('First');
    await page.keyboard.press('Control+Shift+Z');
    expect(await projectName(page).inputValue()).toBe('Second');
    await projectName(page).focus();
    await page.keyboard.type(' more');
    await page.keyboard.press('Control+z');
    // The browser took the typing back; the project was left alone.
    expect(await page.title()).toBe('Second - Shadewright');
    await page.keyboard.press('Escape');
  });

  it('undo a hundred steps', async () => {
    await start();
    await houseFigures(page);
    for (let n = 0; n < 101; n++) await rename(page, `Step ${n}`);
    for (let n = 0; n < 100; n++) await page.keyboard.press('Control+z');
    expect(await projectName(page).inputValue()).toBe('Step 0');
    expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
  });
});

describe('benches', () => {
  it('are buttons with an address each; back leads back', async () => {
    await start();
    await houseFigures(page);
    const buttons = page.getByRole('navigation', { name: 'Benches' }).getByRole('button');
    const count = await buttons.count();
    expect(count).toBeGreaterThan(2);
    for (let i = 0; i < count; i++) {
      await buttons.nth(i).click();
      const id = await buttons.nth(i).getAttribute('data-bench');
      await page.locator(`[data-bench-shown="${id}"]`).waitFor();
      expect(await buttons.nth(i).getAttribute('aria-current')).toBe('page');
      expect(new URL(page.url()).hash).toBe(`#${id}`);
    }
    const before = await buttons.nth(count - 2).getAttribute('data-bench');
    await page.goBack();
    await page.locator(`[data-bench-shown="${before}"]`).waitFor();
    expect(app.errors).toEqual([]);
  });

  it('fit every width without scrolling the page sideways', async () => {
    await start();
    await houseFigures(page);
    const ids = await page
      .locator('[data-bench]')
      .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.bench!));
    for (const width of [390, 768, 1280, 2560]) {
      await page.setViewportSize({ width, height: 900 });
      for (const id of ids) {
        await page.locator(`[data-bench="${id}"]`).click();
        await page.locator(`[data-bench-shown="${id}"]`).waitFor();
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect([width, id, over]).toEqual([width, id, 0]);
      }
    }
  });

  it('leave the facade table in sight on a wide page, and it folds away', async () => {
    await start({ path: '/#site' });
    await houseFigures(page);
    const inSight = () =>
      page.locator('#figures').evaluate((table) => table.getBoundingClientRect().top < innerHeight);
    expect(await inSight()).toBe(true);
    expect(await page.getByRole('complementary', { name: 'Facade ring' }).isVisible()).toBe(true);
    await page.getByRole('button', { name: 'Fold the table away' }).click();
    expect(await page.locator('#figures tr').count()).toBe(0);
    await page.reload();
    await page.getByRole('button', { name: 'Show the table of facades' }).click();
    await houseFigures(page);
  });
});

describe('a blank start', () => {
  it('is answered by keyboard alone', async () => {
    await start();
    const before = await houseFigures(page);
    const press = (...keys: string[]) =>
      keys.reduce((done, key) => done.then(() => page.keyboard.press(key)), Promise.resolve());
    const focused = () =>
      page.evaluate(() => document.activeElement?.textContent?.trim().slice(0, 40) ?? '');
    for (let tabs = 0; !(await focused()).startsWith('Project') && tabs < 10; tabs++) {
      await press('Tab');
    }
    await press('Enter', 'Tab', 'Enter');
    const dialog = page.getByRole('dialog', { name: 'New house' });
    await dialog.getByRole('radio', { name: /Denver/ }).waitFor();
    const search = dialog.getByRole('searchbox');
    for (let tabs = 0; tabs < 4; tabs++) {
      if (await search.evaluate((field) => field === document.activeElement)) break;
      await press('Tab');
    }
    await page.keyboard.type('denver');
    await press('Enter', 'Tab', 'Tab');
    // The compass word: north-east follows north, so east is two below it.
    await press('Home', 'ArrowDown', 'ArrowDown', 'Tab', 'Tab');
    await page.keyboard.type('3');
    await press('Tab');
    await page.keyboard.type('1');
    await press('Tab', 'Tab');
    await press('Control+a');
    await page.keyboard.type('36 cm');
    await press('Tab', 'Enter');
    await page.waitForFunction(() => document.title.startsWith('House in Denver'));
    await figuresAfter(page, before);
    const table = await page.locator('#figures').innerText();
    expect(table).toContain('East wall');
    expect(table).toMatch(/East windows/);
    expect(table).toMatch(/East glazed door/);
    expect(app.errors).toEqual([]);
  });

  it('closes on Escape, gives the focus back and leaves the project alone', async () => {
    await start();
    await houseFigures(page);
    await fromMenu(page, 'New house');
    await page.getByRole('dialog', { name: 'New house' }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog', { name: 'New house' }).waitFor({ state: 'detached' });
    expect(await projectName(page).inputValue()).toBe('Studio on a wooded slope');
    const focused = await page.evaluate(() => document.activeElement?.textContent?.trim());
    expect(focused).toMatch(/^Project/);
  });

  it('cannot be started without an opening', async () => {
    await start();
    await houseFigures(page);
    await fromMenu(page, 'New house');
    await page.getByRole('spinbutton', { name: 'Windows' }).fill('0');
    await page.getByText('Take at least one opening.').waitFor();
    const go = page.getByRole('button', { name: 'Start with this house' });
    expect(await go.isDisabled()).toBe(true);
  });
});

describe('access', () => {
  it.each([
    ['light', false, 1440],
    ['dark', true, 1440],
    ['narrow', false, 390],
  ] as const)('has no serious finding: %s', async (_, dark, width) => {
    await start({ dark, width, bypassCSP: true, path: '/#site' });
    await houseFigures(page);
    await page.getByRole('radiogroup', { name: 'Place with weather' }).waitFor();
    expect(await accessProblems(page)).toEqual([]);
    await page.getByRole('radio', { name: /Monthly values/ }).check();
    await page.getByRole('textbox', { name: 'Mean temperature, Jul' }).waitFor();
    expect(await accessProblems(page)).toEqual([]);
    await page.getByRole('radio', { name: /Hourly file/ }).check();
    await page.getByText('8,760 rows with').waitFor();
    expect(await accessProblems(page)).toEqual([]);
    await fromMenu(page, 'New house');
    await page
      .getByRole('dialog')
      .getByRole('radio', { name: /Denver/ })
      .waitFor();
    expect(await accessProblems(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await fromMenu(page, 'Kept on this computer');
    await page.getByText('Every change is kept').waitFor();
    expect(await accessProblems(page)).toEqual([]);
  });
});
