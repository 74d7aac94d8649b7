import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';
import { figuresAfter, houseFigures } from './house.ts';

/** Most stops of the Tab key between two places of the page. */
const MOST_TABS = 60;

describe('the keyboard alone', () => {
  let app: OpenApp;
  let page: Page;
  beforeAll(async () => {
    app = await openApp();
    page = app.page;
  });
  afterAll(() => app.close());

  const press = async (...keys: string[]) => {
    for (const key of keys) await page.keyboard.press(key);
  };

  /** Goes to a control by the Tab key; fails where it is out of reach. */
  async function tabTo(target: Locator): Promise<void> {
    await target.waitFor();
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      if (await target.evaluate((node) => node === document.activeElement)) return;
      await press('Tab');
    }
    throw new Error(`The Tab key does not reach ${String(target)}.`);
  }

  it('leads from a blank start to a page for the client', async () => {
    const example = await houseFigures(page);
    await tabTo(page.getByRole('button', { name: 'Project', exact: true }));
    await press('Enter');
    await tabTo(page.getByRole('button', { name: 'New house' }));
    await press('Enter');
    const dialog = page.getByRole('dialog', { name: 'New house' });
    await dialog.getByRole('radio', { name: /Denver/ }).waitFor();
    await tabTo(dialog.getByRole('searchbox'));
    await page.keyboard.type('denver');
    await press('Enter');
    await tabTo(dialog.getByRole('combobox'));
    // North, and then clockwise by eighths: west is the sixth below it.
    await press('Home', ...new Array<string>(6).fill('ArrowDown'));
    await tabTo(dialog.getByRole('spinbutton', { name: 'Glazed doors' }));
    await press('Control+a');
    await page.keyboard.type('2');
    await tabTo(dialog.getByRole('button', { name: 'Start with this house' }));
    await press('Enter');
    await page.waitForFunction(() => document.title.startsWith('House in Denver'));
    await figuresAfter(page, example);

    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await tabTo(page.getByRole('navigation').getByRole('button', { name: 'Client page' }));
    await press('Enter');
    const title = page.getByRole('textbox', { name: 'Title' });
    await tabTo(title);
    await page.keyboard.type('The west rooms');
    const paper = page.locator('[data-page="ready"]');
    await paper.waitFor({ timeout: 90_000 });
    await expect.poll(() => paper.innerText(), { timeout: 30_000 }).toContain('The west rooms');
    const answer = await paper.locator('[data-answer]').innerText();
    // Glass to the west of a sunny place, with no shading at all.
    expect(answer).toMatch(/^External blinds/);
    expect(await paper.innerText()).toMatch(/hours/);
    const print = page.getByRole('button', { name: 'Print', exact: true });
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      if (await print.evaluate((node) => node === document.activeElement)) break;
      await press('Shift+Tab');
    }
    await press('Enter');
    await page.locator('[data-printed]').waitFor();
    expect(app.errors).toEqual([]);
  }, 240_000);
});
