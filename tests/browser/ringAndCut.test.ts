import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { OpenApp } from './app.ts';
import { projectOf } from './house.ts';
import { changes, drag, middle, openBench } from './openingsBench.ts';

describe('the facade ring and the wall cut', () => {
  let app: OpenApp;
  let page: Page;
  beforeAll(async () => {
    app = await openBench();
    page = app.page;
  });
  afterAll(() => app.close());

  const wall = (id: string) => page.locator(`[data-opening="${id}"]`);

  it('turns a wall by keys on the ring, with all its openings, and the gain follows', async () => {
    const spoken = () => wall('east-bench').getAttribute('aria-valuetext');
    expect(await spoken()).toContain('faces east 90 degrees');
    const gain = (text: string | null) => Number(/gain ([\d,]+)/.exec(text!)![1].replace(',', ''));
    const eastGain = gain(await spoken());
    const before = await projectOf(page);
    await wall('east-bench').focus();
    await page.keyboard.press('ArrowLeft');
    expect(await spoken()).toContain('89 degrees');
    for (let i = 0; i < 8; i++) await page.keyboard.press('Shift+ArrowLeft');
    expect(await spoken()).toContain('faces north 9 degrees');
    expect(await wall('east-small').getAttribute('aria-valuenow')).toBe('9');
    expect(await wall('east-small').getAttribute('aria-label')).toContain(
      'turns with East window over the workbench',
    );
    await expect.poll(async () => gain(await spoken()), { timeout: 15_000 }).toBeLessThan(eastGain);
    expect(changes(before, await projectOf(page))).toEqual({ 'walls.east.azimuth': 9 });
  });

  it('turns a wall by the mouse, in whole degrees', async () => {
    const before = await projectOf(page);
    const dial = page.getByRole('group', { name: /^Facade ring/ });
    await dial.scrollIntoViewIfNeeded();
    const centre = await middle(dial);
    const from = await middle(wall('corner-pane').locator('.edge'));
    const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
    const start = (Math.atan2(from.x - centre.x, centre.y - from.y) * 180) / Math.PI;
    const aim = ((start - 37) * Math.PI) / 180;
    await drag(page, from, {
      x: centre.x + radius * Math.sin(aim),
      y: centre.y - radius * Math.cos(aim),
    });
    const changed = changes(before, await projectOf(page));
    expect(Object.keys(changed)).toEqual(['walls.south-west.azimuth']);
    const azimuth = changed['walls.south-west.azimuth'] as number;
    expect(Number.isInteger(azimuth)).toBe(true);
    // 225 - 37; the middle of the arc's box lies within a degree or two of the pointer's aim.
    expect(Math.abs(azimuth - 188)).toBeLessThanOrEqual(2);
    await page.keyboard.press('Control+z');
    expect(changes(before, await projectOf(page))).toEqual({});
  });

  it('chooses an opening by a click on the ring without turning it', async () => {
    const before = await projectOf(page);
    const { x, y } = await middle(wall('west-door').locator('.edge'));
    await page.mouse.click(x, y);
    expect(await page.locator('nav [aria-current="true"]').innerText()).toContain('West door');
    expect(changes(before, await projectOf(page))).toEqual({});
  });

  it('moves the sun by keys, by the mouse and over days', async () => {
    const sun = page.getByRole('slider', { name: 'The sun: hour of the day' });
    const text = () => sun.getAttribute('aria-valuetext');
    await sun.focus();
    await page.keyboard.press('Home');
    for (let i = 0; i < 8; i++) await page.keyboard.press('ArrowRight');
    expect(await text()).toContain('08:00 to 09:00');
    const day = (await text())!.split(',')[0];
    await page.keyboard.press('Shift+ArrowRight');
    expect((await text())!.split(',')[0]).not.toBe(day);
    expect(await text()).toContain('08:00 to 09:00');

    const dial = await middle(page.getByRole('group', { name: /^Facade ring/ }));
    await drag(page, await middle(sun.locator('.disc')), { x: dial.x, y: dial.y + 170 });
    // Solar noon by daylight saving time at 73 degrees west is shortly before one o'clock.
    expect(await text()).toMatch(/1[23]:00 to 1[34]:00/);

    await page.getByRole('slider', { name: 'Day', exact: true }).fill('354');
    expect(await text()).toContain('21 December');
  });

  it('sets dimensions in the wall cut by the mouse and by keys', async () => {
    const before = await projectOf(page);
    const handle = page.locator('[data-handle="width"]');
    const from = await middle(handle);
    await drag(page, from, { x: from.x + 30, y: from.y });
    const dragged = changes(before, await projectOf(page));
    expect(Object.keys(dragged)).toEqual(['openings.west-door.width']);
    const width = dragged['openings.west-door.width'] as number;
    expect(width).toBeGreaterThan(1.25);
    expect(Math.abs(width / 0.005 - Math.round(width / 0.005))).toBeLessThan(1e-6);

    await handle.focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Shift+ArrowLeft');
    const keyed = changes(before, await projectOf(page));
    expect(keyed['openings.west-door.width']).toBeCloseTo(width - 0.11, 6);

    const setBack = page.locator('[data-handle="setBack"]');
    await setBack.focus();
    for (let i = 0; i < 6; i++) await page.keyboard.press('Shift+ArrowRight');
    // The wall is 0.42 m thick: no further.
    expect(await setBack.getAttribute('aria-valuenow')).toBe('0.42');
    expect(app.errors).toEqual([]);
  });
});
