import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import studio from '../../data/examples/studio.shadewright.json' with { type: 'json' };
import { TREATMENTS, decide, plannedExternal, searchSets } from '../../lib/decide/index.ts';
import type { Decision, Others, VerdictKind } from '../../lib/decide/index.ts';
import { parseProject } from '../../lib/project/index.ts';
import { StageCache, createEngine } from '../../lib/study/index.ts';
import { compareSchemes, stockSchemes } from '../../lib/sure/index.ts';
import { stations } from '../../src/library/climates.ts';
import { blinds, glazings } from '../../src/library/index.ts';
import { yearOf } from '../../src/library/year.ts';
import { openApp } from './app.ts';
import type { OpenApp } from './app.ts';
import { accessProblems } from './axe.ts';
import { projectOf } from './house.ts';

/** A decision takes some seconds; a shared machine may need many more. */
const PATIENCE = { timeout: 120_000 };

const library = { glazings, blinds };
const project = parseProject(structuredClone(studio), { ...library, stations });
/** Keeps what the runs of all tests share. */
const engine = createEngine(new StageCache(800));
const input = { project, library, year: yearOf(project, stations) };

/** Beginnings of the verdicts, written here by hand. */
const VERDICTS: Record<VerdictKind, string> = {
  needs: 'needs external blinds',
  cheaper: 'is enough',
  better: 'better with, not needed',
  none: 'they would save next to nothing',
  notEnough: 'better with, but not enough',
};

const whole = (value: number) => Math.round(value).toLocaleString('en').replace('-0', '0');
const plain = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

/** Texts of the cells of the matrix by facade and measure, without their mark. */
async function matrixCells(page: Page): Promise<Record<string, string>> {
  const cells = page.locator('td[data-measure] .figure');
  const shown = await cells.evaluateAll((all) =>
    all.map((span): [string, string] => {
      const { facade, measure } = (span.parentElement as HTMLElement).dataset;
      return [`${facade} ${measure}`, span.textContent?.replace('▲', '').trim() ?? ''];
    }),
  );
  return Object.fromEntries(shown);
}

function expectedCells(
  { matrix }: Decision,
  others: Others,
  figure: 'hours' | 'summerGain' | 'heatingKWh',
): Record<string, string> {
  return Object.fromEntries(
    matrix.flatMap(({ facade, cells }) =>
      TREATMENTS.flatMap((treatment) => {
        const cell = cells[others][treatment];
        return cell ? [[`${facade} ${treatment}`, whole(cell[figure])]] : [];
      }),
    ),
  );
}

describe('the decision bench', () => {
  let app: OpenApp;
  let page: Page;
  let decision: Decision;
  beforeAll(async () => {
    app = await openApp({ path: '/#decide', bypassCSP: true });
    page = app.page;
    await page.getByRole('progressbar').waitFor(PATIENCE);
    decision = decide(input, {}, engine);
    await page.getByRole('heading', { name: 'Verdict on each facade' }).waitFor(PATIENCE);
  });
  afterAll(() => app.close());

  it('gives the verdicts that the library gives, with their figures', async () => {
    const bodies = page.locator('section:has(#facade-verdicts) tbody');
    expect(await bodies.count()).toBe(decision.verdicts.length);
    for (const [i, verdict] of decision.verdicts.entries()) {
      const text = plain(await bodies.nth(i).innerText());
      const wall = project.walls.find((w) => w.id === verdict.facade)!;
      expect(text).toContain(wall.name);
      expect(text.toLowerCase()).toContain(VERDICTS[verdict.kind]);
      expect(text).toContain(`${whole(verdict.bare.hours)} hours over`);
      const out = verdict.bare.summerGain - verdict.external.summerGain;
      const row = await bodies.nth(i).locator('tr').first().locator('td').allInnerTexts();
      expect(row.slice(1)).toEqual([
        whole(verdict.bare.hours),
        whole(decision.matrix[i].cells.planned.planned!.hours),
        whole(verdict.external.hours),
        whole(out),
        whole(verdict.external.winterLost),
        whole(verdict.external.viewHoursLost),
      ]);
    }
  });

  it('puts the verdicts into the table of facades', async () => {
    const rows = page.locator('section:has(#facade-table-title) tr.facade');
    const cells = await rows.locator('td.verdict').allInnerTexts();
    expect(cells.map((text) => text.trim())).toEqual(
      decision.verdicts.map(({ kind }) => expect.stringContaining(VERDICTS[kind])),
    );
  });

  it('shows in the matrix the figures of the library', async () => {
    expect(await matrixCells(page)).toEqual(expectedCells(decision, 'planned', 'hours'));
    await page.getByLabel('Other facades').selectOption('bare');
    expect(await matrixCells(page)).toEqual(expectedCells(decision, 'bare', 'hours'));
    await page.getByRole('combobox', { name: 'Figure' }).selectOption('summerGain');
    expect(await matrixCells(page)).toEqual(expectedCells(decision, 'bare', 'summerGain'));
    await page.getByRole('combobox', { name: 'Figure' }).selectOption('heatingKWh');
    await page.getByLabel('Other facades').selectOption('planned');
    expect(await matrixCells(page)).toEqual(expectedCells(decision, 'planned', 'heatingKWh'));
    const broken = decision.matrix.flatMap(({ cells }) =>
      Object.values(cells.planned).filter((cell) => !cell.kept),
    );
    await page.getByRole('combobox', { name: 'Figure' }).selectOption('hours');
    expect(await page.locator('td[data-measure]', { hasText: '▲' }).count()).toBe(broken.length);
  });

  it('reads the front by keyboard and has its data', async () => {
    const slider = page.getByRole('slider', { name: 'Number of external blinds in the chart' });
    const { front, smallest } = decision.sets;
    expect(await slider.getAttribute('aria-valuenow')).toBe(String(smallest!.openings.length));
    await slider.focus();
    await slider.press('Home');
    expect(await slider.getAttribute('aria-valuetext')).toContain(
      `0 blinds: ${whole(front[0].hours)} hours over, limit broken`,
    );
    await slider.press('End');
    await slider.press('ArrowLeft');
    const at = front.length - 2;
    expect(await slider.getAttribute('aria-valuenow')).toBe(String(at));
    expect(await slider.getAttribute('aria-valuetext')).toContain(
      `${whole(front[at].hours)} hours over`,
    );
    const figure = page.getByRole('figure', { name: /^Blinds and hours over/ });
    await figure.getByRole('button', { name: 'Data' }).click();
    const hours = await figure.locator('tbody tr td:nth-child(2)').allInnerTexts();
    expect(hours).toEqual(front.map((set) => whole(set.hours)));
  });

  it('puts the smallest set on the house in one step, and takes it back', async () => {
    const before = await projectOf(page);
    const button = page.getByRole('button', { name: 'Put these blinds on' });
    await button.click();
    await page.getByText('The house was changed since').first().waitFor(PATIENCE);
    const after = await projectOf(page);
    const external = [...plannedExternal(parseProject(after, { ...library, stations }), library)];
    expect(external.toSorted()).toEqual(decision.sets.smallest!.openings.toSorted());
    expect(after.openings.some((o, i) => o.blind !== before.openings[i].blind)).toBe(true);
    expect(await button.isDisabled()).toBe(true);
    expect(await page.locator('td.verdict').count()).toBe(0);

    await page.getByRole('button', { name: 'Undo' }).first().click();
    expect(await projectOf(page)).toEqual(before);
    await page.getByText('Of the house as it is now.').waitFor();
  });

  it('breaks off when asked to, and works out again with prices', async () => {
    await page.getByText('Prices', { exact: true }).click();
    const name = (id: string) => project.openings.find((o) => o.id === id)!.name;
    const run = page.getByRole('button', { name: 'Find the cheapest set' });
    const price = async (id: string, text: string) => {
      await page.getByLabel(`Price, ${name(id)}`).fill(text);
      await page.getByLabel(`Price, ${name(id)}`).press('Tab');
    };
    // Dearer than all others together: the cheapest set leaves it out, if one that does is enough.
    const [dear] = decision.sets.smallest!.openings;
    const other = project.openings.find((o) => o.id !== dear)!.id;
    // An entry that is no price stays and is told until it is mended, whatever else is typed.
    await price(other, 'dear');
    await price(dear, '100');
    await page.getByText('Give a figure of 0.01 or more, or nothing for 1.').waitFor();
    expect(await page.getByLabel(`Price, ${name(other)}`).inputValue()).toBe('dear');
    expect(await run.isDisabled()).toBe(true);
    await price(other, '');
    await run.click();
    await page.getByRole('button', { name: 'Cancel' }).first().click();
    await page.getByText('Broken off.').first().waitFor();
    await run.click();
    const sets = searchSets(engine, input, { hemisphere: 'north', prices: { [dear]: 100 } });
    const said = page.locator('section:has(#smallest-set) strong');
    const last = name(sets.smallest!.openings.at(-1)!);
    await expect.poll(() => said.innerText(), PATIENCE).toContain(last);
    await page.getByText(`It costs ${whole(sets.smallest!.cost)} by your prices.`).waitFor();
    expect(sets.smallest!.openings).not.toEqual(decision.sets.smallest!.openings);
    const priced = (await projectOf(page)).openings.filter((o) => o.blindPrice !== undefined);
    expect(priced.map((o) => [o.id, o.blindPrice])).toEqual([[dear, 100]]);
  });

  it('searches a schedule, breaks off, finds one and puts it to use', async () => {
    await page.getByLabel('Facade or group').selectOption('facade south');
    const search = page.getByRole('button', { name: 'Search', exact: true });
    const section = page.locator('section:has(#schedule-search)');
    await search.click();
    await section.getByRole('button', { name: 'Cancel' }).click();
    await section.getByText('Broken off.').waitFor();
    await search.click();
    const card = page.getByRole('group', { name: 'Card for the wall' });
    await card.waitFor(PATIENCE);
    expect(await card.innerText()).toContain('South');
    const before = await projectOf(page);
    await page.getByRole('button', { name: 'Use this schedule' }).click();
    await section.getByText('In use.').waitFor();
    const after = await projectOf(page);
    expect(after.schedules).toHaveLength(before.schedules.length + 1);
    const added = after.schedules.at(-1)!.id;
    const own = after.openings.filter((o) => o.wall === 'south');
    expect(own.map((o) => o.blind?.schedule)).toEqual(own.map(() => added));
    await page.getByRole('button', { name: 'Undo' }).first().click();
    expect(await projectOf(page)).toEqual(before);
  });

  it('compares schemes with the figures of the library', async () => {
    const ids = ['none', 'external'];
    for (const name of ['As planned', 'Smallest set of external blinds'])
      await page.getByRole('checkbox', { name }).uncheck();
    await page.getByRole('button', { name: 'Compare' }).click();
    const cells = page.locator('td[data-figure="hours"]');
    await cells.first().waitFor(PATIENCE);
    const schemes = stockSchemes(project, library).filter((s) => ids.includes(s.id));
    const figures = compareSchemes(input, schemes, engine);
    expect((await cells.allInnerTexts()).map(plain)).toEqual(figures.map((f) => whole(f.hours)));
    const heating = await page.locator('td[data-figure="heatingKWh"]').allInnerTexts();
    expect(heating.map(plain)).toEqual(figures.map((f) => whole(f.heatingKWh)));

    await page.getByLabel('Name of the scheme').fill('<b>First</b> idea');
    await page.getByRole('button', { name: 'Keep the house as it is now' }).click();
    await page.getByLabel('<b>First</b> idea', { exact: true }).waitFor();
    const before = await projectOf(page);
    expect(before.schemes?.map((s) => s.house.name)).toEqual(['<b>First</b> idea']);
    await page.getByRole('button', { name: 'Drop <b>First</b> idea' }).click();
    expect((await projectOf(page)).schemes).toBeUndefined();
    await page.getByRole('button', { name: 'Undo' }).first().click();
    expect(await projectOf(page)).toEqual(before);
  });

  it('tries the cases and breaks off', async () => {
    const section = page.locator('section:has(#how-sure)');
    await section.getByRole('button', { name: 'Try the cases' }).click();
    await section.getByText(/of 29 cases run/).waitFor(PATIENCE);
    await section.getByRole('button', { name: 'Cancel' }).click();
    await section.getByText('Broken off.').waitFor();
  });

  it('speaks German with its decimal comma, and English again', async () => {
    const language = page.locator('header select:has(option[value="de"])');
    await language.selectOption('de');
    await page.getByRole('heading', { name: 'Urteil über jede Fassade' }).waitFor();
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    const figure = page.getByRole('figure', { name: /^Jede Maßnahme/ });
    expect(plain(await figure.innerText())).toContain('0,8 m tief');
    const most = Math.max(...decision.verdicts.map((v) => v.bare.hours));
    expect(most).toBeGreaterThan(999);
    const verdicts = await page.locator('section:has(#facade-verdicts)').innerText();
    expect(verdicts).toContain(most.toLocaleString('de'));
    expect(verdicts).toContain('Überhitzungsstunden');
    expect(await accessProblems(page)).toEqual([]);
    await language.selectOption('en');
    await page.getByRole('heading', { name: 'Verdict on each facade' }).waitFor();
  });

  it('has no serious finding of accessibility and a silent console', async () => {
    expect(await accessProblems(page)).toEqual([]);
    for (const [width, height] of [
      [390, 844],
      [768, 1024],
    ]) {
      await page.setViewportSize({ width, height });
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBeLessThanOrEqual(0);
    }
    expect(app.errors).toEqual([]);
  });
});
