import { afterEach, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import studio from '../../data/examples/studio.shadewright.json' with { type: 'json' };
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';
import { fromMenu, houseFigures, projectName, rename, saved, savedFile } from './house.ts';

let app: OpenApp;
let page: Page;

async function start(): Promise<void> {
  app = await openApp();
  page = app.page;
  await houseFigures(page);
}

afterEach(() => app.close());

const nameOf = (of: Page) => projectName(of).inputValue();

async function nameIs(of: Page, name: string | RegExp): Promise<void> {
  await of.waitForFunction(
    ([source, flags]) => new RegExp(source, flags).test(document.title),
    typeof name === 'string'
      ? [`^${name.replace(/[()]/g, '\\$&')} - Shadewright$`, '']
      : [name.source, name.flags],
  );
}

async function open(text: string, name = 'house.shadewright.json'): Promise<void> {
  await page
    .locator('input[type="file"][accept*="json"]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

const saveToFile = () => savedFile(page);

describe('work in progress', () => {
  it('is there again after a reload', async () => {
    await start();
    await rename(page, 'Attic');
    await saved(page);
    await page.reload();
    await houseFigures(page);
    expect(await nameOf(page)).toBe('Attic');
    expect(app.errors).toEqual([]);
  });

  it('is there again in a new tab after the old one was closed', async () => {
    await start();
    await rename(page, 'Barn');
    await saved(page);
    const second = await app.context.newPage();
    await page.close();
    await second.goto(app.server.url);
    await houseFigures(second);
    expect(await nameOf(second)).toBe('Barn');
    await second.getByText('This project is open in another tab').waitFor({ state: 'detached' });
    expect(app.errors).toEqual([]);
  });

  it('is written when the page is left before the pause is over', async () => {
    await start();
    // The clock stands still, so the pause is never over.
    await page.clock.install();
    await page.clock.pauseAt(Date.now() + 1000);
    await rename(page, 'Cabin');
    await page.evaluate(() => {
      Object.defineProperty(document, 'visibilityState', { get: () => 'hidden' });
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await saved(page);
    await page.close({ runBeforeUnload: false });
    const next = await app.context.newPage();
    await next.goto(app.server.url);
    await houseFigures(next);
    expect(await nameOf(next)).toBe('Cabin');
  });

  it('with an input that cannot be computed comes back with its last figures', async () => {
    await start();
    const figures = await houseFigures(page);
    await page.goto(`${app.server.url}/#site`);
    await page.getByRole('radio', { name: /Monthly values/ }).check();
    await page.getByRole('textbox', { name: 'Mean temperature, Jul' }).fill('45');
    await page.getByRole('textbox', { name: 'Mean temperature, Jul' }).press('Enter');
    await page.getByRole('alert', { name: 'Problems' }).waitFor();
    await saved(page);
    await page.reload();
    await page.getByRole('alert', { name: 'Problems' }).waitFor();
    expect(await houseFigures(page)).toBeTruthy();
    const july = page.getByRole('textbox', { name: 'Mean temperature, Jul' });
    expect(await july.inputValue()).toBe('45');
    await july.fill('20');
    await july.press('Enter');
    await page.getByRole('alert', { name: 'Problems' }).waitFor({ state: 'detached' });
    expect(figures).toBeTruthy();
    expect(app.errors).toEqual([]);
  });
});

describe('project files', () => {
  it('are saved and opened again the same', async () => {
    await start();
    await rename(page, 'Loft (north)');
    const { name, text } = await saveToFile();
    expect(name).toBe('loft-north.shadewright.json');
    expect({ ...JSON.parse(text), name: studio.name }).toEqual(studio);
    await fromMenu(page, 'House by the bay');
    await nameIs(page, 'House by the bay');
    await open(text);
    await nameIs(page, 'Loft (north)');
    expect((await saveToFile()).text).toBe(text);
    expect(app.errors).toEqual([]);
  });

  it('are opened by dropping them', async () => {
    await start();
    const data = await page.evaluateHandle(
      (text) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text], 'dropped.shadewright.json'));
        return transfer;
      },
      JSON.stringify({ ...studio, name: 'Dropped' }),
    );
    await page.locator('main').dispatchEvent('drop', { dataTransfer: data });
    await nameIs(page, 'Dropped');
  });

  it.each([
    ['no JSON', '{"format": "shadewright-project", }', /line 1/],
    ['empty', '', /JSON/],
    ['a file of something else', '{"type": "FeatureCollection"}', /format/],
    ['a later version', JSON.stringify({ ...studio, version: 99 }), /version/],
    [
      'a latitude out of range',
      change((p) => (p.site.latitude = 123)),
      /site\.latitude.*-90 to 90/,
    ],
    ['a missing wall', change((p) => (p.openings[0].wall = 'gone')), /wall/],
    ['an unknown field', JSON.stringify({ ...studio, colour: 'red' }), /colour/],
    ['a place that does not ship', change((p) => (p.climate.station = 'atlantis')), /station/],
  ])('that are broken tell why and leave the screen alone: %s', async (_, text, reason) => {
    await start();
    await rename(page, 'Mine');
    const figures = await houseFigures(page);
    await open(text, 'broken.json');
    const notice = page.getByRole('alert').filter({ hasText: '"broken.json" was not opened' });
    await notice.waitFor();
    expect((await notice.innerText()).replace(/\s+/g, ' ')).toMatch(reason);
    expect(await nameOf(page)).toBe('Mine');
    expect(await houseFigures(page)).toBe(figures);
    expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(false);
    await notice.getByRole('button', { name: 'Put away' }).click();
    await notice.waitFor({ state: 'detached' });
    expect(app.errors).toEqual([]);
  });

  it('with markup in names and notes show it as text', async () => {
    await start();
    const mark = '<img src=x onerror="document.title=1">';
    await open(
      change((p) => {
        p.name = mark;
        p.openings[0].name = mark;
        p.walls[0].name = mark;
        p.site.name = mark;
      }),
    );
    await page.getByText(mark).first().waitFor();
    expect(await page.locator('img').count()).toBe(0);
    expect(app.errors).toEqual([]);
  });

  function change(edit: (project: typeof studio) => void): string {
    const project = structuredClone(studio);
    edit(project);
    return JSON.stringify(project);
  }
});

describe('projects kept on this computer', () => {
  it('are listed, renamed, duplicated, deleted, brought back and opened', async () => {
    await start();
    await rename(page, 'One');
    await saved(page);
    await fromMenu(page, 'House by the bay');
    await nameIs(page, 'House by the bay');
    await rename(page, 'Two');
    await saved(page);
    await fromMenu(page, 'Kept on this computer');
    const dialog = page.getByRole('dialog', { name: 'Kept on this computer' });
    const names = () => dialog.locator('li strong').allInnerTexts();
    const row = (name: string) => dialog.getByRole('group', { name, exact: true });
    await row('One').waitFor();
    expect(await names()).toEqual(['Two', 'One']);
    expect(await row('Two').getByRole('button', { name: 'Delete' }).isDisabled()).toBe(true);

    await row('One').getByRole('button', { name: 'Rename' }).click();
    await dialog.getByRole('textbox', { name: 'New name' }).fill('First');
    await page.keyboard.press('Enter');
    await row('First').getByRole('button', { name: 'Duplicate' }).click();
    await row('First (copy)').waitFor();
    await row('First').getByRole('button', { name: 'Delete' }).click();
    await row('First').waitFor({ state: 'detached' });
    await dialog.getByRole('button', { name: 'Bring it back' }).click();
    await row('First').waitFor();
    await row('First (copy)').getByRole('button', { name: 'Delete' }).click();
    await row('First (copy)').waitFor({ state: 'detached' });

    await row('First').getByRole('button', { name: 'Open' }).click();
    await nameIs(page, 'First');
    await page.reload();
    await houseFigures(page);
    expect(await nameOf(page)).toBe('First');
    await fromMenu(page, 'Kept on this computer');
    await row('Two').waitFor();
    expect((await names()).sort()).toEqual(['First', 'Two']);
    expect(app.errors).toEqual([]);
  });
});

describe('two tabs on one project', () => {
  async function second(): Promise<Page> {
    const other = await app.context.newPage();
    await other.goto(app.server.url);
    await houseFigures(other);
    await other.getByText('This project is open in another tab').waitFor();
    return other;
  }

  it('follow the first, and a change in the second goes into a copy', async () => {
    await start();
    await rename(page, 'Shared');
    await saved(page);
    const other = await second();
    await rename(page, 'Shared by one');
    await saved(page);
    await nameIs(other, 'Shared by one');
    await other.getByRole('combobox', { name: 'Units' }).selectOption('imperial');
    await nameIs(other, 'Shared by one (copy)');
    await other.getByText('Your change is in a copy of it').waitFor();
    await saved(other);
    await page.reload();
    await other.reload();
    await houseFigures(page);
    await houseFigures(other);
    expect([await nameOf(page), await nameOf(other)]).toEqual([
      'Shared by one',
      'Shared by one (copy)',
    ]);
    expect(await other.getByRole('combobox', { name: 'Units' }).inputValue()).toBe('imperial');
    expect(await page.getByRole('combobox', { name: 'Units' }).inputValue()).toBe('metric');
    expect(app.errors).toEqual([]);
  });

  it('change places when the second takes over, and nothing is lost', async () => {
    await start();
    await rename(page, 'Shared');
    await saved(page);
    const other = await second();
    // A change still unwritten in the first tab goes along.
    await rename(page, 'Shared at the last moment');
    await other.getByRole('button', { name: 'Work on it here instead' }).click();
    await page.getByText('This project is open in another tab').waitFor();
    await nameIs(other, 'Shared at the last moment');
    await other.getByText('This project is open in another tab').waitFor({ state: 'detached' });
    await rename(other, 'Taken over');
    await saved(other);
    await nameIs(page, 'Taken over');
    expect(app.errors).toEqual([]);
  });

  it('hand the project on when the first is closed', async () => {
    await start();
    await rename(page, 'Heirloom');
    await saved(page);
    const other = await second();
    await page.close();
    await other.getByText('This project is open in another tab').waitFor({ state: 'detached' });
    await rename(other, 'Inherited');
    await saved(other);
    expect(await nameOf(other)).toBe('Inherited');
  });
});

describe('storage that fails', () => {
  it('is told when it is blocked; the work goes on and into a file', async () => {
    await start();
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('blocked by the test', 'SecurityError');
      };
    });
    await page.reload();
    await houseFigures(page);
    await page.getByText('This browser keeps nothing for this page').waitFor();
    await rename(page, 'On the air');
    await nameIs(page, 'On the air');
    await page.getByText('Not saved', { exact: true }).waitFor();
    expect(JSON.parse((await saveToFile()).text).name).toBe('On the air');
  });

  it('is told when the disk is full, and the next change tries again', async () => {
    await start();
    await rename(page, 'Before');
    await saved(page);
    await page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      const full = globalThis as unknown as { full: boolean };
      full.full = true;
      IDBObjectStore.prototype.put = function (...parameters) {
        if (full.full) throw new DOMException('no room in the test', 'QuotaExceededError');
        return put.apply(this, parameters);
      };
    });
    await rename(page, 'Too much');
    await page.getByText('There is no room left').waitFor();
    await nameIs(page, 'Too much');
    // Opening something else is asked about first.
    await fromMenu(page, 'House by the bay');
    await page.getByText('Opening another one would lose its last changes').waitFor();
    await nameIs(page, 'Too much');
    await page.evaluate(() => Object.assign(globalThis, { full: false }));
    await rename(page, 'Room again');
    await page.getByText('There is no room left').waitFor({ state: 'detached' });
    await saved(page);
    await page.reload();
    await houseFigures(page);
    expect(await nameOf(page)).toBe('Room again');
    expect(app.errors).toEqual([]);
  });
});
