import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { houseOf, serializeProject } from '../../../lib/project/index.ts';
import { sureCommand } from '../../../src/cli/sureCommand.ts';
import { paneHouse } from '../../lib/decide/support.ts';
import { runner } from './run.ts';

let folder: string;
let house: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shadewright-sure-'));
  house = join(folder, 'house.json');
  const west = { azimuth: 270, width: 3, height: 2, blind: 'external-screen-zip' };
  const project = paneHouse([west]);
  const kept = { ...houseOf(project), name: 'First idea' };
  writeFileSync(house, serializeProject({ ...project, schemes: [{ id: 'kept', house: kept }] }));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = runner(sureCommand);

describe('sure', () => {
  it('prints verdicts with how sure they are, then the tables, and writes them as JSON', async () => {
    const out = join(folder, 'out');
    const { code, printed } = await run(house, '--out', out);
    expect(code).toBe(0);
    expect(printed).toMatch(
      /^West wall \(west 270°\): needs an external blind\. (Sure: the same in all 29|Close call: the same in \d+ of 29) cases/,
    );
    const parts = ['How sure: hours over', 'spread of its figures', 'Schemes side by side'];
    const places = [...parts, 'Left out: ', 'caution: '].map((part) => printed.indexOf(part));
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);

    const findings = JSON.parse(readFileSync(join(out, 'sure.json'), 'utf8'));
    expect(findings.format).toBe('shadewright-sure');
    expect(findings.cases).toHaveLength(29);
    const [west] = findings.facades;
    expect(printed.startsWith(west.words)).toBe(true);
    const { least, low, median, high, most } = west.bare.hours.all;
    const places5 = [least, low, median, high, most];
    expect([...places5].sort((a, b) => a - b)).toEqual(places5);
    expect(findings.schemes.map((s: { id: string }) => s.id)).toEqual([
      'planned',
      'none',
      'internal',
      'external',
      'smallest',
      'overhang',
      'kept',
    ]);
    expect(printed).toContain('First idea');
  });

  it('refuses bad files and options with exit code 2', async () => {
    expect((await run('no-such-file.json')).complaints).toContain('no such file');
    expect((await run(house, '--years', 'many')).code).toBe(2);
    const few = await run(house, '--years', '5');
    expect(few.code).toBe(2);
    expect(few.complaints).toContain('20 to 200');
  });
});
