import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serializeProject } from '../../../lib/project/index.ts';
import { decideCommand } from '../../../src/cli/decideCommand.ts';
import { paneHouse } from '../../lib/decide/support.ts';
import { runner } from './run.ts';

let folder: string;
let house: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shadewright-decide-'));
  house = join(folder, 'house.json');
  const west = { azimuth: 270, width: 3, height: 2, blind: 'external-screen-zip' };
  const north = { azimuth: 0, width: 1, height: 1 };
  writeFileSync(house, serializeProject(paneHouse([west, north])));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = runner(decideCommand);

describe('decide', () => {
  it('prints verdicts first, then the tables, the same every time', async () => {
    const { code, printed } = await run(house);
    expect(code).toBe(0);
    expect(printed).toMatch(/^West wall \(west 270°\): needs an external blind\. /);
    const parts = [
      'North wall (north 0°): no blind.',
      'Smallest set of external blinds',
      'Each blind by itself',
      'all others bare',
      'all others as planned',
      'Best external blinds by number',
      'caution: ',
    ];
    const places = parts.map((part) => printed.indexOf(part));
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect((await run(house)).printed).toBe(printed);
  });

  it('prints JSON alone with --json and writes the same with --out', async () => {
    const out = join(folder, 'out');
    const { code, printed } = await run(house, '--json', '--out', out);
    expect(code).toBe(0);
    const decision = JSON.parse(printed);
    expect(JSON.parse(readFileSync(join(out, 'decision.json'), 'utf8'))).toEqual(decision);
    expect(decision.format).toBe('shadewright-decision');
    expect(decision.verdicts[0].words).toBe('needs an external blind');
    expect(decision.sets.smallest.openings).toEqual(['pane-0']);
    const told = (await run(house)).printed;
    expect(decision.warnings.length).toBeGreaterThan(0);
    for (const warning of decision.warnings) expect(told).toContain(`note: ${warning}\n`);
  });

  it('refuses bad files and options with exit code 2', async () => {
    expect((await run('no-such-file.json')).complaints).toContain('no such file');
    expect((await run('no-such-file.json')).code).toBe(2);
    expect((await run(house, '--colour')).code).toBe(2);
    expect((await run()).code).toBe(2);
    const broken = join(folder, 'broken.json');
    writeFileSync(broken, '{"format": "shadewright-project", "version": 1}');
    const bad = spawnSync('npm', ['run', '-s', 'decide', '--', broken], { encoding: 'utf8' });
    expect(bad.status).toBe(2);
    expect(bad.stderr).toContain('error: ');
    expect(bad.stderr).not.toMatch(/^\s+at /m);
  });
});
