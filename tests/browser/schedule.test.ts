import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';

const BENCH = '/#schedules';
/** A run takes well under a second; a shared machine may need more. */
const PATIENCE = { timeout: 30_000, interval: 100 };

let app: OpenApp;
let page: Page;

async function open(options: Parameters<typeof openApp>[0] = {}): Promise<void> {
  app = await openApp({ path: BENCH, ...options });
  page = app.page;
  await page.locator('[data-figure="summer"]').waitFor();
}

const targets = () => page.getByRole('region', { name: 'What is scheduled' });
const rules = () => page.getByRole('region', { name: /^Rules/ }).locator('ol > li');
const grid = () => page.getByRole('application');
const value = (key: string) => page.locator(`[data-figure="${key}"] .value`).innerText();

/** The last number of a figure: `616 → 240 kWh` is 240. */
async function number(key: string): Promise<number> {
  const numbers = (await value(key)).replace(/,/g, '').match(/\d+(\.\d+)?/g) ?? [];
  return Number(numbers.at(-1));
}

async function choose(name: string): Promise<void> {
  await targets().getByRole('button', { name, exact: false }).first().click();
  await page.getByRole('heading', { level: 2, name, exact: true }).waitFor();
}

/** Gives what is on the desk a schedule without rules and waits until nothing moves any more. */
async function startEmpty(name: string): Promise<void> {
  await choose(name);
  await page.getByRole('button', { name: 'New schedule', exact: true }).click();
  await expect.poll(() => number('moves'), PATIENCE).toBe(0);
}

/** Drags from the middle of a half-hour cell to that of another; months from 0. */
async function drag(from: [number, number], to: [number, number]): Promise<void> {
  await grid().evaluate((element) => element.scrollIntoView({ block: 'end' }));
  const box = (await grid().boundingBox())!;
  const [left, right, top, foot] = [46, 2, 10, 24];
  const [width, height] = [box.width - left - right, box.height - top - foot];
  const [a, b] = [from, to].map(([month, hour]) => ({
    x: box.x + left + ((month + 0.5) / 12) * width,
    y: box.y + top + (1 - (hour + 0.25) / 24) * height,
  }));
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move((a.x + b.x) / 2, (a.y + b.y) / 2, { steps: 4 });
  await page.mouse.move(b.x, b.y, { steps: 4 });
}

const sentence = (rule: number) => rules().nth(rule).locator('p').first().innerText();
const undo = () => page.getByRole('banner').getByRole('button', { name: 'Undo' }).click();

describe('the schedule desk', () => {
  beforeAll(() => open());
  afterAll(() => app.close());

  it('paints hours by mouse, moves the figures meanwhile, and undoes a stroke as one', async () => {
    await startEmpty('East window over the workbench');
    const before = await number('summer');
    await drag([3, 6], [8, 12]);
    // The hand is still down: the figures do not wait for it.
    await expect.poll(() => number('summer'), PATIENCE).toBeLessThan(before * 0.8);
    await page.mouse.up();
    expect(await sentence(0)).toContain('from 06:00 to 12:30');
    expect(await sentence(0)).toMatch(/Apr to Sep/);
    expect(await number('moves')).toBeGreaterThan(300);
    await undo();
    await expect.poll(() => number('summer'), PATIENCE).toBe(before);
    expect(await rules().count()).toBe(0);
  });

  it('lets go of a stroke with Escape', async () => {
    await startEmpty('East window over the workbench');
    await drag([3, 6], [8, 12]);
    await expect.poll(() => rules().count(), PATIENCE).toBe(1);
    await page.keyboard.press('Escape');
    await expect.poll(() => rules().count(), PATIENCE).toBe(0);
    await page.mouse.up();
    expect(await page.locator('[data-painted]').getAttribute('data-painted')).toBe('none');
  });

  it('paints and erases by keyboard', async () => {
    await startEmpty('East window over the workbench');
    const before = await number('summer');
    await grid().focus();
    // To June 06:00, and from there to 12:00 and across to August.
    await page.keyboard.press('Home');
    for (let i = 0; i < 8; i++) await page.keyboard.press('PageDown');
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    for (let i = 0; i < 2; i++) await page.keyboard.press('PageUp');
    for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+PageUp');
    for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Space');
    await expect.poll(() => sentence(0), PATIENCE).toContain('from 06:00 to 12:30');
    expect(await sentence(0)).toMatch(/Jun to Aug/);
    await expect.poll(() => number('summer'), PATIENCE).toBeLessThan(before * 0.8);
    // The cursor is at August 12:00: half an hour of it goes.
    await page.keyboard.press('Delete');
    await expect.poll(() => sentence(0), PATIENCE).toContain('from 06:00 to 12:00');
    // Escape lets go of what Shift took in, so that only one cell is painted.
    await page.keyboard.press('Shift+ArrowLeft');
    await page.keyboard.press('Escape');
    for (let i = 0; i < 2; i++) await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Space');
    await expect.poll(() => sentence(0), PATIENCE).toContain('from 13:00 to 13:30');
  });

  it('lets the order of the rules decide', async () => {
    await choose('Long south window');
    const kept = await number('winter');
    const first = rules().first();
    await first.getByRole('button', { name: 'Down', exact: true }).click();
    // The rule that keeps the blind up in winter comes too late now.
    await expect.poll(() => number('winter'), PATIENCE).toBeGreaterThan(kept);
    // Back by the handle: the pointer carries the second rule above the first.
    const handle = rules().nth(1).locator('.handle');
    const from = (await handle.boundingBox())!;
    const to = (await rules().first().boundingBox())!;
    await page.mouse.move(from.x + 10, from.y + 10);
    await page.mouse.down();
    await page.mouse.move(to.x + 20, to.y + 8, { steps: 5 });
    await page.mouse.up();
    await expect.poll(() => number('winter'), PATIENCE).toBe(kept);
    // And by arrow keys.
    await rules().first().locator('.handle').press('ArrowDown');
    await expect.poll(() => number('winter'), PATIENCE).toBeGreaterThan(kept);
  });

  it('starts from a ready-made schedule', async () => {
    await startEmpty('Roof-light');
    const before = await number('summer');
    await page.getByRole('button', { name: 'Use Hot outdoors' }).click();
    await expect.poll(() => sentence(0), PATIENCE).toContain('the outdoor air is at 22 °C or more');
    await expect.poll(() => number('summer'), PATIENCE).toBeLessThan(before);
    expect(await page.getByLabel('Name of the schedule').inputValue()).toBe('Hot outdoors');
  });

  it('changes a rule in its form and warns of one that never decides', async () => {
    await choose('Roof-light');
    const first = rules().first();
    await first.getByRole('button', { name: 'Change' }).click();
    const before = await number('daylight');
    await first.getByLabel('Applies at (or more)').fill('28 C');
    await first.getByLabel('Applies at (or more)').press('Enter');
    await expect.poll(() => sentence(0), PATIENCE).toContain('28 °C or more (until down to 26)');
    await expect.poll(() => number('daylight'), PATIENCE).toBeLessThan(before);
    await first.getByRole('button', { name: 'Copy', exact: true }).click();
    await rules().nth(1).getByText('never decides').waitFor();
  });

  it('makes a group, puts blinds in and out, and takes it back', async () => {
    await page.getByRole('button', { name: 'Make a group' }).click();
    const form = page.locator('.list fieldset');
    await form.getByLabel('East window over the workbench').check();
    await form.getByLabel('Roof-light').check();
    await form.getByRole('button', { name: 'Make the group' }).click();
    const members = page.getByRole('group', { name: 'Blinds in the group' });
    await members.waitFor();
    expect(await page.getByLabel('Channel on the remote').inputValue()).toBe('2');
    expect(await members.getByRole('checkbox', { checked: true }).count()).toBe(2);
    await members.getByLabel('Long south window').check();
    await expect.poll(() => members.getByRole('checkbox', { checked: true }).count()).toBe(3);
    await members.getByLabel('Roof-light').uncheck();
    await expect.poll(() => members.getByRole('checkbox', { checked: true }).count()).toBe(2);
    for (let i = 0; i < 3; i++) await undo();
    await expect.poll(() => members.count()).toBe(0);
    expect(await targets().innerText()).not.toContain('channel 2');
  });

  it('keeps the console silent', () => expect(app.errors).toEqual([]));
});

describe.each([
  { width: 1440, height: 900, dark: false },
  { width: 390, height: 844, dark: true },
])('at $width x $height, dark $dark', (options) => {
  beforeEach(() => open({ ...options, bypassCSP: true }));

  it('is sound to axe-core, with a rule open, and does not scroll sideways', async () => {
    await rules().first().getByRole('button', { name: 'Change' }).click();
    await page.getByText('Ready-made schedules').click();
    await page.getByText('Paint by month and hour').click();
    await page.addScriptTag({ content: readFileSync(axePath, 'utf8') });
    const found = await page.evaluate(async () => {
      const { axe } = window as unknown as { axe: typeof import('axe-core') };
      const bench = document.querySelector('[data-bench-shown]')!;
      const { violations } = await axe.run(bench);
      return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html}`));
    });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    const { errors } = app;
    await app.close();
    expect(found).toEqual([]);
    expect(wide).toBeLessThanOrEqual(0);
    expect(errors).toEqual([]);
  });
});

const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
