import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { parseProject, serializeProject } from '../../../lib/project/index.ts';
import { reportCommand } from '../../../src/cli/reportCommand.ts';
import { library, smallHouse } from '../client/support.ts';
import { runner } from './run.ts';

/** A machine without a browser. */
vi.mock('../../../src/cli/chromium.mjs', () => ({
  findChromium: () => undefined,
  launchFlags: [],
}));

let folder: string;
let house: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shadewright-report-'));
  house = join(folder, 'house.shadewright.json');
  writeFileSync(house, serializeProject(smallHouse()));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = runner(reportCommand);

describe('report', () => {
  it('writes a tidy folder without a browser, the answer first', async () => {
    const out = join(folder, 'out');
    const { code, printed, complaints } = await run(house, '--out', out, '--title', '=Title');
    expect([code, complaints]).toEqual([0, '']);
    expect(printed).toMatch(/^External blinds on: Pane 0/);
    expect(readdirSync(out).sort()).toEqual([
      'charts',
      'decision.json',
      'hourly.csv',
      'monthly.csv',
      'order-list.csv',
      'project.shadewright.json',
    ]);
    expect(readdirSync(join(out, 'charts')).sort()).toEqual([
      'facades.svg',
      'hot-day.csv',
      'hot-day.svg',
      'year.csv',
      'year.svg',
    ]);
    const text = (name: string) => readFileSync(join(out, name), 'utf8');
    const project = parseProject(text('project.shadewright.json'), library);
    expect(project).toEqual({ ...smallHouse(), page: { title: '=Title' } });
    expect(JSON.parse(text('decision.json')).sets.smallest.openings).toContain('pane-0');
    for (const name of ['hourly.csv', 'monthly.csv', 'order-list.csv', 'charts/hot-day.csv']) {
      const { data, errors } = Papa.parse<string[]>(text(name), { skipEmptyLines: true });
      expect(errors, name).toEqual([]);
      expect(new Set(data.map((row) => row.length)).size, name).toBe(1);
    }
  });

  it('says in German what it says in English', async () => {
    const { printed } = await run(house, '--out', join(folder, 'de'), '--language', 'de');
    expect(printed).toMatch(/^Außenliegender Sonnenschutz: Pane 0/);
  });

  it('says what to do where there is no Chromium, before it works anything out', async () => {
    for (const asked of [
      ['--pdf', join(folder, 'x.pdf')],
      ['--out', join(folder, 'y'), '--png'],
    ]) {
      const { code, complaints } = await run(house, ...asked);
      expect(code).toBe(2);
      expect(complaints).toMatch(/Chromium.*apt-get install chromium.*CHROMIUM=/s);
    }
    expect(existsSync(join(folder, 'y'))).toBe(false);
  });

  it.each([
    [['--size', 'a5', '--out', 'x'], /a4, letter/],
    [['--language', 'fr', '--out', 'x'], /en, de/],
    [[], /--pdf FILE, --out FOLDER/],
    [['--png', '--pdf', 'x.pdf'], /--png together with --out FOLDER/],
  ])('refuses %j and names what is allowed', async (args, allowed) => {
    const { code, complaints } = await run(house, ...args);
    expect(code).toBe(2);
    expect(complaints).toMatch(allowed);
  });
});
