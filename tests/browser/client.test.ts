import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { printPdf } from '../../src/cli/printPdf.ts';
import { clientPage } from '../../src/client/index.ts';
import type { ClientPage, PageChoices } from '../../src/client/index.ts';
import { Words } from '../../src/words/index.ts';
import type { Language } from '../../src/words/index.ts';
import { AWKWARD, caseOf, example, smallHouse } from '../src/client/support.ts';
import type { Case } from '../src/client/support.ts';
import { distFolder, openApp } from './app.ts';
import type { OpenApp } from './app.ts';
import { accessProblems } from './axe.ts';
import { ensurePdfTools, readPdf } from './pdf.ts';

const PLAIN: PageChoices = {
  system: 'metric',
  size: 'a4',
  grey: false,
  order: false,
  appendix: false,
};

beforeAll(() => ensurePdfTools());

async function made(house: Case, language: Language, choices: Partial<PageChoices> = {}) {
  return clientPage(house.facts, await Words.load(language, ['client', 'library', 'rules']), {
    ...PLAIN,
    ...choices,
  });
}

/** Text without its lines: blanks run together, and a word parted at its hyphen is one again. */
const flat = (text: string) => text.replace(/-\s+/g, '-').replace(/\s+/g, ' ');

describe('the printed page', () => {
  let studio: Case;

  beforeAll(() => {
    studio = caseOf(example('studio'));
  }, 120_000);

  async function printed(page: ClientPage) {
    return readPdf(await printPdf(page, distFolder));
  }

  it.each([
    ['en', 'a4', 595, 842],
    ['de', 'a4', 595, 842],
    ['en', 'letter', 612, 792],
    ['de', 'letter', 612, 792],
  ] as const)(
    'is two sheets in %s on %s with the answer and the limits',
    async (language, size, width, height) => {
      const page = await made(studio, language, { size, grey: language === 'de' });
      const { pages, sizes, fonts } = await printed(page);
      expect(pages).toHaveLength(2);
      for (const [w, h] of sizes) {
        expect(Math.abs(w - width)).toBeLessThan(1);
        expect(Math.abs(h - height)).toBeLessThan(1);
      }
      expect(fonts.length).toBeGreaterThan(0);
      expect(fonts.filter((f) => !f.embedded)).toEqual([]);
      const first = flat(pages[0]!);
      expect(first).toContain(flat(page.sheet.answer.headline));
      for (const line of page.sheet.answer.lines) expect(first).toContain(flat(line));
      expect(first).toContain(page.sheet.hours.rooms[0]!.before);
      expect(first).toContain(flat(page.sheet.hours.rooms[0]!.criterion));
      // Columns stand side by side, so lines are looked for without their layout.
      const words = new Set(flat(pages.join(' ')).split(' '));
      for (const line of [...page.sheet.cautions.lines, ...page.sheet.sources.lines]) {
        for (const word of flat(line).split(' '))
          expect(words, `${word} of ${line}`).toContain(word);
      }
      expect(flat(pages[1]!)).toContain(flat(page.sheet.footer));
    },
  );

  it('has the order list and the appendix with every month and criterion', async () => {
    const page = await made(studio, 'en', { order: true, appendix: true });
    const text = flat((await printed(page)).pages.join(' '));
    expect(text).toContain('Blind order list');
    for (const { name, sums } of studio.result.openings) {
      expect(text).toContain(name);
      const row = sums.without.months.map((v) => String(Math.round(v))).join(' ');
      expect(text).toContain(`gain without ${row}`);
    }
    expect(text).toContain('DIN 4108-2:2013, table 9');
  });

  it('prints awkward names as they are', async () => {
    const base = smallHouse();
    const openings = base.openings.map((o, i) => ({ ...o, name: AWKWARD[i]! }));
    const page = { title: AWKWARD[0], notes: AWKWARD.join('\n') };
    const house = caseOf({ ...base, openings, page });
    const text = flat((await printed(await made(house, 'en'))).pages.join(' '));
    expect(text).toContain('<script>alert(1)</script> & "quotes" \'single\'');
    expect(text).toContain('=HYPERLINK("http://example.invalid","x")');
    expect(text).toContain('$t(question) {{openings}} %s');
  });
});

describe('the client bench', () => {
  let app: OpenApp;
  let page: Page;

  beforeAll(async () => {
    app = await openApp({ path: '/#client', bypassCSP: true });
    page = app.page;
    await page.locator('[data-page="ready"]').waitFor({ timeout: 150_000 });
  }, 180_000);

  afterAll(() => app?.close());

  const paper = () => page.locator('.paper');

  it('shows the same answer and hours as the command line', async () => {
    const facts = caseOf(example('studio'));
    const { sheet } = await made(facts, 'en');
    expect(await paper().locator('[data-answer]').textContent()).toBe(sheet.answer.headline);
    expect(await paper().locator('[data-before]').textContent()).toBe(sheet.hours.rooms[0]!.before);
    expect(await paper().locator('[data-after]').textContent()).toBe(sheet.hours.rooms[0]!.after);
    expect(await paper().locator('svg').first().locator('text').allTextContents()).toEqual(
      sheet.year.marks.flatMap((mark) => mark.text ?? []),
    );
  });

  it('speaks German at once, takes title and notes, and undoes them', async () => {
    await page.locator('select[name="language"]').selectOption('de');
    await page.locator('.paper[lang="de"]').waitFor();
    expect(await paper().locator('[data-answer]').textContent()).toMatch(/^Außenliegender/);
    const title = `=1+1 <b>x</b> ${AWKWARD[7]}`;
    await page.locator('input[name="title"]').fill(title);
    await expect.poll(() => paper().locator('#paper-title').textContent()).toBe(title);
    expect(await page.locator('[data-page]').getAttribute('data-page')).toBe('ready');
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => paper().locator('#paper-title').textContent()).not.toBe(title);
    await page.locator('select[name="language"]').selectOption('en');
    await page.locator('.paper[lang="en"]').waitFor();
  });

  it('prints the page alone, on the paper that was chosen', async () => {
    await page.locator('select[name="size"]').selectOption('a4');
    await page.locator('.paper:not(.letter)').waitFor();
    const { pages, sizes } = readPdf(await page.pdf({ preferCSSPageSize: true }));
    expect(pages).toHaveLength(2);
    expect(Math.round(sizes[0]![0])).toBe(595);
    expect(pages.join(' ')).not.toMatch(/Fold the table|Undo|Save data|Print with it/);
  });

  it('saves the months for a spreadsheet', async () => {
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Months (CSV)' }).click();
    const text = readFileSync(await (await saving).path(), 'utf8');
    expect(text).toMatch(/^\ufeffFacade,Opening,Quantity,January \(kWh\)/);
  });

  it('has no fault of access and keeps to the width of a phone', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(await accessProblems(page)).toEqual([]);
    expect(app.errors).toEqual([]);
  });
});
