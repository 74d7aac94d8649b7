import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { studyCommand } from '../../../src/cli/studyCommand.ts';
import { brokenWeatherTexts } from '../../lib/climate/read/broken.ts';
import { brokenProjects } from '../../lib/project/broken.ts';
import { runner } from './run.ts';

const STUDIO = 'data/examples/studio.shadewright.json';
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shadewright-cli-'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = runner(studyCommand);

describe('study on a real house', () => {
  it('prints sums, peaks and months, and writes the hours and the results', async () => {
    const out = join(folder, 'out');
    const { code, printed } = await run(STUDIO, '--out', out);
    expect(code).toBe(0);
    for (const title of ['Year: kWh', 'Summer (June to August)', 'Strongest hour', 'Months: kWh']) {
      expect(printed).toContain(title);
    }

    const results = JSON.parse(readFileSync(join(out, 'results.json'), 'utf8'));
    const csv = Papa.parse<Record<string, string>>(readFileSync(join(out, 'hourly.csv'), 'utf8'), {
      header: true,
      skipEmptyLines: true,
    });
    expect(csv.data).toHaveLength(8760);
    expect(csv.errors).toEqual([]);
    // The hourly file and the sums tell the same year: two decimals of W/m2 leave under 0.1 percent.
    for (const opening of results.openings) {
      const column = `${opening.name}: gain with shading (W/m2 of glass)`;
      const sum = csv.data.reduce((total, row) => total + Number(row[column]), 0);
      const kWh = (sum * opening.glassArea) / 1000;
      expect(Math.abs(kWh / opening.sums.with.year - 1)).toBeLessThan(0.001);
    }
  });

  it('explains itself with --help and refuses unknown options', async () => {
    const help = await run('--help');
    expect(help.code).toBe(0);
    expect(help.printed).toContain('--weather <file>');
    expect(help.printed).toContain('Exit codes');
    expect((await run(STUDIO, '--colour')).code).toBe(2);
    expect((await run()).code).toBe(2);
  });

  it('says which file cannot be read', async () => {
    const { code, complaints } = await run('no-such-file.json');
    expect(code).toBe(2);
    expect(complaints).toContain('no such file');
  });
});

describe('broken files', () => {
  function expectClear(code: number, complaints: string, name: string) {
    expect(code, name).toBe(2);
    expect(complaints, name).toMatch(/^error: \S/);
    expect(complaints, name).not.toMatch(/^\s+at /m);
    expect(complaints, name).not.toContain('fault of the program');
  }

  it('200 broken projects each get clear errors and exit code 2', async () => {
    const cases = brokenProjects();
    expect(cases.length).toBe(200);
    for (const { name, text, expectPath } of cases) {
      const path = join(folder, 'broken.json');
      writeFileSync(path, text);
      const { code, complaints } = await run(path);
      expectClear(code, complaints, name);
      // The pattern is of the path alone; on a line the message follows it.
      const place = new RegExp(expectPath.source.replace(/\$$/, '(?=: )'));
      const said = complaints.split('\n').map((line) => line.replace(/^error: /, ''));
      expect(
        said.some((line) => place.test(line)),
        `${name}: ${complaints}`,
      ).toBe(true);
    }
  });

  it('60 broken weather files each get one clear error and exit code 2', async () => {
    const cases = brokenWeatherTexts();
    expect(cases.length).toBe(60);
    for (const { name, text, expect: pattern } of cases) {
      const path = join(folder, 'weather.csv');
      writeFileSync(path, text);
      const { code, complaints } = await run(STUDIO, '--weather', path);
      expectClear(code, complaints, name);
      expect(complaints.split('\n').filter((line) => line.startsWith('error:'))).toHaveLength(1);
      expect(complaints, name).toMatch(pattern);
    }
  });

  it('the process itself ends with code 2 and no stack trace, or prints the study', () => {
    const path = join(folder, 'broken.json');
    writeFileSync(path, '{"format": "shadewright-project", "version": 1}');
    const bad = spawnSync('npm', ['run', '-s', 'study', '--', path], { encoding: 'utf8' });
    expect(bad.status).toBe(2);
    expect(bad.stderr).toContain('error: ');
    expect(bad.stderr).not.toMatch(/^\s+at /m);
    const good = execFileSync('npm', ['run', '-s', 'study', '--', STUDIO], { encoding: 'utf8' });
    expect(good).toContain('Gain without');
  });
});
