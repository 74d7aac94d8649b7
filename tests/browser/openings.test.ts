import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { Project } from '../../lib/project/index.ts';
import type { OpenApp } from './app.ts';
import { benchFaults } from './axe.ts';
import { projectOf } from './house.ts';
import { changes, choose, field, openAll, openBench, type } from './openingsBench.ts';
import type { Leaves } from './openingsBench.ts';

describe('the openings bench', () => {
  let app: OpenApp;
  let page: Page;
  beforeAll(async () => {
    app = await openBench();
    page = app.page;
  });
  afterAll(() => app.close());

  it('changes by each field what it should and nothing else', async () => {
    await choose(page, 'West door');
    await openAll(page);
    const at = 'openings.west-door';
    const reveals = { head: 0.2, sill: 0.2, left: 0.2, right: 0.2 };
    const typed: [label: string, text: string, expected: Leaves][] = [
      ['Name', 'Terrace door', { [`${at}.name`]: 'Terrace door' }],
      ['Width', '1.3 m', { [`${at}.width`]: 1.3 }],
      ['Height', '8\' 2 1/2"', { [`${at}.height`]: (8 * 12 + 2.5) * 0.0254 }],
      ['Sill height', '2 cm', { [`${at}.sillHeight`]: 0.02 }],
      ['Number of units', '2', { [`${at}.count`]: 2 }],
      ['Name of the wall', 'Garden wall', { 'walls.west.name': 'Garden wall' }],
      ['Faces, degrees from north (west)', '268', { 'walls.west.azimuth': 268 }],
      ['Tilt', '88', { 'walls.west.tilt': 88 }],
      ['Thickness', '0.45 m', { 'walls.west.thickness': 0.45 }],
      ['U-value', 'R 40', { 'walls.west.U': 5.678263337 / 40 }],
      ['Gross area', '15', { 'walls.west.area': 15 }],
      [
        'Glass set-back',
        '200 mm',
        {
          [`${at}.setBack`]: 0.2,
          ...Object.fromEntries(Object.entries(reveals).map(([k, v]) => [`${at}.reveal.${k}`, v])),
        },
      ],
      ['Reveal depth, left', '0.1', { [`${at}.reveal.left`]: 0.1 }],
      ['Reflectance of the reveal', '0.6', { [`${at}.revealReflectance`]: 0.6 }],
      ['Frame seen, head', '0.1', { [`${at}.frame.widths.head`]: 0.1 }],
      ['Uf of the frame', '0.9', { [`${at}.frame.Uf`]: 0.9 }],
      ['Psi of the glass edge', '0.025', { [`${at}.frame.psiSpacer`]: 0.025 }],
      ['Psi of the installation', '0.02', { [`${at}.frame.psiInstall`]: 0.02 }],
      ['Standing angle of the slats', '30', { [`${at}.blind.standingAngle`]: 30 }],
      ['Raised above a wind of', '9', { [`${at}.blind.windLimit`]: 9 }],
      ['Sash width', '0.9', { [`${at}.airing.width`]: 0.9 }],
      ['Sash height', '2.1', { [`${at}.airing.height`]: 2.1 }],
      ['Tilt angle', '5', { [`${at}.airing.tiltAngle`]: 5 }],
    ];
    let before = await projectOf(page);
    for (const [label, text, expected] of typed) {
      await type(page, label, text);
      const after = await projectOf(page);
      const changed = changes(before, after);
      expect(Object.keys(changed).sort(), label).toEqual(Object.keys(expected).sort());
      for (const [path, value] of Object.entries(expected)) {
        if (typeof value === 'number') expect(changed[path], label).toBeCloseTo(value, 6);
        else expect(changed[path], label).toBe(value);
      }
      before = after;
    }
  });

  it('changes by each choice and tick what it should and nothing else', async () => {
    const at = 'openings.west-door';
    const chosen: [label: string, option: string, paths: string[]][] = [
      ['Kind', 'window', [`${at}.kind`]],
      ['Glazing', 'triple-solar-control', [`${at}.glazing`]],
      ['Blind', 'external-slats-60-light', [`${at}.blind.blind`]],
      ['Moved by', 'schedule east-morning', [`${at}.blind.group`, `${at}.blind.schedule`]],
      ['Moved by', 'none', [`${at}.blind.schedule`]],
      ['Moved by', 'group west-remote', [`${at}.blind.group`]],
      [
        'Insect screen',
        'insect-screen-fine',
        ['blind', 'from', 'share', 'to'].map((k) => `${at}.insectScreen.${k}`),
      ],
      ['Covers', '0.5', [`${at}.insectScreen.share`]],
      ['Put in on: month', '4', [`${at}.insectScreen.from`]],
      ['Taken out after: day', '15', [`${at}.insectScreen.to`]],
      ['Sash', 'tilt', [`${at}.airing.kind`]],
      ['Wall', 'south', [`${at}.wall`]],
      ['Wall', 'west', [`${at}.wall`]],
    ];
    const fin = ['above', 'below', 'offset', 'projection'];
    const ticked: [label: string, paths: string[]][] = [
      ['Own wind limit', [`${at}.blind.windLimit`]],
      ['Way out in an emergency', [`${at}.escapeRoute`]],
      ['Gross area known', ['walls.west.area']],
      [
        'Overhang, balcony or eave above it',
        ['aboveHead', 'left', 'projection', 'right'].map((k) => `${at}.overhang.${k}`),
      ],
      ['Left fin', fin.map((k) => `${at}.finLeft.${k}`)],
      ['Right fin', fin.map((k) => `${at}.finRight.${k}`)],
    ];
    let before = await projectOf(page);
    const step = async (label: string, paths: string[]) => {
      const after = await projectOf(page);
      expect(Object.keys(changes(before, after)).sort(), label).toEqual([...paths].sort());
      before = after;
    };
    for (const [label, option, paths] of chosen) {
      await field(page, label).selectOption(option);
      await step(label, paths);
    }
    for (const [label, paths] of ticked) {
      await field(page, label).click();
      await step(label, paths);
    }
    const sizes: [label: string, path: string][] = [
      ['Overhang projection', 'overhang.projection'],
      ['Overhang above the head', 'overhang.aboveHead'],
      ['Overhang past the left jamb', 'overhang.left'],
      ['Overhang past the right jamb', 'overhang.right'],
      ...(['Left', 'Right'] as const).flatMap((side): [string, string][] => [
        [`${side} fin, projection`, `fin${side}.projection`],
        [`${side} fin, beside the jamb`, `fin${side}.offset`],
        [`${side} fin, above the head`, `fin${side}.above`],
        [`${side} fin, below the sill`, `fin${side}.below`],
      ]),
    ];
    for (const [label, path] of sizes) {
      // The wall cut has handles of nearly the same names: the form's are text fields.
      const input = page.getByRole('textbox', { name: label, exact: true });
      await input.fill('0.35 m');
      await input.press('Tab');
      await step(label, [`${at}.${path}`]);
    }
    expect(app.errors).toEqual([]);
  });

  it('takes a frame from the library with its widths and losses', async () => {
    const before = await projectOf(page);
    await field(page, 'Frame').selectOption('pvc');
    const after = await projectOf(page);
    const { frame } = after.openings.find((o) => o.id === 'west-door')!;
    expect(frame).toEqual({
      widths: { head: 0.118, sill: 0.118, left: 0.118, right: 0.118 },
      Uf: 1.1,
      psiSpacer: 0.038,
      psiInstall: 0.04,
    });
    for (const path of Object.keys(changes(before, after))) {
      expect(path).toMatch(/^openings\.west-door\.frame\./);
    }
  });

  it('enters a glazing of its own, for this opening only', async () => {
    const before = await projectOf(page);
    await page.getByRole('button', { name: 'Enter figures of your own' }).click();
    await type(page, 'g-value (SHGC)', '0.31');
    const after = await projectOf(page);
    expect(after.glazings).toHaveLength(1);
    expect(after.glazings[0]).toMatchObject({ g: 0.31, panes: 3 });
    const others = (p: Project) => p.openings.filter((o) => o.id !== 'west-door');
    expect(others(after)).toEqual(others(before));
  });

  it('describes a blind of its own, for this opening only', async () => {
    const before = await projectOf(page);
    const of = (p: Project) => p.openings.find((o) => o.id === 'west-door')!.blind!;
    await page.getByRole('button', { name: 'Describe a blind of your own' }).click();
    await type(page, 'Solar reflectance, upper side', '0.42');
    await type(page, 'From slat to slat', '70 mm');
    const after = await projectOf(page);
    expect(after.blinds).toHaveLength(1);
    expect(after.blinds[0]).toMatchObject({ reflectanceUpper: 0.42, slatSpacing: 0.07 });
    expect(of(after)).toEqual({ ...of(before), blind: after.blinds[0].id });
    const others = (p: Project) => p.openings.filter((o) => o.id !== 'west-door');
    expect(others(after)).toEqual(others(before));
    await field(page, 'Own figure for the air past it').click();
    await type(page, 'Share of the airing left', '0.2');
    expect(of(await projectOf(page)).flowFactor).toBe(0.2);
  });

  it('refuses what is out of range and says what is allowed', async () => {
    const before = await projectOf(page);
    await type(page, 'Width', '40 m');
    await expect.poll(() => field(page, 'Width').getAttribute('aria-invalid')).toBe('true');
    expect(await page.getByText('Allowed: 0.1 m to 10 m.').count()).toBe(1);
    await field(page, 'Width').press('Escape');
    expect(changes(before, await projectOf(page))).toEqual({});
  });
});

describe('the buttons of the openings bench', () => {
  let app: OpenApp;
  let page: Page;
  beforeAll(async () => {
    app = await openBench();
    page = app.page;
  });
  afterAll(() => app.close());

  it('adds, copies, mirrors, deletes and undoes', async () => {
    const start = await projectOf(page);
    const ids = (p: Project) => p.openings.map((o) => o.id);
    await choose(page, 'West door');
    await page.getByRole('button', { name: 'Copy', exact: true }).click();
    let now = await projectOf(page);
    expect(ids(now)).toEqual(
      ids(start).flatMap((id) => (id === 'west-door' ? [id, 'west-door-2'] : [id])),
    );
    await page.getByRole('button', { name: 'Mirror to the opposite side' }).click();
    now = await projectOf(page);
    expect(now.openings.find((o) => o.id === 'west-door-3')).toMatchObject({ wall: 'east' });
    await page.getByRole('button', { name: 'Swap left and right' }).click();

    const form = page.getByRole('form', { name: 'Add an opening' });
    await form.getByLabel('Add a').selectOption('fixed');
    await form.getByLabel('to wall').selectOption('south');
    await form.getByRole('button', { name: 'Add' }).click();
    now = await projectOf(page);
    expect(now.openings.at(-1)).toMatchObject({ kind: 'fixed', wall: 'south' });
    expect(new Set(ids(now)).size).toBe(ids(start).length + 3);

    await choose(page, 'West window');
    await page.getByRole('button', { name: 'Delete', exact: true }).click();
    expect(ids(await projectOf(page))).not.toContain('west-window');
    await page.locator('.toolbar').getByRole('button', { name: 'Undo' }).click();
    expect(changes(now, await projectOf(page))).toEqual({});
    expect(app.errors).toEqual([]);
  });

  it('asks before a wall with openings goes, and moves them', async () => {
    await choose(page, 'South-west corner pane');
    await page.getByRole('button', { name: 'Delete South-west corner ...' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Keep the wall' }).click();
    expect((await projectOf(page)).walls.map((w) => w.id)).toContain('south-west');
    await page.getByRole('button', { name: 'Delete South-west corner ...' }).click();
    await dialog.getByLabel('Move it to').selectOption('west');
    await dialog.getByRole('button', { name: 'Move and delete the wall' }).click();
    const after = await projectOf(page);
    expect(after.walls.map((w) => w.id)).not.toContain('south-west');
    expect(after.openings.find((o) => o.id === 'corner-pane')).toMatchObject({ wall: 'west' });
  });
});

describe('the openings bench for everyone', () => {
  it.each([
    { width: 1440, height: 900, dark: false },
    { width: 768, height: 1024, dark: true },
    { width: 390, height: 844, dark: false },
  ])('has no fault axe knows at $width px, no sideways scroll and a silent console', async (at) => {
    const app = await openBench({ ...at, bypassCSP: true });
    try {
      await choose(app.page, 'West door');
      await openAll(app.page);
      expect(await benchFaults(app.page)).toEqual([]);
      const wide = await app.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(app.errors).toEqual([]);
    } finally {
      await app.close();
    }
  });

  it('speaks feet and inches and SHGC', async () => {
    const app = await openBench();
    try {
      await field(app.page, 'Units').selectOption('imperial');
      await choose(app.page, 'West door');
      expect(await field(app.page, 'Width').inputValue()).toBe('4\' 0"');
      await type(app.page, 'Width', '4-2');
      const { openings } = await projectOf(app.page);
      expect(openings.find((o) => o.id === 'west-door')!.width).toBeCloseTo(50 * 0.0254, 9);
      expect(await app.page.getByText('SHGC 0.50').count()).toBe(1);
      expect(app.errors).toEqual([]);
    } finally {
      await app.close();
    }
  });
});
